import type { Frame } from '../frame/index.ts'
import type { GuardPlan } from '../guard/index.ts'
import { type Job, specAt } from '../job/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { feet, inches, TICKS_PER_FOOT, toFeet } from '../units/index.ts'
import type { GoodShare } from './tally.ts'
import type { Good } from './types.ts'

/** Square feet that a gallon of stain covers in one coat: common practice, no source. */
const STAIN_COVERS = 200

/** Gravel under a deck: common practice, no source. */
const GRAVEL = inches(2)

/** Fabric laps, percent more than the area: common practice, no source. */
const FABRIC_LAPS = 10

/** lb that a yard's truck carries on one trip: common practice, no source. */
const TRUCK = 10_000

/** lb of one bag of mix. */
const BAG = 80

/** Coats are reckoned on both faces of a guard of wood: square feet for each foot of guard. */
const GUARD_FACES = 2

/** What stands on the deck, as coating and covering see it, in square feet and feet. */
export interface Surfaces {
  readonly floor: number
  readonly steps: number
  readonly guard: number
}

/** Area of decking and of treads and risers, and the length of guard of wood. */
export function surfacesOf(
  job: Job,
  frame: Frame,
  stairs: readonly StairPlan[],
  guard: GuardPlan | null,
): Surfaces {
  const wood = guard !== null && job.guard.infill === 'balusters'
  return {
    floor: frame.areaSquareFeet,
    steps: stairs.reduce((sum, plan) => sum + stepArea(job, plan), 0),
    guard: wood ? toFeet(guard.levelLength + guard.slopedLength) : 0,
  }
}

/** Square feet of treads and closed risers. */
function stepArea(job: Job, { branch, flights, tread, rise }: StairPlan): number {
  const { risers } = specAt(job, branch)
  const treads = flights.reduce((sum, { treads: own, width }) => sum + own * width, 0)
  const each = tread.depth + (risers === 'open' ? 0 : rise)
  return (treads * each) / TICKS_PER_FOOT ** 2
}

/** Tape, stain, fabric and gravel, where the job asks for them. */
export function finishGoods(job: Job, frame: Frame, surfaces: Surfaces): readonly GoodShare[] {
  const { work } = job
  const cause = (field: string, rule: string) => ({
    fields: [field, 'size.width', 'size.depth'],
    ids: [],
    rule: `${rule} (common practice, no source)`,
  })
  const coated = surfaces.floor + surfaces.steps + GUARD_FACES * surfaces.guard * toFeet(job.guard.height)
  return [
    ...(work.joistTape
      ? [
          {
            sku: 'joist-tape',
            quantity: tapeFeet(frame),
            cause: cause('work.joistTape', 'On joists, end joists, rims and each ply of the beams'),
          },
        ]
      : []),
    ...(work.coating > 0
      ? [
          {
            sku: 'deck-stain',
            quantity: (work.coating * coated) / STAIN_COVERS,
            cause: cause(
              'work.coating',
              `${coated.toFixed(0)} sq ft of floor, steps and both faces of the guard, ${work.coating} coats, ${STAIN_COVERS} sq ft a gallon`,
            ),
          },
        ]
      : []),
    ...(work.groundCover
      ? [
          {
            sku: 'ground-fabric',
            quantity: (frame.areaSquareFeet * (100 + FABRIC_LAPS)) / 100,
            cause: cause('work.groundCover', `Area of the deck and ${FABRIC_LAPS} % for laps`),
          },
          {
            sku: 'gravel',
            quantity: frame.areaSquareFeet * toFeet(GRAVEL),
            cause: cause('work.groundCover', '2 in over the area of the deck'),
          },
        ]
      : []),
  ]
}

/** Feet of joists, rims and plies, whose upper edges are taped. */
export function tapeFeet({ members }: Frame): number {
  const roles = ['joist', 'end joist', 'rim', 'beam ply', 'header', 'hip']
  return toFeet(
    members.filter(({ role }) => roles.includes(role)).reduce((sum, { length }) => sum + length, 0),
  )
}

/** Trips of the yard's truck by the weight of wood fresh from treatment and of bags. */
export function deliveryGoods(
  job: Job,
  frame: Frame,
  pounds: number,
  goods: readonly Good[],
): readonly GoodShare[] {
  if (!job.work.delivery) return []
  const bags = (goods.find(({ sku }) => sku === 'concrete-bag-80lb')?.thousandths ?? 0) / 1000
  const weight = pounds + bags * BAG
  const longest = Math.max(feet(1), ...frame.members.map(({ length }) => length))
  return [
    {
      sku: 'delivery-trip',
      quantity: Math.ceil(weight / TRUCK),
      cause: {
        fields: ['work.delivery'],
        ids: [],
        rule: `${Math.ceil(weight)} lb of wood fresh from treatment and ${bags} bags, ${TRUCK} lb a trip (common practice, no source); the longest member is ${toFeet(longest).toFixed(1)} ft`,
      },
    },
  ]
}
