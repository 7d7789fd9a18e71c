import type { FieldPath, Job } from '../job/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import { crossesAtHip } from './crosses-at-hip.ts'
import { HOLD_DOWN_REACH, HOLD_DOWN_WIDTH } from './house-hold-downs.ts'
import { joistPairs } from './joist-pairs.ts'
import { extentOf, type JoistJoint, type JoistPlace } from './joist-places.ts'
import type { PlacedJoist } from './joists.ts'
import type { Beam, Connector, Member, Post } from './types.ts'

/** Metal by joint type: how many, where, and by which rule. */
export function connectorsOf(
  job: Job,
  joists: readonly PlacedJoist[],
  beams: readonly Beam[],
  posts: readonly Post[],
  headers: readonly Member[],
): readonly Connector[] {
  return [
    ...atHangers(job, joists, beams),
    ...(joists.some(({ supports }) => supports.some(({ kind }) => kind === 'ledger'))
      ? atLedgers(job, joists)
      : []),
    ...beams
      .filter(({ flush }) => !flush)
      .map((beam) =>
        upliftTies(
          job,
          joists
            .filter(
              (joist) =>
                (liesOver(joist, beam.id) && !goesOnOver(joist, beam.id)) || crossesAtHip(joist, beam),
            )
            .map(({ member }) => member),
          beam,
        ),
      ),
    ...atHeaders(job, headers),
    ...atJoints(job, joists),
    ...joistPairs(job, joists),
    ...atPosts(job, posts),
  ]
}

/** One hanger per joist end that meets a ledger or a flush beam; one angle per end joist's, which no hanger fits. */
function atHangers(job: Job, joists: readonly PlacedJoist[], beams: readonly Beam[]): readonly Connector[] {
  const { size } = job.frame.joists
  const flush = beams.some((beam) => beam.flush)
  const atSide = joists.some(({ place }) =>
    [place.startsAt, place.endsAt].some((edge) => edge?.edge.seam === 'higher level’s beam'),
  )
  const where = [
    'the ledger',
    ...(flush ? ['a flush beam'] : []),
    ...(atSide ? ['the side of a higher level’s beam'] : []),
  ].join(' or ')
  const fields = [
    'frame.joists.size',
    'site.attachment',
    ...(flush ? ['frame.beams.front.set', 'shape.middleBeams', 'shape.seams'] : []),
    ...(atSide ? ['shape.levelBeams'] : []),
  ]
  const ends = joists.flatMap(({ member, place, supports }) =>
    ([0, 1] as const).flatMap((end) =>
      (hangsAt(place, end) || hangsFromRim(place, end, supports)) &&
      supports.some(({ seat }) => seat === 'hung')
        ? [
            {
              member,
              angled: place.laps[end] || (place.end && atFlush(place, end)),
              skew: Math.abs(member.ends?.[end] ?? 0),
            },
          ]
        : [],
    ),
  )
  const hung = Map.groupBy(
    ends.filter(({ angled }) => !angled),
    ({ skew }) => skew,
  )
  const angled = idsOf(ends.filter((one) => one.angled).map(({ member }) => member))
  if (ends.length === 0) return []
  const hangers = (skew: number): Connector =>
    connector(
      'joist hanger',
      size,
      idsOf((hung.get(skew) ?? []).map(({ member }) => member)),
      fields,
      `One hanger per joist at ${where} (IRC 2021 R507.6.1)${skew === 0 ? '' : `; ${skewWords(skew)}`}`,
    )
  const skews = [...hung.keys()].filter((skew) => skew > 0).sort((a, b) => a - b)
  return [
    hangers(0),
    ...skews.map((skew) => ({ ...hangers(skew), skew })),
    connector(
      'end joist angle',
      size,
      angled,
      fields,
      `One angle per end joist at ${where} (common practice, no source)`,
    ),
  ]
}

/** Hangers that are bent on the site go so far: common practice, no source. */
const ADJUSTABLE_TO = 4500

