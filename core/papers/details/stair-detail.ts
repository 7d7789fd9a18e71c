import type { Estimate } from '../../estimate-types.ts'
import { titleOfStairs } from '../../job/index.ts'
import type { StairPlan } from '../../stairs/index.ts'
import { inches, nearestSixteenth, printInches, printLength, ticks } from '../../units/index.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { said } from '../said.ts'
import { box, type Detail, detail, trace } from './detail.ts'

/** Two steps at the foot of each of the stairs, section along the way down. */
export function stairDetails({ stairs, checks }: Pick<Estimate, 'stairs' | 'checks'>): readonly Detail[] {
  return stairs.map((one) => footDetail(one, (title) => said(checks, titleOfStairs(one.branch, title))))
}

function footDetail(stairs: StairPlan, told: (title: string) => readonly string[]): Detail {
  const pattern = stairs.patterns.at(-1)
  if (pattern === undefined) throw new Error('stairs have a flight')
  const { rise, run } = pattern
  const { nosing, depth, product, boards } = stairs.tread
  const thick = pattern.drop > 0 ? pattern.drop : inches(1)
  const id = stairs.number === 1 ? 'detail-stair' : `detail-stair-${stairs.number}`
  // the foot of the flight at the left, the way up to the right; y counts down from the landing
  const treads = [1, 2].map((n) =>
    box('tread', [(n - 1) * run - nosing, -n * rise], [(n - 1) * run - nosing + depth, -n * rise + thick], {
      fill: 'wood',
      weight: 'heavy',
    }),
  )
  const notch =
    pattern.kind === 'cut'
      ? trace(
          'stringer',
          [
            [0, 0],
            [0, -rise + thick],
            [run, -rise + thick],
            [run, -2 * rise + thick],
            [2 * run, -2 * rise + thick],
          ],
          'medium',
        )
      : []
  const slope = rise / run
  const below = inches(11.25) * Math.sqrt(1 + slope * slope) - rise
  const edge = trace(
    'stringer',
    [
      [Math.max(0, below / slope), 0],
      [2 * run, below - 2 * rise],
    ],
    'medium',
  )
  const landing = stairs.pad === null ? 0 : stairs.pad.thickness
  return detail(
    id,
    titleOfStairs(stairs.branch, 'Foot of the stairs, section along the way down'),
    [
      ...notch,
      ...edge,
      ...treads,
      ...(stairs.pad === null
        ? trace(
            'ground',
            [
              [-inches(14), 0],
              [2 * run, 0],
            ],
            'heavy',
          )
        : [box('stair-pad', [-inches(14), 0], [run * 1.4, landing], { fill: 'ground' })]),
      {
        ...uprightDimension(id, -2 * rise, -rise, 2 * run, inches(6)),
        text: printLength(nearestSixteenth(rise)),
      },
      levelDimension(id, -nosing, run - nosing, -2 * rise, -inches(4)),
    ],
    [
      {
        at: [run / 2, -rise + thick / 2],
        to: [-inches(10), -rise - inches(6)],
        text: [
          `Treads of ${boards} ${boards === 1 ? 'board' : 'boards'} ${product.size}, ${printInches(ticks(Math.round(depth)))} deep, nosing ${printInches(nosing)}.`,
          ...told('Treads'),
        ].join(' '),
      },
      {
        // under the figure of the riser, not through it
        at: [run, -1.2 * rise],
        to: [2 * run + inches(14), -0.8 * rise],
        text: [...told('Steps of the stairs'), 'Risers to the nearest 1/16 in; cut to the marks.'].join(' '),
      },
      {
        at: [run * 1.2, -rise * 0.7],
        to: [2 * run + inches(14), -rise * 0.2],
        text: ['Stringers of 2x12.', ...told('Stringers')].join(' '),
      },
      ...(stairs.pad === null
        ? []
        : [
            {
              at: [-inches(8), landing / 2] as const,
              to: [-inches(12), landing + inches(4)] as const,
              text: `Concrete pad ${printInches(stairs.pad.thickness)} thick, ${printInches(stairs.pad.depth)} deep and ${printInches(stairs.pad.width)} wide; each stringer held down to it by an angle.`,
            },
          ]),
    ],
  )
}
