import type { Pricing } from '../../../core/pricing/index.ts'
import { cents, printMoneyChange, sumCents } from '../../../core/units/index.ts'
import { Message } from '../../parts/message.tsx'
import { plural } from '../../state/print.ts'
import { type StatedLines, useStatedLines } from './use-stated-lines.ts'

/** How much is stated by hand and what it comes to; what of it counts nowhere; the way back for all of it. */
export function StatedSummary({ pricing }: { readonly pricing: Pricing }) {
  const stated = useStatedLines()
  const { lines, idle } = pricing
  if (stated.lines === null)
    return (
      <Message
        tone="fails"
        action={{ label: 'Take all of it away', run: () => stated.clear('lines as computed') }}
      >
        What the job states of single lines cannot be read: mend it under “Lines stated by hand”, where the
        text stands as it is.
      </Message>
    )
  if (stated.lines.size === 0) return null
  const difference = sumCents(
    lines.map(({ overridden, amount }) => cents(amount - (overridden?.computed.amount ?? amount))),
  )
  const { size } = stated.lines
  return (
    <>
      <Message
        tone="plain"
        action={{ label: 'All as computed', run: () => stated.clear('All lines as computed') }}
      >
        {plural(size, 'line is', 'lines are')} stated by hand: {printMoneyChange(difference)} against what was
        computed. Boards are still chosen by the price book.
      </Message>
      {idle.map((each) => (
        <IdleMessage key={each.line} idle={each} stated={stated} />
      ))}
    </>
  )
}

function IdleMessage({
  idle: { line, label, message, fix },
  stated,
}: {
  readonly idle: Pricing['idle'][number]
  readonly stated: StatedLines
}) {
  const takeAway = () => stated.state([{ line, thousandths: null, price: null }], `${label} as computed`)
  return (
    <Message tone="near" action={{ label: 'Take it away', run: takeAway }}>
      {message} {fix}
    </Message>
  )
}
