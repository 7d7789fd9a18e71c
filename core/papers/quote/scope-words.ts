import type { Design } from '../../estimate-types.ts'
import { allHoles, isBeforeOneWall } from '../../ground/index.ts'
import { deckEdges } from '../../stairs/index.ts'
import { printInches, printLength, type Ticks, ticks } from '../../units/index.ts'
import { layWords, STRAIGHT } from '../build/lay-words.ts'
import { areaWords, isNoRectangle, outsideOf } from '../build/outside-words.ts'
import { stairWidthWords } from '../build/stair-width-words.ts'

type Source = Design

/** What is built, in words for a customer who has never framed a deck: no mark, no code of the trade. */
export function scopeWords(estimate: Source): readonly string[] {
  return [
    deck(estimate),
    frame(estimate),
    decking(estimate),
    ...stairs(estimate),
    ...guard(estimate),
    ...work(estimate),
  ]
}

function deck(estimate: Source): string {
  const { job, layout } = estimate
  const { size, site } = job
  const { along, away } = outsideOf({ layout })
  const stands = site.attachment === 'ledger' ? 'fastened to the house' : 'freestanding beside the house'
  const levels = layout.levels.length
  const shape =
    levels > 1
      ? `A deck on ${levels} levels`
      : isNoRectangle({ layout })
        ? 'A deck of the shape drawn'
        : 'A deck'
  const whole = isNoRectangle({ layout })
    ? ` over all (its outline is not a rectangle: ${areaWords({ layout })} in all)`
    : ''
  if (!isBeforeOneWall(estimate))
    return `${shape} around the corner of the house, ${areaWords({ layout })} in all, its open sides ${openSides(estimate)}; its top ${printLength(size.height)} above the ground at the house, ${stands}.`
  return `${shape}, ${along} along the house and ${away} away from it${whole}, its top ${printLength(size.height)} above the ground at the house, ${stands}.`
}

/** "28'-0\" in front and 24'-0\" at the left": every side that no wall stands at, the longest first. */
function openSides({ layout }: Source): string {
  const place = { front: 'in front', rear: 'at the rear', left: 'at the left', right: 'at the right' }
  const sides = deckEdges(layout)
    .filter(({ wall }) => !wall)
    .toSorted((a, b) => b.length - a.length)
    .map(({ length, side }) => `${printLength(ticks(Math.round(length)))} ${place[side]}`)
  return sides.length < 2 ? sides.join('') : `${sides.slice(0, -1).join(', ')} and ${sides.at(-1)}`
}

function frame(source: Source): string {
  const { job } = source
  const { treatment, joists } = job.frame
  const wood = treatment === 'treated' ? 'pressure-treated' : treatment
  const count = allHoles(source).filter(({ post }) => post !== null).length
  return `A frame of ${wood} lumber: joists ${joists.size} every ${printInches(joists.spacing)}, on ${count} ${count === 1 ? 'post' : 'posts'}, each on its own concrete footing${job.site.frostDepth > 0 ? ', dug to the frost line and built as the building office asks' : ''}.`
}

function decking(source: Source): string {
  const { size, gap, fastening, fascia, skirting } = source.job.decking
  const laid = layWords(source)
  const way = laid === STRAIGHT ? '' : ` ${laid}`
  const further = [
    ...(fascia === 'none' ? [] : ['a fascia along its free edges']),
    ...(skirting === 'none' ? [] : [`${skirting === 'lattice' ? 'lattice' : 'boards'} below it`]),
  ]
  const beside = further.length === 0 ? '' : `, with ${further.join(' and ')}`
  return `Decking of ${size} boards${fastening === 'hidden clips' ? ' in hidden clips' : ''}${way}${beside}${gap > 0 ? `, laid with a gap of ${printInches(gap)}` : ', laid tight: they open a gap as they dry'}.`
}

function stairs({ stairs: plans }: Source): readonly string[] {
  return plans.map((plan) => flightWords(plan))
}

function flightWords(plan: Source['stairs'][number]): string {
  const { risers, handrail, flights } = plan
  const foot =
    plan.floor !== null ? ', down to the lower level' : plan.pad === null ? '' : ', down to a concrete pad'
  const rail =
    handrail.sides > 0 ? `, with a handrail on ${handrail.sides === 1 ? 'one side' : 'both sides'}` : ''
  return `Stairs ${stairWidthWords(plan)}, with ${risers} ${risers === 1 ? 'riser' : 'risers'}${flights.length > 1 ? ` in ${flights.length} flights with a landing` : ''}${foot}${rail}.`
}

function guard({ guard: plan, job, stairs }: Source): readonly string[] {
  if (plan === null || plan.stretches.length === 0) return []
  const long: Ticks = ticks(Math.round(plan.levelLength / 384) * 384)
  const infill = plan.balusters.length === 0 ? 'panels' : 'balusters'
  const gate = plan.gates > 0 ? ', with a gate at the stairs' : ''
  return [
    ...(isClosed(plan, stairs.length)
      ? [
          'The guard closes every open edge of the deck, without stairs or a gate: the only way off it is into the house.',
        ]
      : []),
    `A guard ${printInches(job.guard.height)} high with ${infill}, about ${printLength(long)} of it${plan.stairs.length > 0 ? ' and along the stairs' : ''}${gate}.`,
  ]
}

/** Whether nobody can leave the deck but through the house: every open edge guarded, no stairs, no gate. */
export function isClosed(plan: Source['guard'], flights: number): boolean {
  return (
    plan !== null &&
    plan.stretches.length > 0 &&
    flights === 0 &&
    plan.gates === 0 &&
    plan.edges.every(({ edge }) => plan.stretches.some((stretch) => stretch.edge === edge))
  )
}

/** What is done besides, field by field. */
function work({ job }: Source): readonly string[] {
  const { work: done } = job
  const more = [
    ...(done.oldDeck > 0 ? [`taking down the old deck of ${done.oldDeck} square feet`] : []),
    ...(done.slab > 0 ? [`breaking up ${done.slab} square feet of slab`] : []),
    ...(done.groundCover ? ['covering the ground under the deck'] : []),
    ...(done.joistTape ? ['tape over the joists, against water'] : []),
    ...(done.coating > 0 ? [`${done.coating === 1 ? 'one coat' : `${done.coating} coats`} of stain`] : []),
  ]
  return more.length === 0 ? [] : [`Also: ${more.join('; ')}.`]
}
