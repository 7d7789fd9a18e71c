import { sectionOf } from '../data/index.ts'
import { distinctMarks, type Frame, houseHoldDowns } from '../frame/index.ts'
import type { Fault, Job } from '../job/index.ts'
import type { Layout, Level } from '../layout/index.ts'
import { type DeckEdge, deckEdges, type StairPlan } from '../stairs/index.ts'
import { fail, feet, inches, ok, printLength, type Result, ticks } from '../units/index.ts'
import { backedStretches } from './backed-stretches.ts'
import { alongEdge, besideHigher } from './beside-higher.ts'
import { besideHouse } from './beside-house.ts'
import { boardJoints } from './board-joints.ts'
import { edgeDrops } from './edge-drops.ts'
import { guardCaps, guardRails } from './guard-members.ts'
import { holdDownFaces } from './hold-down-faces.ts'
import { balustersOf, LONGEST_BALUSTER, panelsOf, panelWidth } from './infill.ts'
import { flightsOff, landingEdges } from './landing-edges.ts'
import { stairFillers } from './stair-fillers.ts'
import { guardStairs } from './stair-guards.ts'
import { stairGuardMembers } from './stair-members.ts'
import { stairOpenings } from './stair-openings.ts'
import type { GuardLoop } from './stretches.ts'
import type { EdgePart, GuardedEdge, GuardPlan, HouseBeside } from './types.ts'

/** The guard that a job asks for, null where it asks for none; or the named fault that keeps it from being built. */
export function layGuard(
  job: Job,
  layout: Layout,
  frame: Frame,
  stairs: readonly StairPlan[],
): Result<GuardPlan | null, readonly Fault[]> {
  const { guard } = job
  if (guard.where === 'none') return ok(null)
  const edges = deckEdges(layout)
  const post = sectionOf(guard.postSize).thickness
  const landings = new Map(
    stairs.map((plan) => [plan.number, landingEdges(plan, layout.levels, post)] as const),
  )
  const open = [
    ...edgeDrops(job, edges, layout.levels, null),
    ...stairs.flatMap((plan) =>
      edgeDrops(job, landings.get(plan.number) ?? [], layout.levels, plan.number).filter(
        ({ edge }) => flightsOff(edge, plan).length === 0,
      ),
    ),
  ]
  const loops = [
    ...layout.levels.map((level) => deckLoop(level, { job, layout, frame, stairs, edges, open })),
    ...stairs.flatMap((plan) => landingLoop(plan, landings.get(plan.number) ?? [], { job, open })),
  ]
  const backed = backedStretches(job, loops)
  const stretches = backed.flatMap((one) => one.stretches)
  const { guards: beside, house } = guardStairs(job, stairs, stretches, layout.levels)
  const level = stretches.flatMap(({ bays }) => bays.map((bay) => panelWidth(bay, null)))
  const sloped = beside.flatMap((one) => one.bays.map((bay) => panelWidth(bay, one)))
  const longest = Math.max(0, ...level, ...sloped)
  if (guard.infill === 'panels' && longest > feet(8)) {
    return fail([
      {
        path: 'guard.postSpacing',
        message: `panels come in 6 ft and 8 ft, and a bay is ${printLength(ticks(longest))} wide between its posts`,
        fix: 'set the posts 8 ft apart or closer, or fill the bays with balusters',
      },
    ])
  }
  const balusters = balustersOf(job, stretches, beside)
  const long = balusters.find(({ length }) => length > inches(LONGEST_BALUSTER))
  if (long !== undefined) {
    return fail([
      {
        path: 'guard.height',
        message: `balusters come up to ${LONGEST_BALUSTER} in, and one ${long.sloped ? 'beside the stairs' : 'on the deck'} would be ${printLength(long.length)}`,
        fix: 'make the guard lower, or give it a cap',
      },
    ])
  }
  const stairMembers = stairGuardMembers(job, beside, stairs)
  const standing = {
    stretches,
    stairs: beside,
    members: [...backed.flatMap(({ posts }) => posts), ...stairMembers].filter(
      ({ role }) => role === 'guard post',
    ),
  }
  const fillers = stairFillers(job, standing, stairs)
  const members = [
    ...backed.flatMap(({ stretches: own, posts, blocks }) => [
      ...posts,
      ...own.flatMap((stretch) => [...guardRails(job, stretch), ...guardCaps(job, stretch)]),
      ...blocks,
    ]),
    ...stairMembers,
    ...fillers,
  ]
  const guarded = new Set(stretches.map(({ edge }) => edge.id))
  return ok({
    edges: open,
    stretches,
    stairs: beside,
    house: [
      ...house,
      ...stairs.flatMap((plan) => landingHouse(plan, landings.get(plan.number) ?? [], layout.levels, post)),
    ],
    openings: stairOpenings({ ...standing, members: [...standing.members, ...fillers] }, stairs),
    members: distinctMarks(members),
    backing: backed.flatMap(({ backing }) => backing),
    faces: backed.flatMap(({ stretches: own, blocks, backing }, i) =>
      holdDownFaces(job, own, [...(loops[i]?.members ?? []), ...blocks], backing),
    ),
    replaced: backed.flatMap(({ replaced }) => replaced),
    balusters,
    panels: guard.infill === 'panels' ? [...panelsOf(level, false), ...panelsOf(sloped, true)] : [],
    deckPosts: stretches.reduce((sum, { posts }) => sum + posts.length, 0),
    stairPosts: beside.reduce((sum, { posts }) => sum + posts.length, 0),
    gates: guard.gate ? stairs.filter(({ edge }) => guarded.has(edge.id)).length : 0,
    levelLength: stretches.reduce((sum, { from, to }) => sum + to - from, 0),
    slopedLength: beside.reduce((sum, { length }) => sum + length, 0),
  })
}

