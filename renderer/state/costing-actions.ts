import { keptEstimate, type ProposedRate } from '../../core/costing/index.ts'
import { clearField, setField, statedEntries } from '../../core/job/index.ts'
import { printMoney } from '../../core/units/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { type EntryList, type EntryOf, entriesOf, withEntries } from './costing-entries.ts'
import type { SessionParts } from './session-parts.ts'
import type { Stating } from './stating.ts'

export interface CostingActions {
  /** what the work place Price shows: what it should cost, or what it took */
  showPrice(view: 'estimate' | 'costing'): void
  /** keeps the present estimate in the job as what it is held against from this day on; one step */
  beginJob(date: string): void
  /** the job is finished on that day; null: it is under way again */
  finishJob(date: string | null): void
  /** changes one list of what the job took, as one step; nothing happens where it cannot be read */
  changeEntries<L extends EntryList>(
    list: L,
    change: (entries: readonly EntryOf<L>[]) => readonly EntryOf<L>[],
    label: string,
  ): void
  /** what the hours of finished jobs make of the rates; null where it could not be asked (and that was said) */
  proposedRates(): Promise<readonly ProposedRate[] | null>
  /** takes one of them into the price book. @returns whether it was taken */
  takeRate(rate: Pick<ProposedRate, 'rate' | 'proposed' | 'label'>): Promise<boolean>
}

/** What the open job took beside its estimate, and what the book learns from it. */
export function costingActions(
  { client, get, set, say }: SessionParts,
  stating: Pick<Stating, 'restate' | 'state'>,
): CostingActions {
  return {
    showPrice: (priceView) => set({ place: 'price', priceView, why: null }),
    beginJob(date) {
      const { estimate, estimateEdit, edit, prices, history } = get()
      if (estimate?.pricing == null || estimateEdit !== edit || prices === null) {
        say('The price of this state is not there yet: begin once it is.')
        return
      }
      const { pricing } = estimate
      const kept = keptEstimate({ ...estimate, pricing }, prices.book)
      const parts = {
        'costing.begun': date,
        'costing.estimate': statedEntries('kept lines', kept.lines),
        'costing.price': printMoney(kept.price),
        'costing.hourly': printMoney(kept.hourly),
      }
      const statement = Object.entries(parts).reduce(
        (before, [path, value]) => setField(before, path, value),
        clearField(history.present, 'costing.finished'),
      )
      stating.restate(statement, `job begun on this estimate`)
    },
    finishJob: (date) =>
      stating.state(
        'costing.finished',
        date ?? undefined,
        date === null ? 'job under way again' : 'job finished',
      ),
    changeEntries(list, change, label) {
      const { history } = get()
      const entries = entriesOf(history.present, list)
      if (entries === null) {
        say('What the job took cannot be read as it stands in the job file: mend it there.')
        return
      }
      stating.restate(withEntries(history.present, list, change(entries)), label)
    },
    async proposedRates() {
      try {
        return await client.call('rates.proposed', {})
      } catch (error) {
        say(sentenceOf(error))
        return null
      }
    },
    async takeRate({ rate, proposed, label }) {
      try {
        await client.call('rates.take', { rate, crewHours: proposed })
        say(`Taken into the price book: ${label}`)
        return true
      } catch (error) {
        say(sentenceOf(error))
        return false
      }
    },
  }
}
