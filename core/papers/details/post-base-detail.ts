import { sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { allHoles } from '../../ground/index.ts'
import { inches, printInches } from '../../units/index.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { box, type Detail, detail, trace } from './detail.ts'

/** The foot of a post on its pier, with the anchor in the concrete. */
export function postBaseDetail(estimate: Estimate): Detail | null {
  const { job, frame } = estimate
  const [footing] = frame.footings
  if (footing === undefined) return null
  const { standoff, projection } = job.ground
  const post = sectionOf(job.frame.postSize)
  const half = footing.tube / 2
  const down = projection + inches(7)
  const id = 'detail-base'
  return detail(
    id,
    'Post base on its pier',
    [
      box(footing.id, [-half, 0], [half, down], { fill: 'ground' }),
      box('post', [-post.depth / 2, -standoff - inches(12)], [post.depth / 2, -standoff], { fill: 'wood' }),
      ...trace(
        'post-base',
        [
          [-post.depth / 2, -standoff - inches(4)],
          [-post.depth / 2, 0],
          [post.depth / 2, 0],
          [post.depth / 2, -standoff - inches(4)],
        ],
        'heavy',
      ),
      ...trace(
        'anchor',
        [
          [0, -inches(0.5)],
          [0, down - inches(1)],
        ],
        'heavy',
      ),
      ...trace(
        'ground',
        [
          [-half - inches(10), projection],
          [-half, projection],
        ],
        'heavy',
      ),
      ...trace(
        'ground',
        [
          [half, projection],
          [half + inches(10), projection],
        ],
        'heavy',
      ),
      ...(standoff > 0 ? [uprightDimension(id, -standoff, 0, half, inches(5))] : []),
      ...(projection > 0 ? [uprightDimension(id, 0, projection, half, inches(11))] : []),
      levelDimension(id, -half, half, down, inches(4)),
    ],
    [
      {
        at: [-post.depth / 2, -standoff - inches(3)],
        to: [-half - inches(6), -standoff - inches(6)],
        text: `Post base with a stand-off of ${printInches(standoff)}: end grain stays dry. ${allHoles(estimate).filter(({ post }) => post !== null).length} of them, each turned square to the strings.`,
      },
      {
        at: [0, inches(4)],
        to: [-half - inches(6), -inches(1)],
        text: 'Anchor of the kind and length that the base is listed with, set in the concrete or drilled once it is hard.',
      },
      {
        at: [half, projection / 2],
        to: [half + inches(17), -inches(3)],
        text: `Top of concrete ${printInches(projection)} over the ground, sloped so that water runs off.`,
      },
    ],
  )
}