/** What a hanger at so many hundredths of a degree off square has to be. */
export function skewWords(skew: number): string {
  const degrees = `${Math.round(skew / 10) / 10}°`
  return skew <= ADJUSTABLE_TO
    ? `adjustable, set to the joist’s ${degrees} off square (common practice, no source)`
    : `the joist is ${degrees} off square, beyond the 45° that adjustable hangers reach: order them made to that angle (common practice, no source)`
}

/** Whether a joist's end meets a board from which it hangs. */
function hangsAt(place: JoistPlace, end: 0 | 1): boolean {
  const edge = end === 0 ? place.startsAt : place.endsAt
  return (
    edge?.board === 'ledger' || edge?.steep === true || place.headers[end] !== null || atFlush(place, end)
  )
}

/** Whether a joist that hangs from a hip reaches no beam and hangs from the rim as well. */
function hangsFromRim(place: JoistPlace, end: 0 | 1, supports: PlacedJoist['supports']): boolean {
  const edge = end === 0 ? place.startsAt : place.endsAt
  return (
    edge?.board === 'rim' &&
    !edge.steep &&
    (end === 0 ? supports[0] : supports.at(-1))?.kind === 'header' &&
    place.headers[end] === null
  )
}

function atFlush(place: JoistPlace, end: 0 | 1): boolean {
  const edge = end === 0 ? place.startsAt : place.endsAt
  return edge?.board === 'flush beam' || place.joints[end]?.kind === 'hung'
}

/** Hold-downs at the house. */
function atLedgers(job: Job, joists: readonly PlacedJoist[]): readonly Connector[] {
  return [
    connector(
      'hold-down',
      job.frame.joists.size,
      holdDownJoists(joists),
      ['site.attachment'],
      'Lateral load: two hold-downs of 1,500 lb, one within 24 in of each end (IRC 2021 R507.9.2)',
    ),
  ]
}

/** One hanger, wide enough for all plies, at each end of a header. */
function atHeaders(job: Job, headers: readonly Member[]): readonly Connector[] {
  const first = headers.filter(({ id }) => id.endsWith('-1'))
  if (first.length === 0) return []
  const hangers = connector(
    'joist hanger',
    job.frame.joists.size,
    idsOf(first),
    ['shape.openings'],
    'One hanger for both plies at each end of a header (common practice, no source)',
  )
  return [{ ...hangers, double: true, count: 2 * first.length }]
}

/** Whether a joist lies on a beam, and does not hang from its side. */
function liesOver({ supports }: PlacedJoist, beamId: string): boolean {
  return supports.some(({ id, seat }) => id === beamId && seat !== 'hung')
}

/** Whether a joist goes on over a beam from another, with which it is one line. */
function goesOnOver({ place }: PlacedJoist, beamId: string): boolean {
  return place.continues !== null && place.joints[0]?.beamId === beamId
}

/** Nails that hold lapped joists together, and plates on both sides of butted ones. */
function atJoints(job: Job, joists: readonly PlacedJoist[]): readonly Connector[] {
  const { size } = job.frame.joists
  const goingOn = joists.filter(({ place }) => place.continues !== null)
  const of = (kind: JoistJoint['kind']) => goingOn.filter(({ place }) => place.joints[0]?.kind === kind)
  const [lapped, butted] = [of('lapped'), of('butted')]
  const laps = connector(
    'joist lap',
    size,
    idsOf(lapped.map(({ member }) => member)),
    JOINT_FIELDS,
    'Lapped joists are nailed together through the faces (IRC 2021 R502.6.1)',
  )
  const splices = connector(
    'joist splice',
    size,
    idsOf(butted.map(({ member }) => member)),
    JOINT_FIELDS,
    'A pair of plates over the butt of two joists, one on each side: a splice as strong as a nailed lap (IRC 2021 R502.6.1; the plates common practice, no source)',
  )
  return [
    ...(lapped.length === 0 ? [] : [over({ ...laps, overlap: shortestOverlap(lapped) }, lapped)]),
    ...(butted.length === 0 ? [] : [over(splices, butted)]),
  ]
}

const JOINT_FIELDS = ['frame.joists.overMiddle', 'frame.joists.longest', 'shape.middleBeams']

