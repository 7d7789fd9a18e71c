import { cite, nailing, nailingSources } from '../data/index.ts'
import type { Frame, Member } from '../frame/index.ts'
import { boardFeetOf } from './board-feet.ts'
import { boardScrew } from './board-screw.ts'
import { type Nailed, nailPounds } from './nails.ts'
import type { GoodShare, TaskShare } from './tally.ts'

/** 16d common at each end of a bearer, and screws that hold a box to what it stands on, for each bearer: common practice, no source. */
const NAILS_AN_END = 3
const SCREWS_DOWN = 2

const FIELDS = ['shape.steps', 'shape.stepWidth', 'shape.levels']

/** Nails and screws of the box steps between levels. */
export function stepGoods({ members, steps }: Frame): readonly GoodShare[] {
  const { bearers, boards } = partsOf(members)
  const [first] = boards
  if (first === undefined) return []
  const crossings = boards.reduce((sum, { bearings }) => sum + bearings.length, 0)
  const cause = (rule: string) => ({ fields: FIELDS, ids: bearers.map(({ id }) => id), rule })
  return [
    ...stepNails({ members, steps }).map(nailPounds),
    {
      sku: boardScrew(first.product.size),
      quantity: crossings * nailing.deckScrewsPerJoist,
      cause: cause(
        `${crossings} crossings of step boards and bearers × 2 (${cite(nailingSources.deckScrewsPerJoist)})`,
      ),
    },
    {
      sku: 'screw-deck-3',
      quantity: bearers.length * SCREWS_DOWN,
      cause: cause(
        `${bearers.length} bearers × ${SCREWS_DOWN} down into what the box stands on (common practice, no source)`,
      ),
    },
  ]
}

/** Work on the box steps, at the rates of joists and of treads. */
export function stepTasks({ members, steps }: Frame): readonly TaskShare[] {
  if (steps.length === 0) return []
  const { frames, boards } = partsOf(members)
  const feet = boardFeetOf(frames).reduce((sum, one) => sum + one.thousandths, 0) / 1000
  const cause = (own: readonly Member[], rule: string) => ({
    fields: FIELDS,
    ids: own.map(({ id }) => id),
    rule,
  })
  return [
    { rateId: 'joist', quantity: feet, cause: cause(frames, 'Board feet of the boxes between levels') },
    {
      rateId: 'tread',
      quantity: boards.length,
      cause: cause(boards, 'One per board of a step between levels'),
    },
  ]
}

function partsOf(members: readonly Member[]) {
  const frames = members.filter(({ role }) => role === 'step frame')
  return {
    frames,
    bearers: frames.filter(({ id }) => id.includes('-bearer-')),
    boards: members.filter(({ role }) => role === 'step tread'),
  }
}

/** Joints of the box steps that are nailed. */
export function stepNails({ members, steps }: Pick<Frame, 'members' | 'steps'>): readonly Nailed[] {
  const { bearers } = partsOf(members)
  if (bearers.length === 0) return []
  return [
    {
      nail: '16d common',
      count: 2 * bearers.length * NAILS_AN_END,
      each: `${NAILS_AN_END} at each end`,
      joint: `box ${steps.map(({ id }) => id).join(', ')}: bearer between front and back`,
      says: 'common practice, no source',
      fields: FIELDS,
      ids: bearers.map(({ id }) => id),
    },
  ]
}
