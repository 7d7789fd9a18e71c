import type { Estimate } from '../../estimate-types.ts'
import { allHoles } from '../../ground/index.ts'
import { inches, printInches } from '../../units/index.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { said } from '../said.ts'
import { frostWords } from '../tables/frost-words.ts'
import { box, type Detail, detail, trace } from './detail.ts'

/** The deepest footing in section, from the ground to its bottom. */
export function footingDetail(estimate: Estimate): Detail | null {
  const { job, checks } = estimate
  const holes = allHoles(estimate)
  const [first, ...others] = holes
  if (first === undefined) return null
  const footing = others.reduce((deep, one) => (one.depth > deep.depth ? one : deep), first)
  const { tube, base, baseThickness, depth, holeDiameter } = footing
  const { projection } = job.ground
  const { frostDepth } = job.site
  const wide = Math.max(tube, base) / 2
  const tubeEnds = depth - (base > 0 ? baseThickness : 0)
  const id = 'detail-footing'
  const depths = [...new Set(holes.map((one) => printInches(one.depth)))]
  return detail(
    id,
    'Footing, section',
    [
      ...trace(
        'ground',
        [
          [-wide - inches(14), 0],
          [-tube / 2, 0],
        ],
        'heavy',
      ),
      ...trace(
        'ground',
        [
          [tube / 2, 0],
          [wide + inches(10), 0],
        ],
        'heavy',
      ),
      box('hole', [-holeDiameter / 2, 0], [holeDiameter / 2, depth], { weight: 'fine', stroke: 'hidden' }),
      box(footing.id, [-tube / 2, -projection], [tube / 2, tubeEnds], { fill: 'ground' }),
      ...(base > 0 ? [box(footing.id, [-base / 2, tubeEnds], [base / 2, depth], { fill: 'ground' })] : []),
      ...(frostDepth > 0
        ? trace(
            'frost',
            [
              [-wide - inches(14), frostDepth],
              [wide + inches(6), frostDepth],
            ],
            'fine',
            'centre',
          )
        : []),
      uprightDimension(id, 0, depth, wide, inches(12)),
      ...(base > 0 ? [uprightDimension(id, tubeEnds, depth, wide, inches(5))] : []),
      levelDimension(id, -wide, wide, depth, inches(5)),
    ],
    [
      {
        at: [0, tubeEnds / 2],
        to: [-wide - inches(8), tubeEnds / 2 - inches(3)],
        text: `Form tube ${printInches(tube)}, filled with concrete to ${printInches(projection)} over the ground${base > 0 ? `, on a base ${printInches(base)} across and ${printInches(baseThickness)} thick` : ', standing on the ground itself'}.`,
      },
      {
        at: [0, depth],
        to: [-wide - inches(8), depth + inches(4)],
        text: `Bottom ${depths.length === 1 ? `${depths[0]} under the ground` : `${depths.join(', ')} under the ground, hole by hole as in the schedule; drawn is the deepest`}, on undisturbed ground, no water, no loose earth.`,
      },
      ...(frostDepth > 0
        ? [
            {
              at: [-wide - inches(11), frostDepth] as const,
              to: [-wide - inches(14), frostDepth - inches(6)] as const,
              text: [`${frostWords(job)}.`, ...said(checks, 'Footing depth')].join(' '),
            },
          ]
        : []),
      {
        at: [holeDiameter / 2, depth * 0.3],
        to: [wide + inches(9), depth * 0.15],
        text: `Hole ${printInches(holeDiameter)} across; filled again in layers round the tube.`,
      },
    ],
  )
}
