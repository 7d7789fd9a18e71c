import type { Estimate } from '../../core/estimate-types.ts'
import { codeOf, sentenceOf } from '../client/call-error.ts'
import { newsBetween } from './news.ts'
import type { SessionParts } from './session-parts.ts'

/** How long the differences of an edit stay on the sill. */
const NEWS_FOR = 15_000
/** moves of a drag within this time are estimated as one, ms */
const GATHER = 20
/** where an estimate takes longer than this, it begins once edits pause for so long: the next one would only stop it, ms */
const SLOW = 500
const PAUSE = 400
/** an estimate that takes longer is shown from first plans meanwhile, ms */
const LONG = 700
/** what was stopped for another window is asked for again after so long, ms */
const ASK_AGAIN = 600

export interface Estimating {
  /** The machine works on the newest of what it is asked; a short wait gathers the moves of one drag. */
  request(wait?: number): void
  /** the news of the next estimates is measured against this one */
  measureFrom(estimate: Estimate | null): void
  /** news of another job is news no more */
  forgetNews(): void
  dispose(): void
}

/** Keeps the whole estimate up with the edits. */
export function estimating({ client, get, set, watched }: SessionParts): Estimating {
  let baseline: Estimate | null = null
  let newsTimer: ReturnType<typeof setTimeout> | undefined
  let timer: ReturnType<typeof setTimeout> | undefined
  /** how long the last one took that was not stopped, ms */
  let took = 0

  async function run() {
    const { edit, open, history } = get()
    const began = performance.now()
    const first = setTimeout(() => void showFirst(edit), LONG)
    try {
      const answer = await watched('estimate', (task) =>
        client.call('estimate.run', { edit, statement: history.present, jobId: open?.id, task }),
      )
      took = performance.now() - began
      if (answer.edit !== get().edit) return
      const { result } = answer
      if (!result.ok) {
        set({ faults: result.faults, estimateFailure: null })
        return
      }
      const news = newsBetween(baseline, result.estimate)
      set({ estimate: result.estimate, estimateEdit: edit, estimateFailure: null, news })
      clearTimeout(newsTimer)
      if (news) newsTimer = setTimeout(() => set({ news: null }), NEWS_FOR)
    } catch (error) {
      if (edit !== get().edit) return
      // stopped for another window's edit: this window's is still wanted
      if (codeOf(error) === 'stopped') request(ASK_AGAIN)
      else set({ estimateFailure: sentenceOf(error) })
    } finally {
      clearTimeout(first)
    }
  }

  /** Figures from first plans, shown as figures that are being worked out still. */
  async function showFirst(edit: number) {
    const { open, history } = get()
    if (edit !== get().edit) return
    const asked = { edit, statement: history.present, jobId: open?.id }
    // where it fails, the whole estimate tells why
    const answer = await client.call('estimate.first', asked).catch(() => null)
    const now = get()
    if (answer === null || edit !== now.edit || now.estimateEdit === edit) return
    if (answer.result.ok) set({ estimate: answer.result.estimate })
  }

  function request(wait: number = took > SLOW ? PAUSE : GATHER) {
    clearTimeout(timer)
    timer = setTimeout(run, wait)
  }

  return {
    request,
    measureFrom(estimate) {
      baseline = estimate
    },
    forgetNews: () => clearTimeout(newsTimer),
    dispose() {
      clearTimeout(newsTimer)
      clearTimeout(timer)
    },
  }
}
