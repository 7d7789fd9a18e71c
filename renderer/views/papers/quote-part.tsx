import { useEffect } from 'react'
import { printMoney, printMoneyChange } from '../../../core/units/index.ts'
import { Message } from '../../parts/message.tsx'
import { useJob, useSession } from '../../state/session-context.ts'
import { today } from '../today.ts'
import { QuoteOptions } from './quote-options.tsx'
import { savePdf } from './save-workbook.ts'
import './quote-part.css'

/** How long an edit rests before quotes are asked about, ms. */
const REST = 600

/** What is offered, what was sent and stays as it was sent, and what changed since. */
export function QuotePart() {
  const session = useSession()
  const edit = useJob((state) => state.edit)
  const isPriced = useJob((state) => state.estimate?.pricing != null)
  const bookDate = useJob((state) => state.prices?.book.date)
  const { date, firm, desk, deskFailure, busy } = useJob((state) => state.papers)

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked for is read from the session when it is asked
  useEffect(() => {
    if (!isPriced || firm === null) return
    const timer = setTimeout(() => void session.readQuotes(), REST)
    return () => clearTimeout(timer)
  }, [session, edit, isPriced, date, firm, bookDate])

  return (
    <section className="group" aria-labelledby="quote-title">
      <h2 id="quote-title">Quote</h2>
      {deskFailure !== null && <Message tone="fails">{deskFailure}</Message>}
      {desk?.warnings.map((words) => (
        <Message key={words} tone="near">
          {words}
        </Message>
      ))}
      <QuoteOptions priced={desk?.options ?? []} />
      {desk !== null && desk.change !== null && (
        <div className="quote-change">
          <h3>Changed since revision {desk.change.from.revision}</h3>
          {desk.change.lines.length === 0 ? (
            <p className="soft">Nothing that has a price.</p>
          ) : (
            <ul className="quote-lines">
              {desk.change.lines.map(({ what, amount }) => (
                <li key={what}>
                  <span>{what}</span>
                  <span className="quote-amount">{printMoneyChange(amount)}</span>
                </li>
              ))}
              <li className="quote-sum">
                <span>Price now</span>
                <span className="quote-amount">{printMoney(desk.change.to.price)}</span>
              </li>
            </ul>
          )}
        </div>
      )}
      {date === '' && (
        <p className="soft">
          State the date on it first: a quote holds from a day.{' '}
          <button type="button" className="link" onClick={() => session.choosePapers({ date: today() })}>
            Today’s
          </button>
        </p>
      )}
      <button
        type="button"
        className="button button-main"
        disabled={busy === 'file' || !isPriced || date === ''}
        onClick={async () => savePdf(session, await session.sendQuote())}
      >
        {busy === 'file' ? 'Making the PDF' : 'Number this quote and save its PDF'}
      </button>
      <p className="soft">
        It is kept below as it leaves you, whatever changes later; the pages at the left are then the next
        draft. Handing it over is yours: nothing is sent from here.
      </p>
      {desk !== null && desk.sent.length > 0 && (
        <>
          <h3>Sent</h3>
          <ul className="quote-lines" aria-label="Quotes sent">
            {desk.sent.map(({ number, revision, date: day, price }) => (
              <li key={revision}>
                <span>
                  Quote {number}, revision {revision}
                  <br />
                  <span className="soft">{day}</span>
                </span>
                <span className="quote-amount">{printMoney(price)}</span>
                <span className="quote-files">
                  <button
                    type="button"
                    className="link"
                    aria-label={`Revision ${revision} as it was sent`}
                    onClick={async () => savePdf(session, await session.sentQuote(revision))}
                  >
                    as sent
                  </button>
                  {revision > 1 && (
                    <button
                      type="button"
                      className="link"
                      aria-label={`Change order from revision ${revision - 1} to ${revision}`}
                      onClick={async () => savePdf(session, await session.changeOrder(revision))}
                    >
                      change order
                    </button>
                  )}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}
