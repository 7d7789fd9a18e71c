import { edgesOf } from '../../../core/cutting/index.ts'
import { printLength, TICKS_PER_FOOT, ticks } from '../../../core/units/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import type { BoardGroup } from './board-groups.ts'

const HEIGHT = 20
/** room of one letter of a piece's text, px */
const LETTER = 6.6

/** Boards cut alike, to scale: pieces with mark and length, kerfs as gaps, the offcut dashed. */
export function BoardStrip({
  group,
  longest,
  width,
  memberOf,
}: {
  readonly group: BoardGroup
  readonly longest: number
  readonly width: number
  readonly memberOf: ReadonlyMap<string, string>
}) {
  const session = useSession()
  const selected = useJob((state) => state.selected)
  const hovered = useJob((state) => state.hovered)
  const [board] = group.boards
  if (!board) return null
  const scale = (width - 2) / longest
  const marksOf = (index: number) => group.boards.flatMap((each) => each.cuts[index]?.mark ?? [])
  const end = board.cuts.at(-1)?.to ?? 0
  return (
    <svg className="board-strip" width={width} height={HEIGHT + 2} role="img" aria-label={describe(group)}>
      <rect className="board-offcut" x={1} y={1} width={board.length * scale} height={HEIGHT} />
      {board.cuts.map((cut, index) => {
        const x = 1 + cut.from * scale
        const wide = (cut.to - cut.from) * scale
        const members = group.boards.flatMap((each) => memberOf.get(each.cuts[index]?.pieceId ?? '') ?? [])
        const [first] = members
        const state = members.includes(selected ?? '')
          ? ' is-selected'
          : members.includes(hovered ?? '')
            ? ' is-hovered'
            : ''
        return (
          <g
            key={cut.pieceId}
            className="board-piece"
            onPointerEnter={() => session.hover(first ?? null)}
            onPointerLeave={() => session.hover(null)}
            onClick={() => session.select(first ?? null)}
          >
            <polygon className={`board-wood${state}`} points={cornersOf(cut, scale)} />
            <text x={x + wide / 2} y={HEIGHT / 2 + 1} dy="0.35em" textAnchor="middle">
              {fitted(marksOf(index), printLength(cut.length), wide)}
            </text>
          </g>
        )
      })}
      {fitted([], printLength(ticks(board.offcut)), board.offcut * scale) !== '' && (
        <text
          className="board-left"
          x={1 + (end * scale + board.length * scale) / 2}
          y={HEIGHT / 2 + 1}
          dy="0.35em"
          textAnchor="middle"
        >
          {printLength(ticks(board.offcut))}
        </text>
      )}
    </svg>
  )
}

/** Corners of a piece on the strip, the board's far edge on top. */
function cornersOf(cut: BoardGroup['boards'][number]['cuts'][number], scale: number): string {
  const { near, far } = edgesOf(cut)
  const corner = (at: number, y: number) => `${1 + at * scale},${y}`
  return [
    corner(far[0], 1),
    corner(far[1], 1),
    corner(near[1], 1 + HEIGHT),
    corner(near[0], 1 + HEIGHT),
  ].join(' ')
}

/** As much of marks and length as the piece has room for. */
export function fitted(marks: readonly string[], length: string, wide: number): string {
  const [first = ''] = marks
  const all = marks.some((mark) => mark !== first) ? `${first} … ${marks.at(-1)}` : first
  const choices = marks.length === 0 ? [length] : [`${all}  ${length}`, `${first}  ${length}`, all, first]
  return choices.find((text) => text.length * LETTER + 6 <= wide) ?? ''
}

function describe({ boards, length }: BoardGroup): string {
  const [board] = boards
  const pieces = (board?.cuts ?? []).map((cut) => `${cut.mark} ${printLength(cut.length)}`).join(', ')
  const numbers = boards.map((each) => each.number).join(', ')
  return `Board ${numbers}, ${length / TICKS_PER_FOOT} ft: ${pieces}; left over ${printLength(ticks(board?.offcut ?? 0))}`
}
