import { useMemo, useState } from 'react'
import type { CostedLine, Costing } from '../../../../core/costing/index.ts'
import { printShare, type Share } from '../../../../core/units/index.ts'
import { Message } from '../../../parts/message.tsx'
import { PlainTable } from '../../../parts/plain-table.tsx'
import { withLineState } from '../../../state/costing-entries.ts'
import { culledByLine } from '../../../state/culled-boards.ts'
import { printThousandths } from '../../../state/print.ts'
import { useJob, useSession } from '../../../state/session-context.ts'
import '../../../parts/field.css'

const BOARDS = new Set(['lumber', 'decking', 'spares'])
const MOST = 10_000

/** Boards that could not be used and boards that were left, by line; what of it the estimate took them to be. */
export function BoardStates({
  costing,
  planned,
}: {
  readonly costing: Costing
  /** share of boards that the job takes to be unusable */
  readonly planned: Share
}) {
  const lines = costing.groups.filter(({ group }) => BOARDS.has(group)).flatMap((group) => group.lines)
  const { boards } = costing
  if (lines.length === 0) return null
  return (
    <section aria-labelledby="boards-left-title">
      <h2 id="boards-left-title">Boards unusable and left over</h2>
      <p className="soft">
        {boards.bought} bought, {boards.unusable} unusable
        {boards.unusableShare === null ? '' : ` (${printShare(boards.unusableShare)})`}, {boards.left} left.
        The job takes {printShare(planned)} to be unusable. What goes back to the yard is a purchase with a
        minus.
      </p>
      <FromTheSaw lines={lines} />
      <PlainTable titled="boards-left-title" headings={['Board', 'Ordered', 'Bought', 'Unusable', 'Left']}>
        {lines.map((one) => (
          <tr key={one.line.line}>
            <th scope="row">{one.line.what}</th>
            <td>{printThousandths(one.line.thousandths)}</td>
            <td>{one.bought === null ? 'not said' : printThousandths(one.bought)}</td>
            <Count costed={one} part="unusable" />
            <Count costed={one} part="left" />
          </tr>
        ))}
      </PlainTable>
    </section>
  )
}

/** What was marked at the saw and is not counted here yet. */
function FromTheSaw({ lines }: { readonly lines: readonly CostedLine[] }) {
  const session = useSession()
  const plans = useJob((state) => state.estimate?.plans)
  const days = useJob((state) => state.sawDays)
  const culled = useMemo(() => culledByLine(plans ?? [], days), [plans, days])
  const more = lines.flatMap(({ line, unusable }) => {
    const count = culled.get(line.line) ?? 0
    return count > unusable ? [{ ...line, count }] : []
  })
  if (more.length === 0) return null
  return (
    <Message
      tone="near"
      action={{
        label: 'Count them here',
        run: () =>
          session.changeEntries(
            'lines',
            (states) =>
              more.reduce((so, { line, count }) => withLineState(so, line, { unusable: count }), states),
            'unusable boards as marked at the saw',
          ),
      }}
    >
      Marked as unusable at the saw: {more.map(({ what, count }) => `${count} of ${what}`).join('; ')}.
    </Message>
  )
}

function Count({ costed, part }: { readonly costed: CostedLine; readonly part: 'unusable' | 'left' }) {
  const session = useSession()
  const { line, what } = costed.line
  const [draft, setDraft] = useState<string | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const kept = costed[part]
  const id = `${part}-${line}`

  function take(text: string) {
    const count = text.trim() === '' ? 0 : Number(text)
    if (!Number.isInteger(count) || count < 0 || count > MOST)
      return setFault(`“${text.trim()}” is no count of boards: write a whole number from 0 to 10,000.`)
    setFault(null)
    setDraft(null)
    if (count !== kept)
      session.changeEntries(
        'lines',
        (states) => withLineState(states, line, { [part]: count }),
        `${what}: ${count} ${part}`,
      )
  }

  return (
    <td className="entry-form">
      <input
        className="costing-count"
        inputMode="numeric"
        aria-label={`${what}: boards ${part === 'left' ? 'left over' : 'unusable'}`}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : `${id}-fault`}
        autoComplete="off"
        value={draft ?? (kept === 0 ? '' : `${kept}`)}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={(event) => draft !== null && take(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take(event.currentTarget.value)
          if (event.key === 'Escape') {
            event.stopPropagation()
            setDraft(null)
            setFault(null)
          }
        }}
      />
      {fault !== null && (
        <p id={`${id}-fault`} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
    </td>
  )
}
