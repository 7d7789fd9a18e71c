import { sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { inches } from '../../units/index.ts'
import { said } from '../said.ts'
import { box, type Detail, detail, trace } from './detail.ts'

const BESIDE = inches(14)

/** Where a ply of a beam is jointed over a post, seen along the beam; null where every ply is one board. */
export function jointDetail({ job, frame, plans, checks }: Estimate): Detail | null {
  const joints = plans.flatMap(({ plan }) => plan.joints)
  const jointed = frame.beams.flatMap((beam) =>
    beam.plyIds.flatMap((plyId) => {
      const own = joints.filter(({ memberId }) => memberId === plyId)
      const mark = frame.members.find(({ id }) => id === plyId)?.mark ?? plyId
      return own.length === 0 ? [] : [{ beam, mark, at: own.map(({ label }) => label) }]
    }),
  )
  const [first] = jointed
  if (first === undefined) return null
  const { depth } = sectionOf(first.beam.size)
  const post = sectionOf(job.frame.postSize)
  const id = 'detail-joint'
  return detail(
    id,
    'Joint of a beam ply over a post, seen along the beam',
    [
      box(first.beam.id, [-BESIDE, 0], [BESIDE, depth], { fill: 'wood', weight: 'heavy' }),
      box('post', [-post.depth / 2, depth], [post.depth / 2, depth + inches(8)], { fill: 'wood' }),
      ...trace(
        'joint',
        [
          [0, 0],
          [0, depth],
        ],
        'heavy',
      ),
      ...trace(
        'post-cap',
        [
          [-post.depth / 2, depth - inches(3)],
          [-post.depth / 2, depth + inches(3)],
        ],
        'medium',
      ),
      ...trace(
        'post-cap',
        [
          [post.depth / 2, depth - inches(3)],
          [post.depth / 2, depth + inches(3)],
        ],
        'medium',
      ),
      ...trace(
        'post-centre',
        [
          [0, -inches(3)],
          [0, depth + inches(8)],
        ],
        'fine',
        'centre',
      ),
    ],
    [
      {
        at: [0, depth * 0.4],
        to: [-BESIDE - inches(4), depth * 0.4],
        text: `Jointed: ${jointed.map(({ mark, at }) => `${mark} at ${at.join(' and ')}`).join('; ')}. The two ends meet square on the centre of the post; both bear.`,
      },
      {
        at: [BESIDE / 2, depth / 2],
        to: [BESIDE + inches(4), depth / 2],
        text: [
          'The ply beside it goes through where the plan staggers the joints. No joint stands off a post.',
          ...said(checks, 'Joints of beam plies'),
        ].join(' '),
      },
      {
        at: [post.depth / 2, depth + inches(2)],
        to: [BESIDE + inches(4), depth + inches(5)],
        text: 'The cap, or its plates, is nailed to both pieces.',
      },
    ],
  )
}
