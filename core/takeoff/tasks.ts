import { type SoilClass, sectionOf } from '../data/index.ts'
import type { Cause, Frame, Member } from '../frame/index.ts'
import { isRectangle, type Job } from '../job/index.ts'
import { inches, TICKS_PER_FOOT, toFeet, toInches } from '../units/index.ts'
import { boardFeetOf } from './board-feet.ts'
import type { TaskShare } from './tally.ts'
import type { Volumes } from './types.ts'

/** A hole this wide is dug with a shovel, a narrower one with a clamshell digger. */
const WIDE_HOLE = inches(24)

/** Bits of hired augers are 8 to 18 in: common practice, no source. */
const WIDEST_BIT = inches(18)

/** Footings, frame, final: common practice, no source. */
const INSPECTIONS = 3

/** How hard a soil digs: common practice, no source. Rock is broken out, by a rate of its own. */
const digging: { readonly [soil in Exclude<SoilClass, 'rock'>]: 'soft' | 'medium' | 'hard' } = {
  unknown: 'medium',
  'clay or silt': 'medium',
  sand: 'soft',
  'sandy gravel or gravel': 'hard',
}

/** The rate by which a hole is dug. */
export function digRate({ site }: Job, holeDiameter: number): string {
  if (site.soil === 'rock') return 'dig-rock'
  return `dig-${holeDiameter >= WIDE_HOLE ? 'wide' : 'narrow'}-${digging[site.soil]}`
}

/** Quantities of work, by stage; their hours come from the price book. */
export function tasksOf(job: Job, frame: Frame, volumes: Volumes): readonly TaskShare[] {
  return [
    ...groundTasks(job, frame, volumes),
    ...frameTasks(frame),
    ...deckingTasks(job, frame),
    ...generalTasks(frame, job),
  ]
}

function groundTasks(job: Job, frame: Frame, volumes: Volumes): readonly TaskShare[] {
  const { footings } = frame
  const count = footings.length
  const corners = job.site.attachment === 'ledger' ? 2 : 4
  const because = (fields: readonly string[], rule: string): Cause => ({
    fields,
    ids: footings.map((one) => one.id),
    rule,
  })
  const holes = because(
    ['ground.tube', 'ground.base', 'ground.holeRoom', 'site.frostDepth', 'site.soil'],
    job.site.soil === 'rock'
      ? 'Volume of the holes, taken for rock from top to bottom: ask for a price of your rock'
      : 'Volume of the holes: hole diameter × depth',
  )
  const each = because(['frame.beams.front.posts'], 'One per footing')
  return [
    {
      rateId: 'layout-corner',
      quantity: corners,
      cause: because(['site.attachment'], 'Corners away from the wall'),
    },
    { rateId: 'layout-footing', quantity: count, cause: each },
    { rateId: 'layout-recheck', quantity: 1, cause: because([], 'Once, after the pour') },
    ...digTasks(job, footings, volumes, holes),
    { rateId: 'hole-clean', quantity: count, cause: each },
    { rateId: 'form-tube', quantity: count, cause: each },
    {
      rateId: 'form-base',
      quantity: footings.filter((one) => one.base > 0).length,
      cause: because(['ground.base'], 'One per base'),
    },
    {
      rateId: 'mix-hand',
      quantity: volumes.concrete,
      cause: because(['ground.tube', 'ground.base', 'site.frostDepth'], 'Concrete in place'),
    },
    { rateId: 'wetset-bolt', quantity: count, cause: each },
    {
      rateId: 'backfill-tamp',
      quantity: volumes.backfill,
      cause: because(['ground.holeRoom'], 'Hole less what stands in it'),
    },
    { rateId: 'spoil-load', quantity: volumes.spoilLoose, cause: because(['ground.swell'], 'Loose spoil') },
    { rateId: 'spoil-wheel', quantity: volumes.spoilLoose, cause: because(['ground.swell'], 'Loose spoil') },
  ]
}

