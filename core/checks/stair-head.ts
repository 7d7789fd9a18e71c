import { momentOfInertia, soilPressure, tipDeflection } from '../rules/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { toInches } from '../units/index.ts'
import { strengthLimits } from './bending-limits.ts'
import { byCalculation } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { worse } from './finding.ts'
import { loadedFootings, widthOf } from './footing-load.ts'
import { judge } from './judge.ts'
import { asColumn } from './post-height.ts'
import { postReaction } from './post-reaction.ts'
import { bearingOf, underSoil } from './soil.ts'
import { type AlongJoist, alongJoist } from './stair-along-joist.ts'
import { type Borne, borneByDeck } from './stair-head-load.ts'
import type { Check, Finding } from './types.ts'
import { squareFeetText } from './words.ts'

/**
 * What the upper half of the first flight brings to the deck that it hangs on, beside the deck's own loads: to the
 * joists beyond the beam, to the beam, and to the posts either side with their footings. No table of the code counts
 * stairs; each member takes all that can come to it, which is the safer side.
 */
export function checkStairHead(context: CheckContext, stairs: StairPlan): readonly Check[] {
  const borne = borneByDeck(context, stairs)
  if (borne === null) return []
  const { pounds, brought, postIds, flight, beam } = borne
  const numbers = context.frame.posts.flatMap(({ id, number }) => (postIds.includes(id) ? [number] : []))
  const at = `${numbers.length === 1 ? 'post' : 'posts'} ${numbers.join(' and ')}`
  const reactions = postIds.map((id) => postReaction(context, id))
  const atPosts = Math.ceil(Math.max(...reactions.map((one) => one ?? 0)) + brought)
  const isReckoned = !reactions.includes(null)
  const listed = isReckoned ? ` Base and cap there: listed for ${whole(atPosts)} lb or more.` : ''
  const soil = onSoil(context, borne)
  const along = borne.beam === null ? alongJoist(context, stairs, borne) : null
  const found = inWood(context, borne, along)
  const wood = found.reduce<Finding | null>(worse, null)
  const told = `Half of flight ${flight}, ${whole(pounds)} lb, hangs on the deck and brings up to ${whole(brought)} lb to ${at}, beside the deck's own load.${listed}`
  return [
    judge(context.job, {
      id: 'stair-head-load',
      title: 'Load of the stairs on the deck',
      subjects: postIds,
      fields: ['stairs.width', 'stairs.run', 'frame.joists.size', 'frame.postSize', 'ground.base'],
      // the soil's row passes nothing that the wood does not bear
      prescriptive: (wood?.ratio ?? 0) > 1 ? null : soil,
      calculated: wood,
      beside: found.filter((one) => one !== wood),
      good: () => told,
      bad: `${told} That is too much.`,
      uncovered: `No table counts the ${whole(pounds)} lb of flight ${flight}`,
      remedy: 'Use a larger size there, wider bases, or a post under the head of the stairs.',
      listings: isReckoned ? [{ of: 'post base or cap', pounds: atPosts }] : [],
      caution: beam === null ? alongWords(pounds, along) : '',
    }),
  ]
}

/** What is left to say of a flight that hangs along a joist: how the joist's ends are held, or that nothing of it is reckoned. */
function alongWords(pounds: number, along: AlongJoist | null): string {
  return along === null
    ? `The ${whole(pounds)} lb hang along a joist: that joist, and the beam under it, are not reckoned with them; have them looked at.`
    : `The ${whole(pounds)} lb hang along a joist, ${along.mark}: what holds either end of it is in no table with them, and must be listed for ${whole(along.atEnd)} lb more than for the deck alone.`
}

/** The footing that presses most by its area, with all of the half flight on it. */
function onSoil(context: CheckContext, borne: Borne): Finding | null {
  const { job, load } = context
  const psf = load + job.site.deadLoad
  const bearing = bearingOf(job)
  return loadedFootings(context)
    .filter(({ footing }) => borne.postIds.includes(footing.postId))
    .map(({ footing, area }) => {
      const pressure = soilPressure(area * psf + borne.brought, toInches(widthOf(footing)))
      return underSoil(bearing, pressure, [
        ...stepsOf(context, borne),
        `Footing ${footing.number}: ${squareFeetText(area)} × ${psf} psf and all of it, ${whole(area * psf + borne.brought)} lb: ${whole(pressure)} psf`,
        bearing.says,
      ])
    })
    .reduce<Finding | null>(worse, null)
}

