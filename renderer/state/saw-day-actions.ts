import type { DayState } from '../../core/cutting/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { boardsOf, type ProductDay, recalled } from './saw-day.ts'
import type { SessionParts } from './session-parts.ts'

export interface SawDayActions {
  /** shows the boards one by one, to be marked as they are sawn */
  goToSaw(atSaw: boolean): void
  /** changes what is said of one product's boards; null: nothing is said of them any more */
  setDay(planId: string, day: ProductDay | null): void
  planTheRest(planId: string): Promise<void>
  /** the open job's days as they were left; what is marked meanwhile stays */
  recallDays(): Promise<void>
}

const OTHERWISE =
  'The plan came out otherwise than the one whose boards are marked: prices or offcuts on hand have changed since. Wait until the new estimate is there, then start the day again.'

export function sawDayActions({ client, store, say, watched }: SessionParts): SawDayActions {
  /** one after the other, so that the last mark is the one that stays */
  let keeping: Promise<unknown> = Promise.resolve()
  const keep = (planId: string, day: ProductDay | null) => {
    const jobId = store.getState().open?.id
    if (jobId === undefined) return
    const kept = day === null ? null : { boards: day.boards, day: day.day, earlier: day.earlier }
    keeping = keeping
      .then(() => client.call('day.keep', { jobId, planId, kept }))
      .catch((error: unknown) => say(sentenceOf(error)))
  }
  const setDay = (planId: string, day: ProductDay | null) => {
    const { [planId]: before, ...others } = store.getState().sawDays
    store.setState({ sawDays: day === null ? others : { ...others, [planId]: day } })
    if (before?.day !== day?.day || before?.earlier !== day?.earlier) keep(planId, day)
  }
  /** An answer is told only to the day that asked for it. */
  const settle = (planId: string, asked: DayState, patch: Partial<ProductDay>) => {
    const now = store.getState().sawDays[planId]
    if (now !== undefined && now.day === asked) setDay(planId, { ...now, running: false, ...patch })
  }
  return {
    goToSaw: (atSaw) => store.setState({ atSaw }),
    setDay,
    async recallDays() {
      const jobId = store.getState().open?.id
      if (jobId === undefined) return
      try {
        await keeping
        const kept = await client.call('day.kept', { jobId })
        if (store.getState().open?.id !== jobId) return
        const days = Object.fromEntries(kept.map(({ planId, ...day }) => [planId, recalled(day)]))
        store.setState({ sawDays: { ...days, ...store.getState().sawDays } })
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    async planTheRest(planId) {
      const { sawDays, history, open } = store.getState()
      const asked = sawDays[planId]
      if (asked === undefined) return
      setDay(planId, { ...asked, running: true, failure: null })
      const { day } = asked
      try {
        const answer = await watched('the rest', (task) =>
          client.call('day.replan', { statement: history.present, jobId: open?.id, planId, day, task }),
        )
        const same = !answer.ok || boardsOf(answer.plan) === asked.boards
        settle(planId, day, same ? { answer, answered: day } : { failure: OTHERWISE })
      } catch (error) {
        settle(planId, day, { failure: sentenceOf(error) })
      }
    },
  }
}
