import type { PriceListFault, PriceListRequest } from '../../core/price-list/index.ts'
import type { BookEdit, EditFault } from '../../core/pricing/index.ts'
import type { Methods } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { plural } from './print.ts'
import type { SessionParts } from './session-parts.ts'

export interface PriceActions {
  /** has every estimate use the prices of this file; with any fault in it nothing changes and all are told */
  takePrices(text: string): Promise<void>
  backToSamplePrices(): Promise<void>
  /** what a list of prices would change; null where it could not be asked (and that was said) */
  readPriceList(request: PriceListRequest): Promise<Methods['prices.readList'][1] | null>
  /** takes all prices of a list; its faults where there are any, and nothing is changed then */
  takePriceList(request: PriceListRequest): Promise<readonly PriceListFault[] | null>
  /** the prices as they were before their last change */
  takePricesBack(): Promise<void>
  /** the change of prices that was taken back last, made again */
  makePricesAgain(): Promise<void>
  /** single cells and rows written over, as one change; what is wrong where nothing was changed, null where it could not be asked */
  editPrices(edits: readonly BookEdit[]): Promise<readonly EditFault[] | null>
  /** the prices in use as a file, or null where that failed (and was said) */
  priceFile(): Promise<{ readonly fileName: string; readonly text: string } | null>
}

/** The price book of every estimate; `recompute` is called where it became another. */
export function priceActions(
  { client, get, set, say }: SessionParts,
  recompute: () => void,
): { readonly actions: PriceActions; read(changed: boolean): Promise<void>; dispose(): void } {
  async function read(changed: boolean) {
    try {
      set({ prices: await client.call('prices.current', {}) })
      if (changed) recompute()
    } catch (error) {
      say(sentenceOf(error))
    }
  }

  return {
    read,
    dispose: client.on('prices.changed', () => void read(true)),
    actions: {
      async takePrices(text) {
        try {
          const taken = await client.call('prices.import', { text })
          set({ priceFileFaults: taken.ok ? [] : taken.faults })
          if (taken.ok) say(`Prices taken: ${taken.prices.book.name}, ${taken.prices.book.date}`)
        } catch (error) {
          say(sentenceOf(error))
        }
      },
      async backToSamplePrices() {
        try {
          await client.call('prices.useSample', {})
          set({ priceFileFaults: [] })
          say('The sample prices are used again')
        } catch (error) {
          say(sentenceOf(error))
        }
      },
      async readPriceList(request) {
        try {
          return await client.call('prices.readList', request)
        } catch (error) {
          say(sentenceOf(error))
          return null
        }
      },
      async takePriceList(request) {
        try {
          const taken = await client.call('prices.takeList', request)
          if (!taken.ok) return taken.faults
          set({ priceFileFaults: [] })
          say(`${plural(taken.changed, 'price')} taken`)
          return []
        } catch (error) {
          say(sentenceOf(error))
          return null
        }
      },
      async takePricesBack() {
        const change = get().prices?.lastChange
        try {
          await client.call('prices.takeBack', {})
          set({ priceFileFaults: [] })
          say(`Taken back: ${change ?? 'the last change of prices'}`)
        } catch (error) {
          say(sentenceOf(error))
        }
      },
      async makePricesAgain() {
        const change = get().prices?.nextChange
        try {
          await client.call('prices.makeAgain', {})
          set({ priceFileFaults: [] })
          say(`Made again: ${change ?? 'the change of prices'}`)
        } catch (error) {
          say(sentenceOf(error))
        }
      },
      async editPrices(edits) {
        try {
          const made = await client.call('prices.edit', { edits })
          if (!made.ok) return made.faults
          set({ prices: made.prices, priceFileFaults: [] })
          say(made.label)
          return []
        } catch (error) {
          say(sentenceOf(error))
          return null
        }
      },
      async priceFile() {
        try {
          return await client.call('prices.export', {})
        } catch (error) {
          say(sentenceOf(error))
          return null
        }
      },
    },
  }
}
