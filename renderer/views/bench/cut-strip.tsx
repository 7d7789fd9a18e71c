import { printLength, TICKS_PER_FOOT, ticks } from '../../../core/units/index.ts'
import type { MemberCut } from '../../state/board-index.ts'

const WIDE = 320
const GAP = 4

/** A member as it is cut: its pieces to scale, a short red stroke at each joint, the board of each piece below. */
export function CutStrip({ cut, length }: { readonly cut: MemberCut; readonly length: number }) {
  const last = cut.sources.at(-1)
  const total = Math.max(length, last?.to ?? 0)
  const x = (at: number) => (at / total) * WIDE
  const said = cut.sources.map(
    (source) =>
      `${printLength(ticks(source.length))} from board ${source.board.number}, a ${source.board.length / TICKS_PER_FOOT}`,
  )
  return (
    <svg className="cut-strip" viewBox={`0 -4 ${WIDE} 50`} role="img" aria-label={said.join('; ')}>
      {cut.sources.map((source) => {
        const middle = (x(source.from) + x(source.to)) / 2
        return (
          <g key={source.pieceId}>
            <rect x={x(source.from)} y={0} width={x(source.to) - x(source.from)} height={21} />
            <text x={middle} y={15} textAnchor="middle">
              {printLength(ticks(source.length))}
            </text>
            <text className="cut-strip-board" x={middle} y={37} textAnchor="middle">
              board {source.board.number}, a {source.board.length / TICKS_PER_FOOT}
            </text>
          </g>
        )
      })}
      {cut.joints.map(({ at }) => (
        <line key={at} x1={x(at)} x2={x(at)} y1={-GAP} y2={21 + GAP} />
      ))}
    </svg>
  )
}
