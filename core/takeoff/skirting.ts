import { sectionOf } from '../data/index.ts'
import type { Cause, Frame, FreeEdge } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { feet, inches, toFeet } from '../units/index.ts'
import type { GoodShare, TaskShare } from './tally.ts'

/** Skirting keeps off the ground by this much: common practice, no source. */
const OFF_GROUND = inches(2)

/** Lower openings than this are left open: common practice, no source. */
const LEAST_HEIGHT = inches(6)

/** Panels of lattice are 8 ft long and 4 ft high; uprights of the framing stand 4 ft apart: common practice, no source. */
const PANEL = { long: feet(8), high: feet(4) }
const UPRIGHTS = feet(4)

/** What closes the room under the deck on its free edges: panels or boards, and 2x4 framing behind them. */
export function skirtingGoods(job: Job, frame: Pick<Frame, 'freeEdges'>): readonly GoodShare[] {
  const { skirting } = job.decking
  if (skirting === 'none') return []
  return skirted(frame).flatMap((edge): readonly GoodShare[] => {
    const high = heightOf(edge)
    const framing = 2 * edge.length + (Math.ceil(edge.length / UPRIGHTS) + 1) * high
    const cause = becauseOf(edge)
    const infill: GoodShare =
      skirting === 'lattice'
        ? {
            sku: 'skirt-lattice-4x8',
            quantity: Math.ceil(edge.length / PANEL.long) * Math.ceil(high / PANEL.high),
            cause: { ...cause, rule: `${cause.rule}, in whole panels of 4 ft by 8 ft` },
          }
        : {
            sku: 'skirt-board',
            quantity: toFeet(boardsIn(edge.length) * high),
            cause: { ...cause, rule: `${cause.rule}, upright boards of 5 1/2 in with gaps of 1/4 in` },
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
    quantity: toFeet(edge.length) * toFeet(heightOf(edge)),
    cause: { ...becauseOf(edge), rule: 'Length × height of what is closed' },
  }))
}

function skirted({ freeEdges }: Pick<Frame, 'freeEdges'>): readonly FreeEdge[] {
  return freeEdges.filter((edge) => heightOf(edge) >= LEAST_HEIGHT)
}

/** From the joists' underside to a little over the ground, in the middle of the edge. */
function heightOf({ clear }: FreeEdge): number {
  return clear - OFF_GROUND
}

function boardsIn(length: number): number {
  const gap = inches(0.25)
  return Math.ceil((length + gap) / (sectionOf('5/4x6').depth + gap))
}

function becauseOf({ number }: FreeEdge): Cause {
  return {
    fields: ['decking.skirting', 'size.height', 'site.ground'],
    ids: [],
    rule: `Edge ${number}, from the joists to 2 in over the ground (common practice, no source)`,
  }
}
