import { type FieldPath, type JobStatement, setField, type Wish, withoutWish } from '../../core/job/index.ts'
import type { WishPrice } from '../../core/wish-price.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'

/** What is known of a wish's price, and of which edit of the job. */
export interface WishAnswer {
  readonly edit: number
  /** null while it is worked out */
  readonly price: WishPrice | null
}

/** A field as it would be with one wish more. */
export interface NewWish {
  readonly key: string
  readonly path: FieldPath
  readonly value: string
}

export interface WishActions {
  /** asks what it would cost to wish for something; nothing of the job changes */
  priceNewWish(wish: NewWish): Promise<void>
  /** asks what it would cost to state several fields otherwise; nothing of the job changes */
  priceChanges(key: string, changes: readonly Omit<NewWish, 'key'>[]): Promise<void>
  /** asks what a wish that the job has costs */
  priceWish(wish: Wish): Promise<void>
  forgetWishPrice(key: string): void
}

/** Prices of wishes, worked one after the other. */
export function wishActions({ client, get, set, watched }: SessionParts): WishActions {
  let last: Promise<void> = Promise.resolve()

  function ask(key: string, of: (present: JobStatement) => [JobStatement, JobStatement]): Promise<void> {
    const { edit } = get()
    const tell = (price: WishPrice | null) =>
      set({ wishPrices: { ...get().wishPrices, [key]: { edit, price } } })
    tell(null)
    last = last.then(async () => {
      const { open, history } = get()
      if (get().edit !== edit || get().wishPrices[key] === undefined) return
      const [statement, wished] = of(history.present)
      try {
        tell(
          await watched('wish', (task) =>
            client.call('wish.price', { statement, wished, jobId: open?.id, task }),
          ),
        )
      } catch (error) {
        tell({ ok: false, message: sentenceOf(error) })
      }
    })
    return last
  }

  return {
    priceNewWish: ({ key, path, value }) => ask(key, (present) => [present, setField(present, path, value)]),
    priceChanges: (key, changes) =>
      ask(key, (present) => [
        present,
        changes.reduce((statement, { path, value }) => setField(statement, path, value), present),
      ]),
    priceWish: (wish) => ask(wish.key, (present) => [withoutWish(present, wish), present]),
    forgetWishPrice(key) {
      const { [key]: _gone, ...wishPrices } = get().wishPrices
      set({ wishPrices })
    },
  }
}
