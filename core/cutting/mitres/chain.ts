import type { Mitres } from '../types.ts'
import { classKey, type EndClass, endClasses, kerfAlong, slantOf } from './slants.ts'
import { reversed, type Step, trails } from './trails.ts'

/** A piece to be laid on a board. */
export interface ToLay {
  readonly length: number
  readonly mitres?: Mitres | undefined
}

/** Where a piece lies on its board: its long points, and whether it is turned end for end. */
export interface Laid<Piece> {
  readonly piece: Piece
  readonly turned: boolean
  readonly from: number
  readonly to: number
}

/**
 * Pieces one after another on a board, from `start`, in an order in which most ends share a cut. Pieces none of whose
 * ends find a like one keep their order.
 */
export function chained<Piece extends ToLay>(
  pieces: readonly Piece[],
  kerf: number,
  start: number,
): readonly Laid<Piece>[] {
  const classes = pieces.map(({ length, mitres }) => endClasses(length, mitres))
  const slants = new Map<string, number>()
  const nameOf = (piece: number, side: 0 | 1): string => {
    const end = classes[piece]?.[side] ?? null
    if (end === null) return `${piece}/${side}`
    slants.set(classKey(end), Math.abs(slantOf(end, end.hundredths)))
    return classKey(end)
  }
  const links = pieces.map((_, piece) => ({ left: nameOf(piece, 0), right: nameOf(piece, 1) }))
  const laid: Laid<Piece>[] = []
  let last: Ends | undefined
  const found = trails(links, (name) => slants.get(name) ?? 0)
  const endsAlong = ({ link, turned }: Step): Ends =>
    endsOf(pieces[link] as Piece, classes[link] ?? [null, null], turned)
  for (const { link, turned } of slantsOutward(found, endsAlong).flat()) {
    const piece = pieces[link] as Piece
    const ends = endsAlong({ link, turned })
    const from = last === undefined ? start : (laid.at(-1)?.to ?? start) + gapOf(last[1], ends[0], kerf)
    laid.push({ piece, turned, from, to: from + piece.length })
    last = ends
  }
  return laid
}

interface End {
  readonly hundredths: number
  readonly shares: EndClass
}
type Ends = readonly [End, End]

function endsOf({ mitres }: ToLay, classes: readonly [EndClass, EndClass], turned: boolean): Ends {
  const left = { hundredths: mitres?.ends[0] ?? 0, shares: classes[0] }
  const right = { hundredths: mitres?.ends[1] ?? 0, shares: classes[1] }
  return turned ? [right, left] : [left, right]
}

/**
 * Stretches of pieces in an order with fewest cuts beside a slanting end that shares none: such ends lie at the board's
 * own ends as far as they can, the square ones face each other. Without slanting ends they stay as they are.
 */
function slantsOutward(stretches: readonly Step[][], endsAlong: (step: Step) => Ends): Step[][] {
  const slants = (stretch: readonly Step[], side: 0 | 1): boolean => {
    const step = stretch.at(side === 0 ? 0 : -1)
    return step !== undefined && endsAlong(step)[side].hundredths !== 0
  }
  const both = stretches.filter((stretch) => slants(stretch, 0) && slants(stretch, 1))
  const none = stretches.filter((stretch) => !slants(stretch, 0) && !slants(stretch, 1))
  const one = stretches
    .filter((stretch) => slants(stretch, 0) !== slants(stretch, 1))
    .map((stretch, k, all) => {
      // turn about: slanting end first, slanting end last; a single one ends the board
      const first = k % 2 === 0 && all.length > 1
      return slants(stretch, 0) === first ? stretch : reversed(stretch)
    })
  return one.length > 1
    ? [...one.slice(0, 1), ...none, ...one.slice(1, 2), ...both, ...one.slice(2)]
    : [...none, ...one, ...both]
}

type Turned = Pick<Laid<ToLay>, 'piece' | 'turned'>

/** From one piece's right long point to the next one's left: where they share a slanting cut, mostly less than nothing. */
export function gapBetween(before: Turned, after: Turned, kerf: number): number {
  return gapOf(endsOfTurned(before)[1], endsOfTurned(after)[0], kerf)
}

function endsOfTurned({ piece, turned }: Turned): Ends {
  return endsOf(piece, endClasses(piece.length, piece.mitres), turned)
}

function gapOf(left: End, right: End, kerf: number): number {
  const along = Math.max(kerfAlong(kerf, left.hundredths), kerfAlong(kerf, right.hundredths))
  if (left.shares === null || right.shares === null || classKey(left.shares) !== classKey(right.shares))
    return along
  return along - Math.abs(slantOf(left.shares, left.hundredths))
}