function stepsOf({ load, job }: CheckContext, { flight, area, pounds, lever, brought }: Borne) {
  return [
    `Half of flight ${flight}, ${squareFeetText(area)} × ${load + job.site.deadLoad} psf = ${whole(pounds)} lb, at the deck's edge`,
    `Times ${lever.toFixed(3)}, 1 + cantilever ÷ clear span: ${whole(brought)} lb, all of it on each post beside it`,
  ]
}

/** Joists and beam under their own worst and the flight's, and the posts as columns; none where the beam is not known. */
function inWood(context: CheckContext, borne: Borne, along: AlongJoist | null): readonly Finding[] {
  const beams = along === null ? [borne.beam] : along.beams
  return [
    along === null ? joists(context, borne) : along.finding,
    ...beams.map((one) => beam(context, { ...borne, beam: one })),
    columns(context, borne),
  ].filter((one) => one !== null)
}

/** As many joists as stand under the flight's width share it, at the tip of their cantilever. */
function joists(context: CheckContext, { cantilever, pounds, live, width }: Borne): Finding | null {
  if (cantilever === null) return null
  const one = context.path.joists.find(({ group }) => group.cantilevers.includes(cantilever))
  const overhangs = one?.envelope.stretches.filter(({ kind }) => kind === 'overhang') ?? []
  const own = cantilever.side === 'start' ? overhangs[0] : overhangs.at(-1)
  if (one === undefined || own === undefined) return null
  const count = Math.max(1, Math.floor(width / context.job.frame.joists.spacing))
  const reach = own.to - own.from
  const stiffness = one.values.modulus * momentOfInertia(one.section)
  const tip = tipDeflection(live / count, reach, toInches(cantilever.adjacent), stiffness)
  return byCalculation(
    [
      ...strengthLimits(one, own.moment + (pounds / count) * reach, own.shear + pounds / count),
      {
        name: 'Deflection of the tip',
        clause: '3.5',
        demand: { value: own.deflection + tip, unit: 'in' },
        capacity: { value: reach / 180, unit: 'in' },
        steps: [`Live load of deck and flight, a 180th of ${reach.toFixed(2)} in`],
      },
    ],
    one.values.source,
    [
      `${whole(pounds)} lb on ${count} joists, ${reach.toFixed(2)} in beyond the beam, beside the deck's load`,
    ],
  )
}

/** All of it at the worst place of the beam: a quarter of a span's length, or the overhang's, as its arm. */
function beam({ path }: CheckContext, { beam: facts, brought }: Borne): Finding | null {
  const one = path.beams.find((reckoned) => reckoned.facts === facts)
  if (one === undefined) return null
  const { stretches } = one.envelope
  const moments = stretches.map(
    ({ kind, moment, from, to }) => moment + brought * (kind === 'span' ? (to - from) / 4 : to - from),
  )
  const shear = Math.max(...stretches.map((stretch) => stretch.shear)) + brought
  return byCalculation(strengthLimits(one, Math.max(...moments), shear), one.values.source, [
    `${whole(brought)} lb at the worst place of beam ${one.facts.beam.mark}, beside the deck's load`,
  ])
}

function columns(context: CheckContext, { postIds, brought }: Borne): Finding | null {
  return context.frame.posts
    .filter(({ id }) => postIds.includes(id))
    .map((post) => {
      const load = Math.max(0, postReaction(context, post.id) ?? 0) + brought
      return asColumn(
        context,
        post.length,
        load,
        `Post ${post.number}: ${load.toFixed(0)} lb, the deck's greatest reaction and the stairs`,
      )
    })
    .reduce<Finding | null>(worse, null)
}

/** Rounded up: what presses is never shown smaller than it is. */
function whole(quantity: number): string {
  return `${Math.ceil(quantity - 1e-6)}`.replace(/\B(?=(?:\d{3})+$)/g, ',')
}
