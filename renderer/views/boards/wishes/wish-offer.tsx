import { useId } from 'react'
import { Message } from '../../../parts/message.tsx'
import { useJob, useSession } from '../../../state/session-context.ts'
import type { NewWish } from '../../../state/wish-actions.ts'
import { wishWords } from '../../../state/wish-words.ts'
import './wishes.css'

/** A wish that could be: asked for, it says what it would cost; then it is done or left. */
export function WishOffer({
  wish,
  label,
  ask,
  act,
}: {
  readonly wish: NewWish
  /** the wish in words, `Beam B1 in one piece` */
  readonly label: string
  /** on the button that asks, `One piece` */
  readonly ask: string
  /** on the button that does it */
  readonly act: string
}) {
  const session = useSession()
  const id = useId()
  const answer = useJob((state) => state.wishPrices[wish.key])
  const open = useJob((state) => answer?.edit === state.edit)
  const price = answer?.price ?? null
  return (
    <>
      <button
        type="button"
        className="button wish-ask"
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        aria-label={`${ask}? What would it cost: ${label}`}
        title={`${label}: what would it cost?`}
        onClick={() => (open ? session.forgetWishPrice(wish.key) : void session.priceNewWish(wish))}
      >
        {ask}?
      </button>
      {open && (
        <div id={id} className="wish-offer" role="status">
          {price === null ? (
            <span className="soft">Working out what it would cost.</span>
          ) : (
            <>
              {price.ok ? (
                <p>
                  {label}: {wishWords(price)}
                </p>
              ) : (
                <Message tone="fails">{wishWords(price)}</Message>
              )}
              {price.ok && (
                <button
                  type="button"
                  className="button button-main"
                  onClick={() => {
                    session.forgetWishPrice(wish.key)
                    session.state(wish.path, wish.value, label)
                  }}
                >
                  {act}
                </button>
              )}
              <button type="button" className="button" onClick={() => session.forgetWishPrice(wish.key)}>
                Leave it
              </button>
            </>
          )}
        </div>
      )}
    </>
  )
}
