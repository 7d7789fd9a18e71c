import type { CompareRow } from '../../../core/compare/index.ts'
import { printDollars } from '../../state/print.ts'
import { TAPE_STEP } from '../../state/tape-range.ts'
import { curveParts, type MoneyScale, type TapeScale, xOf, yOf } from './tape-scale.ts'

/** Price per square foot along the width, with the present width and its best neighbours marked on it. */
export function Curve({
  rows,
  scale,
  money,
  here,
  neighbours,
  earlier,
}: {
  readonly rows: readonly CompareRow[]
  readonly scale: TapeScale
  readonly money: MoneyScale
  readonly here: { readonly width: number; readonly level: number | null }
  readonly neighbours: readonly (CompareRow & { readonly saves: boolean })[]
  /** the curve before the last edit, drawn soft where the new one is not there yet */
  readonly earlier: readonly CompareRow[]
}) {
  const y = (amount: number) => yOf(money, amount)
  const onTape = (row: CompareRow) => row.width >= scale.from && row.width <= scale.to
  const lined = rows.filter(onTape)
  return (
    <g>
      {money.marks.map((mark) => (
        <g key={mark}>
          <line className="tape-level" x1={scale.left} x2={scale.right} y1={y(mark)} y2={y(mark)} />
          <text className="tape-money" x={scale.left - 7} y={y(mark)} dy="0.35em" textAnchor="end">
            {printDollars(mark)}
          </text>
        </g>
      ))}
      {curveParts(earlier.filter(onTape), TAPE_STEP).map((part) => (
        <polyline
          key={part[0]?.width}
          className="tape-curve is-earlier"
          points={part.map((row) => `${xOf(scale, row.width)},${y(row.perSquareFoot)}`).join(' ')}
        />
      ))}
      {curveParts(lined, TAPE_STEP).map((part) => (
        <polyline
          key={part[0]?.width}
          className="tape-curve"
          points={part.map((row) => `${xOf(scale, row.width)},${y(row.perSquareFoot)}`).join(' ')}
        />
      ))}
      {neighbours.map((each) => (
        <circle
          key={each.width}
          className={each.saves ? 'tape-best saves' : 'tape-best'}
          cx={xOf(scale, each.width)}
          cy={y(each.perSquareFoot)}
          r={4.5}
        />
      ))}
      {here.level !== null && (
        <circle className="tape-here" cx={xOf(scale, here.width)} cy={y(here.level)} r={4.5} />
      )}
    </g>
  )
}
