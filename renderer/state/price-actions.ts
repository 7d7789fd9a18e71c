import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'

export interface PriceActions {
  /** has every estimate use the prices of this file; with any fault in it nothing changes and all are told */
  takePrices(text: string): Promise<void>
  backToSamplePrices(): Promise<void>
  /** the prices in use as a file, or null where that failed (and was said) */
  priceFile(): Promise<{ readonly fileName: string; readonly text: string } | null>
}

/** The price book of every estimate; `recompute` is called where it became another. */
export function priceActions(
  { client, set, say }: SessionParts,
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
