import type { Estimate } from '../../estimate-types.ts'
import { guardNails, nailedJoints, stairNails, stepNails, withAdditions } from '../../takeoff/index.ts'
import type { PaperTable } from '../types.ts'
import { quantity, tableOf } from './table.ts'

/** Metal whose fasteners come with it or are named by its sheet: no count of ours would hold for every make. */
const OWN_FASTENERS = [
  ['guard-hold-down', 'hold-down of a guard post', 'every hole filled, beside its bolt'],
  ['hold-down-1500lb', 'hold-down to the house', 'every hole filled, beside its rod'],
  ['handrail-bracket', 'bracket of a handrail', 'every hole filled'],
] as const

/**
 * What every ordered nail and screw is for. Counts are those of the takeoff before loss; the sources are those of its
 * figures, and a joint that no code is quoted for says so.
 */
export function nailingTable({
  job,
  frame,
  guard,
  stairs,
  takeoff,
}: Pick<Estimate, 'job' | 'frame' | 'guard' | 'stairs' | 'takeoff'>): PaperTable {
  const joints = [
    ...nailedJoints(withAdditions(job, frame, { stairs, guard })),
    ...(guard === null ? [] : guardNails(guard)),
    ...stairNails(stairs),
    ...stepNails(frame),
  ].filter(({ count }) => count > 0)
  const alike = Map.groupBy(joints, ({ nail, joint, each }) => `${nail} ${joint} ${each}`)
  const nails = [...alike.values()].flatMap((group) => {
    const [first] = group
    if (first === undefined) return []
    return [
      {
        joint: first.joint.replace(', two rows at 16 in', ''),
        fastener: `${first.nail} in`.replace(/ (common|box) in$/, ' $1'),
        each: first.each,
        count: `${group.reduce((sum, { count }) => sum + count, 0)}`,
        says: first.says,
      },
    ]
  })
  const screws = takeoff.goods
    .filter(({ sku }) => sku.startsWith('screw-') || sku === 'deck-clip')
    .map(({ label, thousandths, cause }) => ({
      joint: cause.rule,
      fastener: label,
      each: '',
      count: `${quantity(thousandths)} with loss`,
      says: '',
    }))
  const own = OWN_FASTENERS.flatMap(([good, joint, each]) => {
    const count = takeoff.goods.reduce(
      (sum, { sku, thousandths }) => (sku.startsWith(good) ? sum + thousandths : sum),
      0,
    )
    return count === 0
      ? []
      : [{ joint, fastener: 'its own, with it', each, count: `at ${quantity(count)}`, says: 'its own sheet' }]
  })
  return tableOf(
    'nailing',
    'What each nail and screw is for',
    [
      ['joint', 'Joint', 'left'],
      ['fastener', 'Nail or screw', 'left'],
      ['each', 'How many', 'left'],
      ['count', 'In all', 'right'],
      ['says', 'By', 'left'],
    ],
    [...nails, ...screws, ...own],
  )
}
