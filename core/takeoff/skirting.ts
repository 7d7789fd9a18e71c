import { sectionOf } from '../data/index.ts'
import type { Cause, Frame, FreeEdge } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { feet, inches, toFeet } from '../units/index.ts'
import type { GoodShare, TaskShare } from './tally.ts'

/** Skirting keeps off the ground, or a lower level's boards, by this much: common practice, no source. */
const OFF_GROUND = inches(2)

/** Lower openings than this are left open: common practice, no source. */
const LEAST_HEIGHT = inches(6)

/** Panels of lattice are 8 ft long and 4 ft high; uprights of the framing stand 4 ft apart: common practice, no source. */
const PANEL = { long: feet(8), high: feet(4) }
const UPRIGHTS = feet(4)

/** Boards are sold in 12 ft, and each is cut from one. */
const BOARD = { long: feet(12), wide: sectionOf('5/4x6').depth, gap: inches(0.25) }

/** What closes the room under the deck on its free edges: panels or boards, and 2x4 framing behind them. */
export function skirtingGoods(job: Job, frame: Pick<Frame, 'freeEdges'>): readonly GoodShare[] {
  const { skirting } = job.decking
  if (skirting === 'none') return []
  return skirted(frame).flatMap((edge): readonly GoodShare[] => {
    const uprights = Math.ceil(edge.length / UPRIGHTS) + 1
    const framing = 2 * edge.length + uprights * meanOf(edge)
    const cause = becauseOf(edge)
    const infill: GoodShare =
      skirting === 'lattice'
        ? {
            sku: 'skirt-lattice-4x8',
            quantity:
              Math.ceil(edge.length / PANEL.long) * Math.ceil(Math.max(...heights(edge)) / PANEL.high),
            cause: { ...cause, rule: `${cause.rule}, in whole panels of 4 ft by 8 ft` },
          }
        : {
            sku: 'skirt-board',
            quantity: toFeet(BOARD.long) * piecesFor(boardsOf(edge), job.cutting.kerf),
            cause: {
              ...cause,
              rule: `${cause.rule}, upright boards of 5 1/2 in with gaps of 1/4 in, each from one piece of 12 ft`,
            },
          }
    return [
      infill,
      {
        sku: 'skirt-framing',
        quantity: toFeet(framing),
        cause: { ...cause, rule: `${cause.rule}, a 2x4 above and below and one upright every 4 ft` },
      },
    ]
  })
}

/** Square feet of skirting, framing and cutting to the ground among them. */
export function skirtingTasks(job: Job, frame: Pick<Frame, 'freeEdges'>): readonly TaskShare[] {
  if (job.decking.skirting === 'none') return []
  return skirted(frame).map((edge) => ({
    rateId: 'skirting',
    quantity: toFeet(edge.length) * toFeet(meanOf(edge)),
    cause: { ...becauseOf(edge), rule: 'Length × height of what is closed' },
  }))
}

/** Edges at which the opening is high enough at one end at least. */
function skirted({ freeEdges }: Pick<Frame, 'freeEdges'>): readonly FreeEdge[] {
  return freeEdges.filter((edge) => Math.max(...heights(edge)) >= LEAST_HEIGHT)
}

/** From the joists' underside to a little over the ground, at either end of the edge. */
function heights({ clear: [from, to] }: FreeEdge): readonly [number, number] {
  return [Math.max(0, from - OFF_GROUND), Math.max(0, to - OFF_GROUND)]
}

function meanOf(edge: FreeEdge): number {
  const [from, to] = heights(edge)
  return (from + to) / 2
}

/** Lengths of the boards along an edge: each as long as at its deeper side. */
function boardsOf(edge: FreeEdge): readonly number[] {
  const [from, to] = heights(edge)
  const { wide, gap } = BOARD
  const count = Math.ceil((edge.length + gap) / (wide + gap))
  const heightAt = (along: number) => from + ((to - from) * Math.min(along, edge.length)) / edge.length
  return Array.from({ length: count }, (_, i) => {
    const at = i * (wide + gap)
    return Math.max(heightAt(at), heightAt(at + wide))
  })
}

/** Pieces of stock from which boards come, the longest laid out first; one longer than stock takes several. */
function piecesFor(boards: readonly number[], kerf: number): number {
  const left: number[] = []
  for (const board of boards.toSorted((a, b) => b - a)) {
    const found = left.findIndex((room) => room >= board)
    if (found >= 0) left[found] = (left[found] ?? 0) - board - kerf
    else
      for (let rest = board; rest > 0; rest -= BOARD.long)
        left.push(BOARD.long - Math.min(rest, BOARD.long) - kerf)
  }
  return left.length
}

function becauseOf({ number, over }: FreeEdge): Cause {
  return {
    fields: ['decking.skirting', 'size.height', over === null ? 'site.ground' : 'shape.levels'],
    ids: [],
    rule: `Edge ${number}, from the joists to 2 in over ${over === null ? 'the ground' : `the boards of level ${over}`} (common practice, no source)`,
  }
}
