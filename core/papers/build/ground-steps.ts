import { allHoles, layoutChecks } from '../../ground/index.ts'
import { dugForPad, UNDER_PAD } from '../../takeoff/index.ts'
import { printInches, printLength, ticks } from '../../units/index.ts'
import { holdsOf } from '../order/holds.ts'
import { waitingHoles, waitingWords } from '../order/waiting-holes.ts'
import type { Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { edgeWords } from './edge-words.ts'
import { padPlace } from './stair-bearing-words.ts'

type Source = PaperSource['estimate']

/** From the permit to the filled hole, with this deck's numbers. */
export function groundSteps(source: Source): readonly Step[] {
  const { job, takeoff } = source
  const holes = allHoles(source)
  const [footing] = holes
  const square = layoutChecks(source).filter(({ kind }) => kind === 'square')
  if (footing === undefined) return []
  const count = holes.length
  const deepest = Math.max(...holes.map(({ depth }) => depth)) as typeof footing.depth
  const bare = holes.filter(({ base }) => base === 0)
  const bags = takeoff.volumes.bags
  const pads = source.stairs.reduce((sum, { pad }) => sum + dugForPad(pad), 0)
  return [
    ...settleSteps(source),
    {
      text: 'Have the permit in hand and the inspector’s telephone number on the wall. Ask which work he wants to see open.',
    },
    {
      text: 'Call the one-call centre (811 in the United States) days before digging and wait for the marks.',
      cautions: ['Gas and power lines kill. Within two feet of a mark dig by hand.'],
    },
    {
      text: `Lay out the ${count} holes with strings as on the footing layout, and prove them.`,
      notes: square.map(
        ({ what, measures, tolerance }) =>
          `${what}: ${printLength(measures)}, within ${printLength(tolerance)}.`,
      ),
    },
    {
      text: `Dig each hole ${printInches(footing.holeDiameter)} across and ${printInches(deepest)} deep or as the schedule says, measured from the ground at that hole. Flatten the bottom; leave the ground under it undisturbed.`,
      notes: [
        `${(takeoff.volumes.holes + pads).toFixed(2)} cu ft to dig in all${pads > 0 ? `, ${pads.toFixed(2)} of them for the stairs’ pad and its gravel` : ''}. Earth lies two feet or more off the edge, on a sheet.`,
      ],
      cautions: [
        ...waitingWords(waitingHoles(source)),
        'Cover open holes when you leave. No one climbs into a hole that could cave in.',
      ],
    },
    {
      text:
        footing.base > 0
          ? `Form the bases, ${printInches(footing.base)} across and ${printInches(footing.baseThickness)} thick, and stand a ${printInches(footing.tube)} tube on each, cut to the length in the schedule.`
          : `Stand a ${printInches(footing.tube)} tube in each hole, cut to the length in the schedule.`,
      notes: [
        ...(footing.base > 0 && bare.length > 0
          ? [`Under the stairs, hole ${bare.map(({ number }) => number).join(', ')}: a tube and no base.`]
          : []),
        `The tube’s top is ${printInches(job.ground.projection)} over the ground there${bare.some(({ post }) => post === null) ? ', level with it under stringers' : ''}. Put the strings up again: the crossing is the tube’s middle.`,
      ],
    },
    ...padSteps(source),
    {
      text: 'INSPECTION: open holes with their forms. Do not pour before they are seen.',
      notes: ['See the inspection card “Footings”.'],
    },
    {
      text: `Mix and pour ${bags} bags (${takeoff.volumes.concrete.toFixed(2)} cu ft before waste${source.stairs.some(({ pad }) => pad !== null) ? ', the stairs’ pad with them' : ''}). Work it with a rod, strike it level where the base will stand and sloped off to the edge, set the anchor bolt under the crossing, plumb, ${printInches(28 as typeof footing.depth)} of thread showing.`,
      cautions: ['Wet concrete burns skin and eyes: gloves, long sleeves, goggles; wash at once.'],
    },
    {
      text: 'Let it cure: keep it damp for 3 days; posts and beams after 3 days at the earliest, the full load after 7. In frost, wait longer and cover it. Common practice, no source; the bag says its own.',
    },
    {
      text: 'Backfill in layers of 6 in, tamped, once the concrete is hard. Slope the ground away from each pier.',
    },
  ]
}

/** A pad at the foot of stairs is dug, gravelled and formed before anything is poured. */
function padSteps(source: Source): readonly Step[] {
  return source.stairs.flatMap((one): readonly Step[] => {
    const { pad, floor } = one
    const place = padPlace(one, edgeWords(one.edge, source))
    if (pad === null || place === null || floor !== null) return []
    const dug = ticks(pad.thickness + UNDER_PAD)
    return [
      {
        text: `Dig for the stairs’ pad, ${printLength(pad.width)} × ${printLength(pad.depth)} and ${printInches(dug)} deep; tamp ${printInches(UNDER_PAD)} of gravel in it, and set form boards round it, ${printInches(pad.thickness)} high, level.`,
        notes: [
          `It lies ${place}.`,
          `Pour it ${printInches(pad.thickness)} thick with the footings, strike it off level along the forms and float it. Nothing is cast into it: the anchors of the stringers’ angles are drilled in when the stringers stand.`,
        ],
      },
    ]
  })
}

/** What is in doubt is settled while nothing that hangs on it is bought, dug or sawn. */
function settleSteps(source: Source): readonly Step[] {
  const holds = holdsOf(source)
  const [first] = holds
  if (first === undefined) return []
  const names = holds.length === 1 ? first.name : `${first.name} to ${holds.at(-1)?.name ?? ''}`
  return [
    {
      text: `Settle ${names} first: nothing that waits for ${holds.length === 1 ? 'it' : 'one of them'} is bought, dug, sawn or built before.`,
      notes: holds.map(({ name, what, until }) => `${name}, ${what}: not before ${until}.`),
    },
  ]
}
