import type { Estimate, Planned } from '../../estimate-types.ts'
import { printInches, printLength, type Ticks } from '../../units/index.ts'
import type { BoardName } from '../cutting/board-names.ts'
import { endWords, isOffSquare, runPieceEnds } from '../cutting/cut-ends.ts'
import { isFitted } from '../cutting/fitted.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Every piece of a product with where it goes and which board it comes from, in the order of the frame, its stairs and its guard. */
export function piecesByPlace(
  { takeoff, frame, stairs, guard }: Pick<Estimate, 'takeoff' | 'frame' | 'stairs' | 'guard'>,
  { plan, product }: Planned,
  boardName: BoardName,
): PaperTable {
  const boards = new Map(
    plan.boards.flatMap(({ number, cuts }) => cuts.map(({ pieceId }) => [pieceId, number])),
  )
  const fixed = new Map(takeoff.pieces.map((piece) => [piece.id, piece]))
  const all = [...frame.members, ...stairs.flatMap((one) => one.members), ...(guard?.members ?? [])]
  const members = new Map(all.map((member, index) => [member.id, { member, index }]))
  const runs = new Map(plan.runPieces.map((piece) => [piece.id, piece]))
  const rows = plan.boards
    .flatMap(({ cuts }) => cuts)
    .map(({ pieceId, mark, length }) => {
      const piece = fixed.get(pieceId)
      const run = runs.get(pieceId)
      const found = members.get(piece?.memberId ?? run?.memberId ?? '')
      return {
        order: found?.index ?? members.size,
        from: run?.from ?? 0,
        row: {
          mark,
          place: [piece?.place ?? placeInRun(found?.member, run), finish(piece, found?.member, run)]
            .filter((words) => words !== '')
            .join('; '),
          length: printLength(length),
          ends: endsOf(frame.hips, found?.member, run),
          board: boardName(boards.get(pieceId) ?? 0),
        },
      }
    })
    .sort((a, b) => a.order - b.order || a.from - b.from)
  return tableOf(
    `pieces-${plan.jobId}`,
    `${product.size}: pieces by place, for handing up`,
    [
      ['mark', 'Piece', 'left'],
      ['place', 'Where it goes', 'left'],
      ['length', 'Cut to', 'right'],
      ...(rows.some(({ row }) => row.ends !== '') ? ([['ends', 'Ends off square', 'left']] as const) : []),
      ['board', 'Board', 'right'],
    ],
    rows.map(({ row }) => row),
  )
}

/** Ends of a hip's halves are told by where they are: left and right are others on either face of it. */
function endsOf(
  hips: Estimate['frame']['hips'],
  member: Estimate['frame']['members'][number] | undefined,
  run: Planned['plan']['runPieces'][number] | undefined,
): string {
  if (member === undefined) return ''
  const ends = run === undefined ? member.ends : runPieceEnds(member, run)
  const hip = hips.find(({ memberIds }) => memberIds.includes(member.id))
  if (hip === undefined) return endWords(member, ends)
  const { inside, outside } = hip
  const atHouse = [inside.x < outside.x ? 'left' : 'right', inside.y < outside.y ? 'rear' : 'front']
  return endWords(member, ends, (end) => `${end}, at the ${atHouse.includes(end) ? 'house' : 'rims'},`)
}

function placeInRun(
  member: Estimate['frame']['members'][number] | undefined,
  run: Planned['plan']['runPieces'][number] | undefined,
): string {
  if (member === undefined || run === undefined) return ''
  const whole = run.from === 0 && run.to === member.length
  const part = whole ? 'whole' : `${printLength(run.from)} to ${printLength(run.to)}`
  // the piece's own mark names the member before its dash
  return `${member.role}, ${part}`
}

/** What is cut only where the piece lies: the mark of a corner that reaches into a board is made there. */
function finish(
  piece: { readonly length: Ticks; readonly finished: Ticks } | undefined,
  member: Estimate['frame']['members'][number] | undefined,
  run: Planned['plan']['runPieces'][number] | undefined,
): string {
  return [
    ...(piece === undefined || piece.length === piece.finished
      ? []
      : [`cut to ${printLength(piece.finished)} in place`]),
    ...(member?.ripTo == null
      ? []
      : [
          `rip to ${printInches(member.ripTo)}${isOffSquare(member, run) ? ', then mitre what is left of its width: it is sawn square' : ''}`,
        ]),
    ...(member !== undefined && isFitted(member) ? ['notch or fit it in place'] : []),
  ].join(', ')
}
