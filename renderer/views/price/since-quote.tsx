import { useEffect } from 'react'
import type { LineChange } from '../../../core/compare/index.ts'
import { cents, printMoney, printMoneyChange, printUnitPrice } from '../../../core/units/index.ts'
import type { SinceQuote } from '../../../shared/contract/index.ts'
import { Message } from '../../parts/message.tsx'
import { PlainTable } from '../../parts/plain-table.tsx'
import { printThousandths } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'

/** How long an edit rests before the quote is asked about, ms. */
const REST = 600

/** What changed in the price since the quote that was sent last, line by line. */
export function SinceQuotePart() {
  const session = useSession()
  const edit = useJob((state) => state.edit)
  const isPriced = useJob((state) => state.estimate?.pricing != null)
  const job = useJob((state) => state.open?.id)
  const known = useJob((state) => state.sinceQuote)
  const sent = useJob((state) => state.papers.desk?.sent.length)

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked for is read from the session when it is asked
  useEffect(() => {
    if (!isPriced) return
    const timer = setTimeout(() => void session.readSinceQuote(), REST)
    return () => clearTimeout(timer)
  }, [session, job, edit, isPriced, sent])

  if (known === null) return null
  const { since, failure } = known
  return (
    <section
      aria-labelledby="since-quote"
      aria-busy={known.edit !== edit}
      className={known.edit === edit ? undefined : 'is-stale'}
    >
      <h2 id="since-quote">Since the last quote</h2>
      {failure !== null && <Message tone="near">{failure}</Message>}
      {failure === null && since === null && (
        <p className="soft">
          No quote of this job was sent yet. Once one is sent, under Papers, what changes after it stands here
          line by line.
        </p>
      )}
      {since !== null && <Changes since={since} />}
    </section>
  )
}

function Changes({ since }: { readonly since: SinceQuote }) {
  const { from, price, lines, sums, countedOtherwise } = since
  const total = cents(price - from.price)
  const named = `Quote ${from.number}, revision ${from.revision}, of ${from.date}: ${printMoney(from.price)}.`
  if (lines.length === 0 && total === 0) return <p className="soft">{named} Nothing has changed since.</p>
  return (
    <>
      <p>
        {named} Now {printMoney(price)}, {printMoneyChange(total)}.
      </p>
      <PlainTable
        label="Changes since the last quote"
        caption="Lines that differ from the quote sent last"
        headings={['Item', 'Quoted', 'Now', 'Difference']}
      >
        {lines.map((line) => (
          <tr key={line.id}>
            <td>{line.label}</td>
            <td>{figures(line, line.before)}</td>
            <td>{figures(line, line.after)}</td>
            <td>{printMoneyChange(line.difference)}</td>
          </tr>
        ))}
        {sums.map(({ label, difference }) => (
          <tr key={label}>
            <td colSpan={3}>{label}</td>
            <td>{printMoneyChange(difference)}</td>
          </tr>
        ))}
        {countedOtherwise !== 0 && (
          <tr>
            <td colSpan={3}>Counted otherwise by this program than when it was sent</td>
            <td>{printMoneyChange(countedOtherwise)}</td>
          </tr>
        )}
        <tr className="is-sum">
          <td colSpan={3}>What the customer pays</td>
          <td>{printMoneyChange(total)}</td>
        </tr>
      </PlainTable>
    </>
  )
}

/** `17 each × $2.39`; a line that was not there, or is no more, as a dash. */
function figures({ unit }: LineChange, of: LineChange['before']): string {
  return of === null ? '–' : `${printThousandths(of.thousandths)} ${unit} × ${printUnitPrice(of.price)}`
}
