import { sectionOf } from '../data/index.ts'
import type { Cause, Member, Role } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { groundAt } from '../layout/index.ts'
import { ceilTicks, feet, inches, type Ticks, ticks } from '../units/index.ts'
import { member } from './flight-members.ts'
import { type LandingPost, landingBraces } from './landing-braces.ts'
import { onFlight } from './place-flights.ts'
import type { PlacedFlight, Platform, Spot, StairConnector, StairFooting } from './types.ts'

const FIELDS = ['stairs.kind', 'stairs.width', 'stairs.landingDepth', 'frame.joists.size'] as const

/** Posts of a landing stand at most so far apart: common practice, no source; the checks say whether its beams bear it. */
const POSTS_APART = feet(6)

/** Least depth of a footing under undisturbed ground, IRC 2021 R403.1.4. */
const LEAST_DEPTH = inches(12)

export interface FramedPlatform {
  readonly platform: Platform
  readonly members: readonly Member[]
  readonly connectors: readonly StairConnector[]
  readonly footings: readonly StairFooting[]
  /** posts whose faces the header of the lower flight lies on */
  readonly behindHeader: number
}

interface Landing {
  readonly corner: Spot
  readonly down: Spot
  readonly across: Spot
  readonly level: number
}

/** How a landing's boards end where the lower flight leaves it. */
interface Leaving {
  readonly lower: PlacedFlight | undefined
  /** what they reach over their edge there */
  readonly over: Ticks
}

/** What the ids and the marks of a landing's pieces begin with. */
export interface PlatformName {
  readonly id: string
  readonly mark: string
}

/**
 * A landing on its own posts: two beams of two plies across the way, at the edge towards the deck and at the edge away
 * from it, joists hung between them, decking across, which reaches over the edge that the lower flight leaves as a tread
 * does over its riser. It is as wide as the stairs and of the deck's joist size. Where the
 * lower flight goes straight on, a board as thick as its header stands before the outer beam, and the posts under that
 * beam flush with its back: the header under the board lies on their faces in its whole length. Posts stand in from the
 * sides by as much, for a flight that turns.
 */
export function framePlatform(
  job: Job,
  landing: Landing,
  width: Ticks,
  { lower, over }: Leaving,
  name: PlatformName,
): FramedPlatform {
  const joist = sectionOf(job.frame.joists.size)
  const board = sectionOf(job.decking.size)
  const depth = job.stairs.landingDepth
  const beam = ticks(2 * joist.thickness)
  const goesOn = job.stairs.kind === 'landing'
  const frame = { head: landing.corner, down: landing.down, across: landing.across }
  const top = landing.level - board.thickness
  const levels = [top - joist.depth, top] as const
  const stick = (
    id: string,
    mark: string,
    role: Role,
    at: { from: readonly [number, number]; to: readonly [number, number]; length: number; rule: string },
  ) =>
    member(job, frame, {
      id: `${name.id}-${id}`,
      mark: `${name.mark}${mark}`,
      role,
      size: job.frame.joists.size,
      length: ticks(at.length),
      ripTo: null,
      from: at.from,
      to: at.to,
      levels,
      cause: cause(at.rule),
    })

  const faced = goesOn ? joist.thickness : ticks(0)
  const plies = (goesOn ? [0, 1, 2, 3, 4] : [0, 1, 2, 3]).map((i) => {
    const down = i < 2 ? i * joist.thickness : depth - faced - (4 - i) * joist.thickness
    return stick(`beam-ply-${i + 1}`, `B${i < 2 ? `1${'ab'[i]}` : `2${'abc'[i - 2]}`}`, 'landing beam', {
      from: [down, 0],
      to: [down + joist.thickness, width],
      length: width,
      rule:
        i < 4
          ? 'Two plies at either edge of the landing, as long as it is wide'
          : 'A third board before the outer beam, over the header that the lower flight hangs on',
    })
  })
  const span = ticks(depth - 2 * beam - faced)
  const spaces = Math.max(1, Math.ceil((width - joist.thickness) / job.frame.joists.spacing))
  const joists = Array.from({ length: spaces + 1 }, (_, i) => {
    const across = (i * (width - joist.thickness)) / spaces
    return stick(`joist-${i + 1}`, `J${i + 1}`, 'landing joist', {
      from: [beam, across],
      to: [depth - faced - beam, across + joist.thickness],
      length: span,
      rule: 'Joists between the landing’s beams at the deck’s spacing or closer',
    })
  })
  const gap = job.decking.gap
  // a flight that turns leaves at the side where its head is
  const toNear =
    !goesOn && lower !== undefined && lower.down.x * landing.across.x + lower.down.y * landing.across.y < 0
  const [begin, end] = goesOn ? [0, width] : toNear ? [-over, width] : [0, width + over]
  const reach = depth + (goesOn ? over : 0)
  const courses = Math.ceil((reach + gap) / (board.depth + gap))
  const decking = Array.from({ length: courses }, (_, i) => {
    // the first at the outer edge, whole under the foot
    const far = reach - i * (board.depth + gap)
    const wide = Math.min(board.depth, far)
    return member(job, frame, {
      id: `${name.id}-decking-${i + 1}`,
      mark: `${name.mark}D${i + 1}`,
      role: 'landing decking',
      size: job.decking.size,
      length: ticks(end - begin),
      ripTo: wide < board.depth ? ticks(wide) : null,
      from: [far - wide, begin],
      to: [far, end],
      levels: [top, landing.level],
      cause: cause(
        'Courses across the landing from the edge away from the deck, the last ripped to what is left; where the lower flight leaves they reach over by the nosing of a tread',
      ),
    })
  })
  const posts = framePosts(job, frame, { width, depth, beam, faced, bottom: levels[0] }, name)
  const between = (width - 2 * posts.inset) / (posts.perBeam - 1)
  return {
    platform: {
      corner: landing.corner,
      down: landing.down,
      across: landing.across,
      depth,
      width,
      level: landing.level,
      joistSpan: span,
      faced,
      outerOff: posts.outerOff,
      beamSpan: ceilTicks(between),
    },
    members: [...plies, ...joists, ...decking, ...posts.members, ...posts.braces],
    connectors: [
      connector(
        'landing hanger',
        2 * (joists.length - 2),
        'One hanger at either end of each joist of the landing but the outermost',
      ),
      // the beams end flush with the outermost joists: half of a hanger would hang in the air
      connector(
        'landing end angle',
        4,
        'One angle in the corner at either end of the outermost joists of the landing, where the beams’ ends leave a hanger no room',
      ),
      connector(
        'landing post base',
        posts.members.length,
        'One base with its anchor bolt per post of the landing',
      ),
      connector(
        'landing post cap',
        posts.members.length,
        'One cap or pair of plates per post of the landing',
      ),
      connector(
        'landing brace bolt',
        2 * posts.braces.length,
        'One 1/2 in bolt at each end of a brace of the landing',
      ),
    ],
    footings: posts.footings,
    behindHeader: goesOn ? posts.perBeam : 2,
  }
}

