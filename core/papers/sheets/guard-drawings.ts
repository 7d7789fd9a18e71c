import type { GuardPlan } from '../../guard/index.ts'
import { UNDER_LOWER_RAIL } from '../../guard/index.ts'
import { printInches } from '../../units/index.ts'
import { bayHeights, guardBay, typicalBay } from '../drawings/guard-bay.ts'
import { guardPlans } from '../drawings/guard-plan.ts'
import { stairGuardViews } from '../drawings/stair-guard-view.ts'
import type { Block, Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { guardBaysTable, stairGuardTable, stairPostsTable } from '../tables/guard-table.ts'
import type { Layer } from '../types.ts'

const LAYERS: readonly Layer[] = ['house', 'decking', 'stairs', 'joists', 'guard', 'dimensions']
/** Share of a page's height for the bay, over how it is built. */
const SHARE = 0.45

/** Where the guard's posts stand, what a bay looks like, and how both are marked and cut. */
export function guardDrawings(estimate: PaperSource['estimate'], guard: GuardPlan): readonly Block[] {
  const bay = typicalBay(guard)
  if (bay === null) return []
  const bought = bay.balusters > 0 ? levelBaluster(guard) : null
  return [
    { kind: 'page break' },
    ...guardPlans(estimate, guard).map((drawing): Block => ({ kind: 'drawing', drawing, layers: LAYERS })),
    {
      kind: 'drawing',
      drawing: guardBay(estimate, bay, bought?.length ?? null),
      layers: LAYERS,
      near: true,
      share: SHARE,
      follows: 120,
    },
    { kind: 'steps', items: buildSteps(estimate, bought) },
  ]
}

/** Marks on the rails, and the guard beside stairs; nothing of what there is not. */
export function guardTables(estimate: PaperSource['estimate'], guard: GuardPlan): readonly Block[] {
  const bays = guardBaysTable(guard)
  return [
    ...(bays.rows.length === 0 ? [] : [{ kind: 'table', table: bays, empty: '' } as const]),
    ...(guard.stairs.length === 0
      ? []
      : [
          ...stairGuardViews(estimate, guard).map(
            (drawing): Block => ({ kind: 'drawing', drawing, layers: LAYERS, near: true, share: SHARE }),
          ),
          {
            kind: 'text',
            text: 'The dashed line lies on the nosings; heights over it are measured upright, from it to the top of the guard. Circles are the bolts through post and stringer. A handrail’s top is 34 to 38 in over that line (IRC 2021 R311.7.8.1).',
          } as const,
          { kind: 'table', table: stairGuardTable(guard, estimate.stairs), empty: '' } as const,
          {
            kind: 'table',
            columns: 'stair-posts',
            whole: true,
            table: stairPostsTable(guard, estimate),
            empty: '',
          } as const,
          {
            kind: 'text',
            columns: 'stair-posts',
            text: 'Two 1/2 in bolts through post and stringer, 2 in or more off the stringer’s lower edge and 1 1/2 in under the notch over them; washers on wood (common practice, no source). Hold the post in its place and look where the notch comes before it is bored.',
          } as const,
        ]),
  ]
}

/** Those on the level; null where panels fill the bays. */
function levelBaluster({ balusters }: GuardPlan): GuardPlan['balusters'][number] | null {
  return balusters.find(({ sloped }) => !sloped) ?? null
}

function buildSteps(
  estimate: PaperSource['estimate'],
  bought: GuardPlan['balusters'][number] | null,
): readonly Step[] {
  const { job } = estimate
  const { height, cap, postSize } = job.guard
  const { below, underCap } = bayHeights(estimate, bought?.length ?? height)
  const fillers = estimate.guard?.members.filter(({ id }) => id.startsWith('guard-filler-')) ?? []
  const [filler] = fillers
  return [
    {
      text: 'Hook the tape at the 0 of each edge, the corner of the frame with the ring, on the rim’s outer face. Mark every post’s centre by its figure, in one pull. Posts stand inside the rim.',
    },
    {
      text: `Posts ${postSize} end ${printInches(underCap)} over the decking${cap === 'none' ? '' : `; the cap ${cap} lies on them, its top ${printInches(height)} over the decking`}.`,
    },
    ...(filler === undefined
      ? []
      : [
          {
            text: `Screw ${fillers.map(({ mark }) => mark).join(', ')}, 2x4, ${printInches(filler.length)} long, upright and flat on the face of the post of the same number towards the stairs, flush with its outer edge, from ${printInches(UNDER_LOWER_RAIL)} over the decking to under the cap, two 3 in screws at each end: without it a 4 in ball passes between that post and the one beside the stairs.`,
            notes: ['Then measure from it to the post beside the stairs: less than 4 in, corner to corner.'],
          },
        ]),
    ...(bought === null
      ? [{ text: 'Measure each bay between its posts before its panel is cut.' }]
      : [
          {
            text: `Rails 2x4 on edge between the posts, as long as the bay is clear: measure each before it is sawn. The lower one’s lower edge is ${printInches(below)} over the decking, the upper one’s upper edge under the cap.`,
          },
          {
            text: `Cut ${bought.count} balusters to ${printInches(bought.length)}, from ${printInches(bought.stock)} ones. Each reaches from the lower rail’s lower edge to under the cap.`,
          },
          {
            text: 'Clamp both rails of a bay together and mark them by the table, all figures from one end; the baluster stands beyond each line. Bays are named by stretch and count: 3.2 is the second of stretch 3.',
            notes: [
              'Where a bay came out otherwise, space its balusters anew: no opening may pass a 4 in ball.',
            ],
          },
        ]),
  ]
}