interface Whole {
  readonly job: Job
  readonly layout: Layout
  readonly frame: Frame
  readonly stairs: readonly StairPlan[]
  readonly edges: readonly DeckEdge[]
  readonly open: readonly GuardedEdge[]
}

function deckLoop({ edges: own }: Level, { job, layout, frame, stairs, edges, open }: Whole): GuardLoop {
  const numbers = new Set(own.map(({ number }) => number))
  return {
    edges: edges.filter(({ number }) => numbers.has(number)),
    landing: null,
    members: frame.members,
    joints: boardJoints(frame),
    taken: houseHoldDowns(frame),
    wanted: wantedOf(job, open),
    waysOff: (edge) => [
      ...stairs
        .filter((one) => one.edge.id === edge.id)
        .map(({ place, width }) => ({ from: place, to: place + width })),
      ...frame.steps
        .filter(({ edge: number }) => number === edge.number)
        .map(({ line }) => {
          const ends = line.map((point) => alongEdge(edge, point))
          return { from: Math.min(...ends), to: Math.max(...ends) }
        }),
      ...besideHigher(edge, layout.levels),
    ],
  }
}

/** Sides of a landing that the house closes, but for those at which a flight comes or leaves. */
function landingHouse(
  plan: StairPlan,
  edges: readonly DeckEdge[],
  levels: readonly Level[],
  post: number,
): readonly HouseBeside[] {
  return edges
    .filter((edge) => edge.wall && flightsOff(edge, plan).length === 0)
    .flatMap(({ near, far, out }) => {
      const closes = besideHouse(levels, plan, { from: near, to: far }, out, post)
      return closes === null ? [] : [{ stairs: plan.number, flight: null, closes }]
    })
}

function landingLoop(
  plan: StairPlan,
  edges: readonly DeckEdge[],
  { job, open }: Pick<Whole, 'job' | 'open'>,
): readonly GuardLoop[] {
  if (plan.platform === null) return []
  return [
    {
      edges,
      landing: plan.number,
      members: plan.members.filter(({ role }) => role === 'landing beam' || role === 'landing joist'),
      joints: [],
      taken: [],
      wanted: wantedOf(job, open),
      waysOff: (edge) => flightsOff(edge, plan),
    },
  ]
}

/** Where the code asks for a guard, or all of every open edge. */
function wantedOf({ guard }: Job, open: readonly GuardedEdge[]): ReadonlyMap<string, readonly EdgePart[]> {
  const all = guard.where === 'all open edges'
  return new Map(open.map(({ edge, parts }) => [edge.id, all ? [{ from: 0, to: edge.length }] : parts]))
}
