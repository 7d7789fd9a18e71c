import type { CutListInputs } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { autosave } from './autosave.ts'
import { type CutListState, cutListRequest, inputsOf } from './cut-list-state.ts'
import type { SessionParts } from './session-parts.ts'

export interface CutListActions {
  /** changes the cut list's inputs; its last answer stays until a new one is there */
  editCutList(patch: Partial<CutListInputs>): void
  planCutList(): Promise<void>
  /** makes the workbook of the planned list and gives it with its name, or null where that failed (and was said) */
  makeListWorkbook(): Promise<{ readonly fileName: string; readonly base64: string } | null>
  /** the list as it was left, unless something is typed already */
  recallCutList(): Promise<void>
}

export function cutListActions({ client, get, set, say, watched }: SessionParts): CutListActions & {
  /** keeps at once what is not kept yet */
  keepCutList(): void
} {
  let newest = 0
  const saver = autosave(() => {
    client.call('cutlist.keep', inputsOf(get().cutList)).catch((error: unknown) => say(sentenceOf(error)))
  })
  return {
    keepCutList: () => saver.flush(),
    async recallCutList() {
      try {
        const kept = await client.call('cutlist.kept', {})
        const { text, stockText } = get().cutList
        if (kept !== null && text === '' && stockText === '') set({ cutList: { ...get().cutList, ...kept } })
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    async makeListWorkbook() {
      const request = cutListRequest(inputsOf(get().cutList))
      if (request === null) return null
      try {
        return await client.call('cutlist.workbook', request)
      } catch (error) {
        say(sentenceOf(error))
        return null
      }
    },
    editCutList(patch) {
      set({ cutList: { ...get().cutList, ...patch } })
      saver.touch()
    },
    async planCutList() {
      const answered = inputsOf(get().cutList)
      const request = cutListRequest(answered)
      if (request === null) return
      newest += 1
      const run = newest
      // an answer that comes after a newer plan was asked for is dropped
      const settle = (patch: Partial<CutListState>) => {
        if (run === newest) set({ cutList: { ...get().cutList, running: false, ...patch } })
      }
      set({ cutList: { ...get().cutList, running: true, failure: null } })
      try {
        const answer = await watched('cut list', (task) => client.call('cutlist.run', { ...request, task }))
        settle({ answer, answered })
      } catch (error) {
        settle({ failure: sentenceOf(error) })
      }
    },
  }
}
