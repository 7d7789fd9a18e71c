import { useEffect, useMemo } from 'react'
import { type Job, type Wish, wishesOf } from '../../../../core/job/index.ts'
import { Message } from '../../../parts/message.tsx'
import { useJob, useSession } from '../../../state/session-context.ts'
import { wishWords } from '../../../state/wish-words.ts'
import { Working } from '../../working/working.tsx'
import './wishes.css'

/** What is wished of the order and the cuts: each wish with what it costs, and the way back. */
export function WishList({ job }: { readonly job: Job }) {
  const session = useSession()
  const runs = useJob((state) => state.design?.takeoff.runs)
  const edit = useJob((state) => state.edit)
  const settled = useJob((state) => state.estimateEdit === state.edit && state.history.gesture === null)
  const wishes = useMemo(() => wishesOf(job, runs ?? []), [job, runs])
  useEffect(() => {
    if (!settled) return
    const { wishPrices } = session.store.getState()
    for (const wish of wishes) {
      if (wishPrices[wish.key]?.edit !== edit) void session.priceWish(wish)
    }
  }, [wishes, settled, edit, session])
  return (
    <section className="group" aria-labelledby="wishes-title">
      <h2 id="wishes-title">Wishes</h2>
      {wishes.length === 0 ? (
        <p className="soft">
          None: the order is the cheapest there is. Beside each run and each length you can ask what it would
          cost to hold it in one piece or to do without it.
        </p>
      ) : (
        <ul className="wish-list">
          {wishes.map((wish) => (
            <Wished key={wish.key} wish={wish} />
          ))}
        </ul>
      )}
      <Working kind="wish" what="Working out what a wish costs." stop="Stop" />
    </section>
  )
}

function Wished({ wish }: { readonly wish: Wish }) {
  const session = useSession()
  const answer = useJob((state) => state.wishPrices[wish.key])
  const current = useJob((state) => answer?.edit === state.edit)
  const price = current ? (answer?.price ?? null) : null
  return (
    <li>
      <span className="wish-head">
        <strong>{wish.label}</strong>
        <button
          type="button"
          className="button"
          aria-label={`Take back: ${wish.label}`}
          onClick={() =>
            session.state(
              wish.path,
              wish.without === '' ? undefined : wish.without,
              `no longer: ${wish.label}`,
            )
          }
        >
          Take back
        </button>
      </span>
      {price === null ? (
        <span className="soft">Working out what it costs.</span>
      ) : price.ok ? (
        <span>{wishWords(price)}</span>
      ) : (
        <Message tone="fails">{wishWords(price)}</Message>
      )}
    </li>
  )
}
