import { membersNamed } from '../../checks/index.ts'
import {
  boltHoleSource,
  cite,
  guardBolts,
  guardBoltsSource,
  nailing,
  nailingSources,
  sectionOf,
} from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { inches, printInches, printLength, ticks } from '../../units/index.ts'
import { boltLengthWords, postBolts } from '../build/guard-post-bolts.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { boardOf, deckingAbove, GOES_ON } from './decking-above.ts'
import { box, type Detail, detail, trace } from './detail.ts'

const ABOVE = inches(5)

/** Of a hold-down of 1,800 lb: from memory. */
const LONG_LEG = inches(7)

/** The foot of a guard post, section square to the edge: heights, holes and lengths of its bolts, and its blocks. */
export function guardFootDetail(estimate: Estimate): Detail | null {
  const { job, guard } = estimate
  const all = postBolts(estimate)
  const shown = all.find(({ blockBehind }) => blockBehind) ?? all[0]
  if (guard === null || shown === undefined) return null
  const { size } = job.frame.joists
  const deep = sectionOf(size).depth
  const { thickness } = boardOf(job.decking.size)
  const held = job.guard.fixing === 'hold-downs'
  const rim = shown.stretch.behind
  const inner = rim + sectionOf(job.guard.postSize).thickness
  const back = shown.through
  const heights = [inches(guardBolts.fromEdge), deep - inches(guardBolts.fromEdge)] as const
  const id = 'detail-guard-foot'
  const end = rim + GOES_ON
  return detail(
    id,
    'Foot of a guard post, section square to the edge',
    [
      box('rim', [0, 0], [rim, deep], { fill: 'wood', weight: 'heavy' }),
      box('joist', [rim, 0], [end, deep], { fill: 'wood', weight: 'fine' }),
      ...deckingAbove(job, -job.decking.overhang, rim, -thickness),
      ...deckingAbove(job, inner, end, -thickness),
      box('guard-post', [rim, -thickness - ABOVE], [inner, deep], { fill: 'wood', weight: 'heavy' }),
      ...(shown.blockBehind
        ? [box('guard-block', [inner, 0], [back, deep], { fill: 'wood', weight: 'heavy' })]
        : []),
      ...(held
        ? [
            box(
              'guard-hold-down',
              [back, heights[0] - inches(1)],
              [back + inches(0.5), heights[0] + inches(1)],
              { fill: 'ground' },
            ),
          ]
        : []),
      ...[shown.upper, shown.lower].flatMap((length, i) => {
        const z = heights[i] ?? 0
        return trace(
          'guard-bolt',
          [
            [-inches(0.25), z],
            [length, z],
          ],
          'heavy',
        )
      }),
      uprightDimension(id, 0, heights[0], end, inches(3)),
      uprightDimension(id, heights[0], heights[1], end, inches(3)),
      uprightDimension(id, heights[1], deep, end, inches(3)),
      uprightDimension(id, 0, deep, end, inches(7)),
      levelDimension(id, 0, rim, deep, inches(2)),
      levelDimension(id, rim, inner, deep, inches(2)),
      ...(shown.blockBehind ? [levelDimension(id, inner, back, deep, inches(2))] : []),
    ],
    [
      {
        at: [rim / 2, heights[0]],
        to: [-inches(6), heights[0]],
        text: `Upper bolt ${printLength(ticks(heights[0]))} under the joists’ upper edge, lower bolt ${printLength(ticks(deep - heights[1]))} over the post’s foot, which is flush with their lower edge; both on the post’s middle line (${cite(guardBoltsSource)}).`,
      },
      {
        at: [rim / 2, heights[1]],
        to: [-inches(6), heights[1]],
        text: `Carriage bolts ${printInches(ticks(inches(guardBolts.diameter)))}, hot-dip galvanised, head outside, washer and nut inside; holes ${printInches(ticks(inches(guardBolts.hole)))} (${cite(boltHoleSource)}). Lengths for what each goes through: ${boltLengthWords(estimate)}.`,
      },
      {
        at: [(inner + back) / 2 + (shown.blockBehind ? 0 : inches(3)), deep * 0.6],
        to: [inner + inches(6), deep + inches(7)],
        text: blockWords(estimate, shown.blockBehind),
      },
      ...(held
        ? [
            {
              at: [back + inches(0.25), heights[0]] as const,
              to: [inner + inches(6), -thickness - inches(4)] as const,
              text: `Hold-down under the upper bolt’s nut, its leg on the side of a joist or of a block that reaches the next joist${legWords(estimate)}. Its own sheet says with which screws; where its seat asks for another height of the bolt, that sheet holds.`,
            },
          ]
        : []),
    ],
  )
}

/** Where a leg has less room than it may need, and where it finds no wood at all. */
function legWords({ guard, frame }: Estimate): string {
  if (guard === null) return ''
  const named = (ids: readonly string[]) =>
    membersNamed({ frame: { ...frame, members: guard.members }, joistIds: ids })
  const bare = guard.faces.filter(({ wood }) => wood === null).map(({ post }) => post)
  const short = guard.faces.filter(({ wood, room }) => wood !== null && room < LONG_LEG)
  const least = Math.min(...short.map(({ room }) => room))
  return [
    ...(short.length === 0
      ? []
      : [
          `; room for a leg of ${printInches(ticks(least))} at least at ${named(short.map(({ post }) => post))}: ask for one that fits`,
        ]),
    ...(bare.length === 0
      ? []
      : [`; at ${named(bare)} it finds neither, and a licensed designer says what holds them`]),
  ].join('')
}

function blockWords({ job, guard }: Estimate, behind: boolean): string {
  const all = guard?.members.filter(({ role }) => role === 'guard blocking') ?? []
  const between = all.filter(({ id }) => id.startsWith('stair-guard-'))
  const blocks = all.filter((one) => !between.includes(one))
  if (blocks.length === 0) return 'No block stands behind the posts.'
  const nails = `${nailing.blockEnd} nails 16d at each end (${cite(nailingSources.blockEnd)})`
  const [first] = between
  const stairs =
    first === undefined
      ? ''
      : ` Beside the stairs other blocks stand between the stringers, ${first.product.size}: ${countWords(between)}.`
  return `Blocks ${job.frame.joists.size} on edge, ${printInches(ticks(sectionOf(job.frame.joists.size).depth))} high, flush with the joists above and below, ${behind ? 'tight behind the post, or beside it where the joists run along the edge' : 'tight beside the post'}: ${countWords(blocks)}; ${nails}. Where one stands behind the post the bolts go through it.${stairs}`
}

function countWords(blocks: readonly Member[]): string {
  return [...Map.groupBy(blocks, ({ length }) => length)]
    .map(([length, alike]) => `${alike.length} of ${printLength(length)}`)
    .join(', ')
}
