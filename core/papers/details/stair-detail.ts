import type { Estimate } from '../../estimate-types.ts'
import { titleOfStairs } from '../../job/index.ts'
import type { StairPlan } from '../../stairs/index.ts'
import { UNDER_PAD } from '../../takeoff/index.ts'
import { ceilTicks, inches, printInches, printLength, ticks } from '../../units/index.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { said } from '../said.ts'
import { box, type Detail, detail, trace } from './detail.ts'
import { stairBearingDetails } from './stair-bearing-detail.ts'

/** Two steps at the foot of each of the stairs, section along the way down; then what its flights hang on and stand on. */
export function stairDetails({
  stairs,
  checks,
  job,
}: Pick<Estimate, 'stairs' | 'checks' | 'job'>): readonly Detail[] {
  return stairs.flatMap((one) => [
    footDetail(one, (title) => said(checks, titleOfStairs(one.branch, title))),
    ...stairBearingDetails(job, one),
  ])
}

function footDetail(stairs: StairPlan, told: (title: string) => readonly string[]): Detail {
  const pattern = stairs.patterns.at(-1)
  if (pattern === undefined) throw new Error('stairs have a flight')
  const { rise, run } = pattern
  const { nosing, depth, product, boards, riserBoard } = stairs.tread
  const thick = pattern.drop > 0 ? pattern.drop : inches(1)
  const id = stairs.number === 1 ? 'detail-stair' : `detail-stair-${stairs.number}`
  // the foot of the flight at the left, the way up to the right; y counts down from the landing
  const treads = [1, 2].map((n) =>
    box(
      'tread',
      [(n - 1) * run - riserBoard - nosing, -n * rise],
      [(n - 1) * run - riserBoard - nosing + depth, -n * rise + thick],
      { fill: 'wood', weight: 'heavy' },
    ),
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
  // the rim closes the uppermost riser, boards the others: each on the stringers' rise cuts, under its tread
  const board = stairs.members.find(({ role }) => role === 'riser')
  const risers =
    board === undefined
      ? []
      : [0, 1].map((n) =>
          box(
            'riser',
            [n * run - riserBoard, -(n + 1) * rise + thick],
            [n * run, -(n + 1) * rise + thick + (board.ripTo ?? inches(5.5))],
            { fill: 'wood' },
          ),
        )
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
  const padEdge = -riserBoard - (stairs.pad?.landing ?? 0)
  return detail(
    id,
    titleOfStairs(stairs.branch, 'Foot of the stairs, section along the way down'),
    [
      ...notch,
      ...edge,
      ...treads,
      ...risers,
      ...(stairs.pad === null
        ? trace(
            'ground',
            [
              [-inches(14), 0],
              [2 * run, 0],
            ],
            'heavy',
          )
        : [
            box('stair-pad', [padEdge, 0], [padEdge + stairs.pad.depth, landing], {
              fill: 'ground',
            }),
            box('stair-pad-gravel', [padEdge, landing], [padEdge + stairs.pad.depth, landing + UNDER_PAD], {
              weight: 'fine',
              stroke: 'hidden',
            }),
            levelDimension(id, padEdge, padEdge + stairs.pad.depth, landing + UNDER_PAD, inches(4)),
          ]),
      {
        ...uprightDimension(id, -2 * rise, -rise, 2 * run, inches(6)),
        text: printLength(ceilTicks(rise)),
      },
      levelDimension(id, -riserBoard - nosing, run - riserBoard - nosing, -2 * rise, -inches(4)),
    ],
    [
      {
        at: [run / 2, -rise + thick / 2],
        to: [-inches(10), -rise - inches(6)],
        text: [
          `Treads of ${boards} ${boards === 1 ? 'board' : 'boards'} ${product.size}, ${printInches(ticks(Math.round(depth)))} deep, nosing ${printInches(nosing)}${riserBoard > 0 ? ' past the riser board under it, rear edge against the one behind it' : ''}.`,
          ...told('Treads'),
        ].join(' '),
      },
      {
        // under the figure of the riser, not through it
        at: [run, -1.2 * rise],
        to: [2 * run + inches(14), -0.8 * rise],
        text: [
          ...told('Steps of the stairs'),
          'Risers to the 1/32 in above; the marks of the stringer rule.',
          ...(board === undefined
            ? []
            : [
                `Riser boards ${board.product.size}${board.ripTo === null ? '' : `, ripped to ${printInches(board.ripTo)}`}, on edge on the stringers’ rise cuts, under each tread; set before the tread that butts against it.`,
              ]),
        ].join(' '),
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
              to: [-inches(20), -inches(8)] as const,
              text: `Concrete pad ${printInches(stairs.pad.thickness)} thick, ${printInches(stairs.pad.depth)} deep and ${printInches(stairs.pad.width)} wide, on ${printInches(UNDER_PAD)} of gravel; the face of the lowest riser ${printInches(stairs.pad.landing)} from its outer edge; each stringer held down to it by an angle and a 1/2 in anchor bolt.`,
            },
          ]),
    ],
  )
}