/** An auger bores up to its widest bit; what a hole is wider is dug by hand. No auger bores rock. */
function digTasks(
  job: Job,
  footings: Frame['footings'],
  volumes: Volumes,
  cause: Cause,
): readonly TaskShare[] {
  const { digging: how } = job.ground
  const across = footings[0]?.holeDiameter ?? 0
  const byHand = { rateId: digRate(job, across), cause }
  if (how === 'by hand' || job.site.soil === 'rock') return [{ ...byHand, quantity: volumes.holes }]
  const depth = footings.reduce((sum, one) => sum + toFeet(one.depth), 0)
  const bit = Math.min(across, WIDEST_BIT)
  const bored = volumes.holes * (bit / across) ** 2
  return [
    {
      rateId: how === 'two-person auger' ? 'auger-hand' : 'auger-machine',
      quantity: depth,
      cause: {
        ...cause,
        fields: [...cause.fields, 'ground.digging'],
        rule: `Depth of all holes, bored ${toInches(bit)} in across`,
      },
    },
    {
      ...byHand,
      quantity: volumes.holes - bored,
      cause: { ...cause, rule: `What the holes are wider than ${toInches(bit)} in` },
    },
  ]
}

function frameTasks(frame: Frame): readonly TaskShare[] {
  const share = (
    rateId: string,
    quantity: number,
    members: readonly { readonly id: string }[],
    rule: string,
  ): TaskShare => ({
    rateId,
    quantity,
    cause: { fields: [], ids: members.map((one) => one.id), rule },
  })
  const { posts } = frame
  const ledger = ofRoles(frame, ['ledger'])
  const joists = ofRoles(frame, ['joist', 'end joist', 'header', 'hip'])
  const plies = ofRoles(frame, ['beam ply'])
  const rims = ofRoles(frame, ['rim'])
  const blocks = ofRoles(frame, ['blocking'])
  const braces = ofRoles(frame, ['knee brace'])
  const metal = (kinds: readonly string[]) =>
    frame.connectors.filter((one) => kinds.includes(one.kind)).reduce((sum, one) => sum + one.count, 0)
  return [
    ...['layout-ledger', 'ledger-prep', 'ledger-set'].map((rateId) =>
      share(rateId, feetOf(ledger), ledger, 'Length of the ledger'),
    ),
    share('lateral-tie', metal(['hold-down']), ledger, 'One per hold-down'),
    share('post-base-wet', posts.length, posts, 'One per post'),
    share('post-set', posts.length, posts, 'One per post'),
    share('post-cap', posts.length, posts, 'One per post'),
    share('beam-builtup', boardFeet(plies), frame.beams, 'Board feet of all plies'),
    share('joist', boardFeet(joists), joists, 'Board feet of joists and end joists'),
    share(
      'hanger',
      metal(['joist hanger', 'end joist angle', 'joist splice']),
      joists,
      metal(['joist splice']) > 0 ? 'One per hanger, angle and pair of plates' : 'One per hanger and angle',
    ),
    share('joist-tie', metal(['uplift tie']), joists, 'One per joist and beam'),
    share('rim', feetOf(rims), rims, 'Length of all rim plies'),
    share('blocking', blocks.length, blocks, 'One per block'),
    share('post-brace', braces.length, braces, 'One per knee brace'),
  ]
}

