import { sentenceOf } from '../client/call-error.ts'
import { type CutListInputs, type CutListState, cutListRequest, inputsOf } from './cut-list-state.ts'
import type { SessionParts } from './session-parts.ts'

export interface CutListActions {
  /** changes the cut list's inputs; its last answer stays until a new one is there */
  editCutList(patch: Partial<CutListInputs>): void
  planCutList(): Promise<void>
}

export function cutListActions({ client, get, set, watched }: SessionParts): CutListActions {
  let newest = 0
  return {
    editCutList(patch) {
      set({ cutList: { ...get().cutList, ...patch } })
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