function framePosts(
  job: Job,
  frame: { readonly head: Spot; readonly down: Spot; readonly across: Spot },
  size: { width: Ticks; depth: Ticks; beam: Ticks; faced: Ticks; bottom: number },
  name: PlatformName,
): {
  perBeam: number
  inset: Ticks
  outerOff: Ticks
  members: readonly Member[]
  braces: readonly Member[]
  footings: readonly StairFooting[]
} {
  const { tube, base, projection, standoff, holeRoom } = job.ground
  const baseThickness = base > 0 ? job.ground.baseThickness : ticks(0)
  const depth = ticks(Math.max(job.site.frostDepth, LEAST_DEPTH))
  const section = sectionOf(job.frame.postSize)
  const half = section.depth / 2
  // a header's thickness in from the side, so that one under it lies flat on the posts
  const inset = ticks(half + sectionOf(job.frame.joists.size).thickness)
  const spaces = Math.max(1, Math.ceil((size.width - 2 * inset) / POSTS_APART))
  const outer = size.faced > 0 ? size.depth - size.faced - half : size.depth - size.beam / 2
  const rows: LandingPost[][] = [[], []]
  const footings: StairFooting[] = []
  for (const [beam, down] of [size.beam / 2, outer].entries()) {
    for (let i = 0; i <= spaces; i += 1) {
      const across = inset + (i * (size.width - 2 * inset)) / spaces
      const spot = onFlight(frame, down, across)
      const number = beam * (spaces + 1) + i + 1
      const foot = groundAt(job, spot.x, spot.y) + projection + standoff
      const post = member(job, frame, {
        id: `${name.id}-post-${number}`,
        mark: `${name.mark}P${number}`,
        role: 'landing post',
        size: job.frame.postSize,
        length: ceilTicks(size.bottom - foot),
        ripTo: null,
        from: [down - half, across - half],
        to: [down + half, across + half],
        levels: [foot, size.bottom],
        cause: cause('Length = landing − decking − beam − (ground + projection) − stand-off, up to 1/32 in'),
      })
      rows[beam]?.push({ post, down, across })
      footings.push({
        id: `${name.id}-footing-${number}`,
        ...spot,
        tube,
        tubeLength: ticks(depth + projection - baseThickness),
        base,
        baseThickness,
        depth,
        holeDiameter: ticks(Math.max(tube, base) + holeRoom),
        cause: {
          fields: ['stairs.kind', 'site.frostDepth', 'ground.tube', 'ground.base'],
          ids: [`${name.id}-post-${number}`],
          rule: 'As under the deck’s posts, one under each post of the landing',
        },
      })
    }
  }
  return {
    perBeam: spaces + 1,
    inset,
    outerOff: ticks(size.faced > 0 ? half - size.beam / 2 : 0),
    members: rows.flat().map(({ post }) => post),
    braces: landingBraces(job, frame, rows[0] ?? [], rows[1] ?? [], name),
    footings,
  }
}

function cause(rule: string): Cause {
  return { fields: FIELDS, ids: [], rule: `${rule} (common practice, no source)` }
}

function connector(kind: StairConnector['kind'], count: number, rule: string): StairConnector {
  return { kind, count, cause: cause(rule) }
}