function deckingTasks(job: Job, frame: Frame): readonly TaskShare[] {
  const courses = ofRoles(frame, ['decking'])
  const runs = frame.runs.filter(({ kind }) => kind === 'decking')
  if (courses.length === 0) return []
  const fields = ['size.width', 'size.depth', 'decking.overhang', 'decking.angle', 'decking.fastening']
  const cause = { fields, ids: runs.map(({ id }) => id) }
  const areas = (slanting: boolean) =>
    frame.decked
      .filter(({ degrees }) => (degrees !== 0) === slanting)
      .reduce((sum, { area }) => sum + area / TICKS_PER_FOOT ** 2, 0)
  const clips = job.decking.fastening === 'hidden clips'
  const field = courses.filter(({ lay }) => lay?.part === 'field')
  const framed = courses.filter(({ lay }) => lay?.part !== 'field')
  return [
    {
      rateId: clips ? 'deck-hidden-clip' : 'deck-perp-screw',
      quantity: areas(false),
      cause: { ...cause, rule: 'Area that the decking covers' },
    },
    {
      rateId: clips ? 'deck-diag-clip' : 'deck-diag-screw',
      quantity: areas(true),
      cause: { ...cause, rule: 'Area that decking at an angle covers' },
    },
    {
      rateId: 'deck-border',
      quantity: feetOf(framed),
      cause: {
        ...cause,
        fields: ['decking.border', 'decking.breakers'],
        rule: 'Length of borders and breakers',
      },
    },
    {
      rateId: 'fascia',
      quantity: feetOf(ofRoles(frame, ['fascia'])),
      cause: { ...cause, fields: ['decking.fascia'], rule: 'Length of the fascia' },
    },
    {
      rateId: 'deck-trim',
      quantity: trimmed(field),
      cause: { ...cause, rule: 'Both ends of the courses are cut to a line' },
    },
  ]
}

/** Both ends of all courses, along the line that they are cut to, gaps left out but where all courses are alike. */
function trimmed(courses: readonly Member[]): number {
  const [first] = courses
  if (first === undefined) return 0
  const runsAway = first.line !== undefined
  const [start, low, high] = runsAway ? (['y0', 'x0', 'x1'] as const) : (['x0', 'y0', 'y1'] as const)
  const alike = courses.every(
    ({ length, line, box, lay }) =>
      length === first.length &&
      (line !== undefined) === runsAway &&
      (lay?.degrees ?? 0) === 0 &&
      box[start] === first.box[start],
  )
  if (alike) {
    const from = Math.min(...courses.map(({ box }) => box[low]))
    return 2 * toFeet(Math.max(...courses.map(({ box }) => box[high])) - from)
  }
  return courses.reduce((sum, course) => sum + 2 * toFeet(acrossOf(course)), 0)
}

/** Extent of a course across its length, on the line of its cut ends. */
function acrossOf({ box, line, ripTo, product, lay }: Member): number {
  const slant = Math.cos(((lay?.degrees ?? 0) * Math.PI) / 180)
  if (slant !== 1) return (ripTo ?? sectionOf(product.size).depth) / slant
  return line === undefined ? box.y1 - box.y0 : box.x1 - box.x0
}

function generalTasks(frame: Frame, job: Job): readonly TaskShare[] {
  const cause = { fields: ['size.width', 'size.depth'], ids: [] }
  const area = isRectangle(job) ? toFeet(job.size.width) * toFeet(job.size.depth) : frame.areaSquareFeet
  return [
    {
      rateId: 'stage-lumber',
      quantity: boardFeet(frame.members) / 1000,
      cause: { ...cause, rule: 'All lumber, in 1000 board feet' },
    },
    {
      rateId: 'inspection',
      quantity: INSPECTIONS,
      cause: { ...cause, rule: 'Footings, frame, final (common practice, no source)' },
    },
    {
      rateId: 'clean-final',
      quantity: area / 100,
      cause: { ...cause, rule: 'Area of the deck, in 100 sq ft' },
    },
  ]
}

function ofRoles(frame: Frame, roles: readonly Member['role'][]): readonly Member[] {
  return frame.members.filter((member) => roles.includes(member.role))
}

function feetOf(members: readonly Member[]): number {
  return toFeet(members.reduce((sum, member) => sum + member.length, 0))
}

function boardFeet(members: readonly Member[]): number {
  return boardFeetOf(members).reduce((sum, one) => sum + one.thousandths, 0) / 1000
}
