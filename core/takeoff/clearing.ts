import type { Cause } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { inches, toFeet } from '../units/index.ts'
import type { GoodShare, TaskShare } from './tally.ts'
import type { Volumes } from './types.ts'

/** lb of each square foot of an old wood platform, its frame included: common practice, no source. */
const PLATFORM_LB = 10

/** Cubic yards of debris, as thrown, of each square foot of an old platform: common practice, no source. */
const PLATFORM_YARDS = 0.02

/** lb of a cubic foot of concrete, and of one old footing with the soil on it: common practice, no source. */
const CONCRETE_LB = 150
const FOOTING_LB = 300

/** lb of a cubic foot of loose soil: common practice, no source. */
const SOIL_LB = 75

/** What a trailer takes on one trip, lb: common practice, no source. */
const TRAILER_LB = 3_000

/** Broken concrete takes half as much room again: common practice, no source. */
const BULKING = 1.5

/** The rates for breaking a slab are those of one 4 in thick; hours grow with the thickness. */
const RATED_THICKNESS = inches(4)

/** What leaves the place: its weight and its room, by what it was. */
interface Load {
  readonly pounds: number
  readonly yards: number
}

/** Pulling down, breaking, loading and hauling, and the fee at the tip. */
export function clearing(
  job: Job,
  volumes: Volumes,
): { readonly tasks: readonly TaskShare[]; readonly goods: readonly GoodShare[] } {
  const { work } = job
  const loads = [platform(job), footings(job), slab(job)]
  const debris = loads.reduce((sum, { yards }) => sum + yards, 0)
  const soil = work.haulSpoil ? volumes.spoilLoose * SOIL_LB : 0
  const pounds = loads.reduce((sum, load) => sum + load.pounds, 0) + soil
  const because = (fields: readonly string[], rule: string): Cause => ({ fields, ids: [], rule })
  const trips = Math.ceil(pounds / TRAILER_LB)
  const all = ['work.oldDeck', 'work.oldFootings', 'work.slab', 'work.slabThickness', 'work.haulSpoil']
  const weight = `${Math.ceil(pounds)} lb of debris and soil`
  const tasks: readonly TaskShare[] = [
    {
      rateId: 'mark-services',
      quantity: work.markServices ? 1 : 0,
      cause: because(['work.markServices'], 'Before anything is dug'),
    },
    {
      rateId: 'demo-platform',
      quantity: work.oldDeck,
      cause: because(['work.oldDeck'], 'Area of the old deck'),
    },
    {
      rateId: 'demo-pier',
      quantity: work.oldFootings,
      cause: because(['work.oldFootings'], 'One per old footing'),
    },
    {
      rateId: work.slabSteel ? 'demo-slab-mesh' : 'demo-slab-plain',
      quantity: (work.slab * work.slabThickness) / RATED_THICKNESS,
      cause: because(
        ['work.slab', 'work.slabThickness', 'work.slabSteel'],
        `${work.slab} sq ft, ${(work.slabThickness / RATED_THICKNESS).toFixed(2)} times the 4 in that the rate is for (common practice, no source)`,
      ),
    },
    {
      rateId: 'demo-debris-load',
      quantity: debris,
      cause: because(all, 'Debris as thrown, in cubic yards (common practice, no source)'),
    },
    {
      rateId: 'haul-trip',
      quantity: trips,
      cause: because(all, `${weight}, ${TRAILER_LB} lb a trailer (common practice, no source)`),
    },
  ]
  const goods: readonly GoodShare[] = [
    {
      sku: 'disposal-ton',
      quantity: pounds / 2000,
      cause: because(all, `${weight} at the tip (weights: common practice, no source)`),
    },
  ]
  return { tasks, goods }
}

function platform({ work }: Job): Load {
  return { pounds: work.oldDeck * PLATFORM_LB, yards: work.oldDeck * PLATFORM_YARDS }
}

function footings({ work }: Job): Load {
  const pounds = work.oldFootings * FOOTING_LB
  return { pounds, yards: (pounds / CONCRETE_LB / 27) * BULKING }
}

function slab({ work }: Job): Load {
  const cubicFeet = work.slab * toFeet(work.slabThickness)
  return { pounds: cubicFeet * CONCRETE_LB, yards: (cubicFeet / 27) * BULKING }
}
