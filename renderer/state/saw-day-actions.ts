import type { DayState } from '../../core/cutting/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { boardsOf, type ProductDay } from './saw-day.ts'
import type { SessionParts } from './session-parts.ts'

export interface SawDayActions {
  /** shows the boards one by one, to be marked as they are sawn */
  goToSaw(atSaw: boolean): void
  /** changes what is said of one product's boards; null: nothing is said of them any more */
  setDay(planId: string, day: ProductDay | null): void
  planTheRest(planId: string): Promise<void>
}

const OTHERWISE =
  'The plan came out otherwise than the one whose boards are marked: prices or offcuts on hand have changed since. Wait until the new estimate is there, then start the day again.'

export function sawDayActions({ client, store, watched }: SessionParts): SawDayActions {
  const setDay = (planId: string, day: ProductDay | null) => {
    const { [planId]: _before, ...others } = store.getState().sawDays
    store.setState({ sawDays: day === null ? others : { ...others, [planId]: day } })
  }
  /** An answer is told only to the day that asked for it. */
  const settle = (planId: string, asked: DayState, patch: Partial<ProductDay>) => {
    const now = store.getState().sawDays[planId]
    if (now !== undefined && now.day === asked) setDay(planId, { ...now, running: false, ...patch })
  }
  return {
    goToSaw: (atSaw) => store.setState({ atSaw }),
    setDay,
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
