import type { Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { governingLoad, soilPressure } from '../rules/index.ts'
import {
  onFlight,
  type PlacedFlight,
  type Platform,
  type Spot,
  type StairFooting,
  type StairPlan,
} from '../stairs/index.ts'
import { toFeet, toInches } from '../units/index.ts'
import { walkedOf, walkedRun } from './flight-load.ts'
import { concreteWeight, widthOf } from './footing-load.ts'
import type { FootingLoad } from './footing-loads.ts'
import { bearingOf } from './soil.ts'

/** A footing of stairs with what bears on it, sq ft on the level. */
export interface LoadedStairFooting {
  readonly footing: StairFooting
  /** the post of a landing that stands on it; null where a stringer does */
  readonly post: Member | null
  /** of the landing itself */
  readonly ofLanding: number
  /** of flights: half of each that lands on the landing or hangs from it, or that stands on the ground */
  readonly ofFlights: number
  /** of those, the one that hangs from a header on the post's face */
  readonly onHeader: number
  /** from the post's middle to that of the landing's beam on it, ticks */
  readonly beamOff: number
}

/**
 * What the footings of one of the stairs bear. A landing's two beams bear half of it each, and half of each flight that
 * meets its edge is borne where it meets it; along a beam each post takes what lies nearest. A stringer's foot bears half
 * of its flight as wide as stringers stand apart. Common practice, as for the deck's tributary areas; no source for stairs.
 */
export function loadedStairFootings({
  footings,
  flights,
  patterns,
  members,
  platform,
}: StairPlan): readonly LoadedStairFooting[] {
  const posts = new Map(members.filter(({ role }) => role === 'landing post').map((post) => [post.id, post]))
  const postOf = (footing: StairFooting) => footing.cause.ids.flatMap((id) => posts.get(id) ?? [])[0] ?? null
  const last = patterns.find(({ flight }) => flight === flights.at(-1)?.number)
  const underStringer = last === undefined ? 0 : areaOf(walkedRun(last) / 2, last.spacing)
  const underPosts = footings.filter((footing) => postOf(footing) !== null)
  return footings.map((footing) => {
    const post = postOf(footing)
    if (post === null || platform === null)
      return { footing, post, ofLanding: 0, ofFlights: underStringer, onHeader: 0, beamOff: 0 }
    const place = placeOn(platform, footing)
    const beam = underPosts
      .map((one) => placeOn(platform, one))
      .filter((one) => isFar(platform, one) === isFar(platform, place))
    const takes = intervalOf(place, beam, platform.width)
    const ofLanding = areaOf(platform.depth / 2, takes.to - takes.from)
    const [upper = 0, lower = 0] = flights.slice(0, 2).map((flight, i) => {
      const edge = (i === 0 ? [flight.run, flight.run] : [0, 0]).map((down, end) =>
        placeOn(platform, onFlight(flight, down, end * flight.width)),
      )
      const share = shareOf(platform, edge[0], edge[1], place, takes)
      return share * halfOf(flight, walkedOf({ patterns }, flight))
    })
    const beamOff = isFar(platform, place) ? platform.outerOff : 0
    return { footing, post, ofLanding, ofFlights: upper + lower, onHeader: lower, beamOff }
  })
}

/** Loads and pressures of the footings of stairs; they stand under no continuous beam that is reckoned. */
export function stairFootingLoads(job: Job, stairs: readonly StairPlan[]): readonly FootingLoad[] {
  const { psf: bearing } = bearingOf(job)
  const { liveLoad, snowLoad, deadLoad } = job.site
  return stairs.flatMap(loadedStairFootings).map(({ footing, ofLanding, ofFlights }) => {
    const area = ofLanding + ofFlights
    const load = area * (governingLoad(liveLoad, snowLoad) + deadLoad)
    const ownWeight = concreteWeight(footing)
    const width = toInches(widthOf(footing))
    return {
      footingId: footing.id,
      area,
      load,
      worst: null,
      ofStairs: 0,
      worstPressure: null,
      worstNeeds: null,
      ownWeight,
      pressure: soilPressure(load, width),
      pressureWithOwnWeight: soilPressure(load + ownWeight, width),
      bearing,
    }
  })
}

/** Down and across on a landing, ticks. */
interface Place {
  readonly down: number
  readonly across: number
}

function placeOn({ corner, down, across }: Platform, { x, y }: Spot): Place {
  const [dx, dy] = [x - corner.x, y - corner.y]
  return { down: dx * down.x + dy * down.y, across: dx * across.x + dy * across.y }
}

function isFar({ depth }: Platform, { down }: Place): boolean {
  return down > depth / 2
}

/** What of a beam lies nearer to a post than to any other on it. */
function intervalOf(post: Place, beam: readonly Place[], width: number): { from: number; to: number } {
  const others = beam.map(({ across }) => across)
  const before = Math.max(...others.filter((across) => across < post.across), Number.NEGATIVE_INFINITY)
  const after = Math.min(...others.filter((across) => across > post.across), Number.POSITIVE_INFINITY)
  return {
    from: Number.isFinite(before) ? (before + post.across) / 2 : 0,
    to: Number.isFinite(after) ? (after + post.across) / 2 : width,
  }
}

/** Which share of what bears on a line of the landing's edge its post takes; 0 to 1. */
function shareOf(
  platform: Platform,
  one: Place | undefined,
  other: Place | undefined,
  post: Place,
  takes: { readonly from: number; readonly to: number },
): number {
  if (one === undefined || other === undefined) return 0
  const middle = { down: (one.down + other.down) / 2, across: (one.across + other.across) / 2 }
  const far = Math.min(1, Math.max(0, middle.down / platform.depth))
  const ofBeam = isFar(platform, post) ? far : 1 - far
  const [from, to] = [Math.min(one.across, other.across), Math.max(one.across, other.across)]
  if (to - from < 1) {
    // a side of the landing: the last post of each beam takes it
    const own = middle.across <= platform.width / 2 ? takes.from <= 0 : takes.to >= platform.width
    return own ? ofBeam : 0
  }
  return (ofBeam * Math.max(0, Math.min(to, takes.to) - Math.max(from, takes.from))) / (to - from)
}

/** sq ft of half a flight, by what is walked on of it. */
function halfOf({ width }: PlacedFlight, span: number): number {
  return areaOf(width, span / 2)
}

function areaOf(one: number, other: number): number {
  return toFeet(one) * toFeet(other)
}
