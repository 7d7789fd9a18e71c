import type { JobStatement } from '../../core/job/index.ts'
import { codeOf, sentenceOf } from '../client/call-error.ts'
import { autosave } from './autosave.ts'
import { latestOnly } from './latest.ts'
import type { SessionParts } from './session-parts.ts'
import { NO_TIMELINE, type SavedTimeline, timelineChange } from './timeline.ts'

/** a save that failed is tried again after so long */
const RETRY_AFTER = 3_000

export interface Saving {
  /** saves soon */
  touch(): void
  /** saves at once what is unsaved */
  flush(): void
  /** saves at once, whatever was tried before */
  saveNow(): void
  /** the program has this statement, and these steps of the history */
  isSaved(statement: JobStatement, steps: SavedTimeline): void
  /** after a conflict: what is here goes over the other */
  keepMine(): Promise<void>
  dispose(): void
}

/** Keeps the stored job up with the statement. */
export function saving({ client, get, set, say }: SessionParts): Saving {
  const saver = autosave(() => request(undefined))
  let retryTimer: ReturnType<typeof setTimeout> | undefined
  let saved: JobStatement | null = null
  let timeline: SavedTimeline = NO_TIMELINE

  const request = latestOnly(async (_: undefined) => {
    const { open, history } = get()
    const statement = history.present
    const change = timelineChange(timeline, history)
    if (!open || (statement === saved && !change) || get().saving.state === 'conflict') return
    const label = history.gesture?.label ?? history.past.at(-1)?.label ?? 'change'
    try {
      const answer = await client.call('jobs.save', {
        id: open.id,
        revision: open.revision,
        statement,
        label,
        ...(change ? { timeline: change.change } : {}),
      })
      if (get().open?.id !== open.id) return
      saved = statement
      if (change) timeline = change.saved
      set({ open: { ...open, revision: answer.revision } })
      if (get().history === history) set({ saving: { state: 'saved', at: answer.savedAt } })
      else saver.touch()
    } catch (error) {
      const message = sentenceOf(error)
      if (codeOf(error) !== 'conflict') retryTimer = setTimeout(() => request(undefined), RETRY_AFTER)
      set({
        saving: codeOf(error) === 'conflict' ? { state: 'conflict', message } : { state: 'failed', message },
      })
    }
  })

  return {
    touch: () => saver.touch(),
    flush: () => saver.flush(),
    saveNow() {
      set({ saving: get().saving.state === 'failed' ? { state: 'unsaved' } : get().saving })
      saver.flush()
      request(undefined)
    },
    isSaved(statement, steps) {
      saved = statement
      timeline = steps
    },
    async keepMine() {
      const { open } = get()
      if (!open) return
      try {
        const theirs = await client.call('jobs.open', { id: open.id })
        timeline = NO_TIMELINE
        set({ open: { ...open, revision: theirs.revision }, saving: { state: 'unsaved' } })
        request(undefined)
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    dispose() {
      saver.flush()
      clearTimeout(retryTimer)
    },
  }
}
