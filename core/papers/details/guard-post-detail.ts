import { guardBolts, sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { inches, printInches } from '../../units/index.ts'
import { uprightDimension } from '../drawings/shapes.ts'
import { said } from '../said.ts'
import { boardOf, deckingAbove, GOES_ON } from './decking-above.ts'
import { box, type Detail, detail, trace } from './detail.ts'

/** A guard's post inside the rim, section square to the edge; null where the job frames no guard. */
export function guardPostDetail({ job, guard, checks }: Estimate): Detail | null {
  if (guard === null || guard.stretches.length === 0) return null
  const { height, postSize, fixing, infill, cap } = job.guard
  const post = sectionOf(postSize)
  const joist = sectionOf(job.frame.joists.size)
  const rim = job.frame.rimPlies * joist.thickness
  const { thickness } = boardOf(job.decking.size)
  const capThickness = cap === 'none' ? 0 : sectionOf(cap).thickness
  const id = 'detail-guard'
  const left = rim
  const right = rim + post.depth
  return detail(
    id,
    'Guard post at the rim, section square to the edge',
    [
      box('rim', [0, 0], [rim, joist.depth], { fill: 'wood', weight: 'heavy' }),
      box('joist', [rim, 0], [rim + GOES_ON, joist.depth], { fill: 'wood', weight: 'fine' }),
      ...deckingAbove(job, -job.decking.overhang, left, -thickness),
      ...deckingAbove(job, right, rim + GOES_ON, -thickness),
      box('guard-post', [left, -thickness - height + capThickness], [right, joist.depth], {
        fill: 'wood',
        weight: 'heavy',
      }),
      ...(cap === 'none'
        ? []
        : [
            box(
              'guard-cap',
              [left - inches(1), -thickness - height],
              [right + inches(1), -thickness - height + capThickness],
              { fill: 'wood' },
            ),
          ]),
      ...[inches(guardBolts.fromEdge), joist.depth - inches(guardBolts.fromEdge)].flatMap((z) =>
        trace(
          'guard-bolt',
          [
            [-inches(0.5), z],
            [right + (fixing === 'hold-downs' ? inches(3) : inches(0.5)), z],
          ],
          'heavy',
        ),
      ),
      uprightDimension(id, -thickness - height, -thickness, -job.decking.overhang, -inches(5)),
    ],
    [
      {
        at: [(left + right) / 2, -thickness - height / 2],
        to: [right + inches(8), -thickness - height / 2],
        text: `Post ${postSize}, ${guard.deckPosts} on the deck, at most ${printInches(job.guard.postSpacing)} apart; inside the rim, not notched, not fixed to the decking.`,
      },
      {
        at: [right + inches(1), inches(2)],
        to: [right + inches(12), inches(3)],
        text: [
          fixing === 'hold-downs'
            ? 'Two bolts through rim and post, the upper one into a hold-down fixed to the joist beside it: heights, holes and lengths on the next drawing.'
            : 'Two bolts through rim and post; blocking on both sides carries the rim’s twist into the joists: heights, holes and lengths on the next drawing.',
          ...said(checks, 'Guard posts'),
        ].join(' '),
      },
      {
        at: [left, -thickness - height + inches(0.75)],
        to: [right + inches(8), -thickness - height - inches(2)],
        text: [
          `Top of the guard ${printInches(height)} over the decking, ${infill}${cap === 'none' ? '' : `, cap ${cap}`}.`,
          ...said(checks, 'Height and openings of the guard'),
        ].join(' '),
      },
    ],
  )
}