/** With the beams over which the joints are among what causes them. */
function over(joints: Connector, joists: readonly PlacedJoist[]): Connector {
  const beams = new Set(joists.flatMap(({ place }) => place.joints[0]?.beamId ?? []))
  return { ...joints, cause: { ...joints.cause, ids: [...beams, ...joints.cause.ids] } }
}

/** How far the joists of a pair lie beside each other, along them. */
function shortestOverlap(joists: readonly PlacedJoist[]): Ticks {
  const overlaps = joists.map(({ place: { part, continues } }) =>
    continues === null ? 0 : extentOf(continues.part).high - extentOf(part).low,
  )
  return ticks(Math.floor(Math.min(...overlaps)))
}

function upliftTies(job: Job, joists: readonly Member[], beam: Beam): Connector {
  const ties = connector(
    'uplift tie',
    job.frame.joists.size,
    idsOf(joists),
    ['frame.joists.size'],
    'One uplift tie per joist line and beam (common practice, no source)',
  )
  return { ...ties, cause: { ...ties.cause, ids: [beam.id, ...ties.at] } }
}

function atPosts(job: Job, posts: readonly Post[]): readonly Connector[] {
  const { postSize } = job.frame
  return [
    connector(
      'post base',
      postSize,
      idsOf(posts),
      ['frame.postSize', 'ground.standoff'],
      'One base with its anchor bolt per post (common practice, no source)',
    ),
    connector(
      'post cap',
      postSize,
      idsOf(posts),
      ['frame.postSize'],
      'One cap or a pair of plates per post at the beam (IRC 2021 R507.5.1)',
    ),
  ]
}

function connector(
  kind: Connector['kind'],
  size: Connector['size'],
  at: readonly string[],
  fields: readonly FieldPath[],
  rule: string,
): Connector {
  return { kind, size, count: at.length, at, cause: { fields, ids: at, rule } }
}

/**
 * The first and the last joist that hang in a ledger and leave room for one on the side that faces the other; none under a
 * border's inner edge, which is cut at guard posts. The clause allows 24 in from the deck's end: of joists 24 in apart the
 * first may stand farther in, which the check says; a lone joist leaves the other hold-down to the end joist. Where ledgers lie
 * along several walls, so it is at each; ledgers around a bay are one wall.
 */
function holdDownJoists(joists: readonly PlacedJoist[]): readonly string[] {
  const walls = new Map<string, PlacedJoist[]>()
  for (const joist of joists) {
    if (!joist.supports.some(({ kind }) => kind === 'ledger')) continue
    const wall = `${joist.member.line === undefined} ${joist.place.startsAt?.board === 'ledger'}`
    walls.set(wall, [...(walls.get(wall) ?? []), joist])
  }
  const held = [...walls.values()].flatMap((hanging) => {
    // parts of the deck lie along a wall in any order
    const here = hanging.toSorted((a, b) => a.place.centre - b.place.centre)
    const all = here.filter(({ member }) => member.role === 'joist')
    const own = all.filter(({ place }) => place.under !== 'border')
    const hung = own.length === 0 ? all : own
    const [left, right] = [heldAt(hung, here, 1), heldAt(hung.toReversed(), here.toReversed(), -1)]
    if (left === undefined || right === undefined) return here.map(({ member }) => member.id)
    return left === right ? [left, ...here.slice(-1).map(({ member }) => member.id)] : [left, right]
  })
  return [...new Set(held)]
}

/** Of joists from one end of a wall on, the first within 24 in of that end that has room beside it; else the first. */
function heldAt(
  hung: readonly PlacedJoist[],
  here: readonly PlacedJoist[],
  way: 1 | -1,
): Member['id'] | undefined {
  const end = here[0]?.place.centre ?? 0
  const found = hung.find(({ place: { centre } }) => {
    const isNear = way * (centre - end) <= HOLD_DOWN_REACH
    const next = here.map(({ place }) => way * (place.centre - centre)).filter((off) => off > 1)
    return isNear && Math.min(...next) >= HOLD_DOWN_WIDTH + inches(1.5)
  })
  return (found ?? hung[0])?.member.id
}

function idsOf(things: readonly { readonly id: string }[]): readonly string[] {
  return things.map((thing) => thing.id)
}
