import type { Design } from '../../estimate-types.ts'
import { houseSideWords } from '../../guard/index.ts'
import type { StairPlan, StringerPattern } from '../../stairs/index.ts'
import { ceilTicks, inches, printInches, printLength, type Ticks, ticks } from '../../units/index.ts'
import { edgeWords } from '../build/edge-words.ts'
import { landingWords } from '../build/landing-words.ts'
import { atLandingWords, headWords, padPlace, topStepWords } from '../build/stair-bearing-words.ts'
import { stairWidthWords } from '../build/stair-width-words.ts'
import { landingPlan } from '../drawings/landing-plan.ts'
import { headMark, lowestMark, stringerDrawing } from '../drawings/stringer-drawing.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { guardTable } from '../tables/guard-table.ts'
import type { PaperTable } from '../types.ts'
import { guardDrawings, guardTables } from './guard-drawings.ts'

/** Stringers to be laid out and cut, and the guard's posts and bays; nothing where the job frames neither. */
export function stairsSheet({ estimate }: PaperSource): Sheet | null {
  const { stairs, guard } = estimate
  if (stairs.length === 0 && (guard === null || guard.stretches.length === 0)) return null
  return {
    id: 'stairs',
    title: stairs.length === 0 ? 'Guard' : 'Stairs and guard',
    audience: 'crew',
    across: true,
    blocks: [
      ...stairs.flatMap((one, i): readonly Block[] =>
        stairs.length === 1
          ? stairBlocks(one, SHARE, estimate)
          : [
              ...(i === 0 ? [] : [{ kind: 'page break' } as const]),
              { kind: 'heading', text: ORDER[one.number - 1] ?? '' },
              ...stairBlocks(one, SHARE_OF_SEVERAL, estimate),
            ],
      ),
      ...(guard === null ? [] : guardBlocks(estimate, guard)),
    ],
  }
}

/** Share of a page's height for a stringer's drawing; less where a heading says whose it is. */
const SHARE = 0.7
const SHARE_OF_SEVERAL = 0.55
const SHARE_OF_LANDING = 0.5

const ORDER = ['First stairs', 'Second stairs', 'Third stairs']

function stairBlocks(stairs: StairPlan, share: number, design: Pick<Design, 'layout'>): readonly Block[] {
  const { totalRise, risers, rise, run, place, edge, handrail, tread, pad, floor, patterns, platform } =
    stairs
  return [
    {
      kind: 'facts',
      rows: [
        [
          'Stairs',
          `on the ${edgeWords(edge, design)}, from ${printLength(place)} along it, ${stairWidthWords(stairs)}`,
        ],
        [
          'Rise',
          `${printLength(totalRise)} from the deck down to ${floor !== null ? `level ${floor.level}` : pad === null ? 'the ground at the foot' : 'the top of the pad at the foot'}: ${risers} equal risers of ${printInches(ceilTicks(rise))}, ${printLength(totalRise)} ÷ ${risers} up to the 1/32 in; the marks rule`,
        ],
        [
          'Run',
          `${patterns[0] === undefined ? '' : `${printInches(patterns[0].run)} each from nosing to nosing, `}${printLength(run)} in all; treads ${printInches(tread.depth)} deep of ${tread.boards} boards, nosing ${printInches(tread.nosing)}${tread.riserBoard > 0 ? ` past riser boards ${printInches(tread.riserBoard)} thick, which stand on the rise cuts; each tread butts against the one behind it` : ''}`,
        ],
        ['Heads', headWords(stairs)],
        ...(tread.opening > 0
          ? [['Opening', `${nearest(tread.opening)} between treads: nothing may pass a 4 in ball`] as const]
          : []),
        ...(handrail.needed
          ? [
              [
                'Handrail',
                `${handrail.flights.map((long) => `${handrail.sides} of ${printLength(long)}`).join(' and ')}${handrail.sides === 1 ? ', on the right as one goes down, or where the owner wants it' : ', one on each side'}, top 34 to 38 in over the nosings; from over the lowest riser to over the uppermost of each flight, ends returned to a post; a bracket at either end and every 4 ft`,
              ] as const,
            ]
          : []),
        ...(pad === null
          ? []
          : [
              [
                'Pad at the foot',
                `${printLength(pad.width)} × ${printLength(pad.depth)}, ${printInches(pad.thickness)} thick, ${padPlace(stairs, edgeWords(edge, design))}`,
              ] as const,
            ]),
      ],
    },
    {
      kind: 'caution',
      text: `Measure the rise again before a stringer is cut, from the decking’s top to ${floor !== null ? `level ${floor.level}` : pad === null ? 'what the foot stands on' : 'the top of the finished pad'}${platform === null ? '' : ' and to the boards of the landing'}: what is built decides, not the drawing. Unequal risers make people fall.`,
    },
    ...alikePatterns(patterns).flatMap((group) => patternBlocks(stairs, group, share)),
    ...landingBlocks(stairs),
  ]
}

/** The landing's frame with its marks, and how it is held. */
function landingBlocks(stairs: StairPlan): readonly Block[] {
  const words = landingWords(stairs)
  const atLanding = atLandingWords(stairs)
  if (stairs.platform === null || words === null) return []
  return [
    {
      kind: 'drawing',
      drawing: landingPlan(stairs, stairs.platform),
      layers: ['joists', 'guard', 'dimensions'],
      near: true,
      share: SHARE_OF_LANDING,
      follows: 40,
    },
    { kind: 'text', text: `The landing: ${words}.` },
    ...(atLanding === null ? [] : [{ kind: 'text', text: atLanding } as const]),
  ]
}

/** Flights whose stringers are cut alike have one pattern. */
function alikePatterns(patterns: readonly StringerPattern[]): readonly (readonly StringerPattern[])[] {
  return [...Map.groupBy(patterns, ({ flight: _own, ...pattern }) => JSON.stringify(pattern)).values()]
}

function patternBlocks(
  stairs: StairPlan,
  group: readonly StringerPattern[],
  share: number,
): readonly Block[] {
  const [pattern] = group
  if (pattern === undefined) return []
  const flights = group.map(({ flight }) => flight).join(' and ')
  const { flight, kind, count, spacing, step, drop, throat, length, rise, run } = pattern
  const placed = stairs.flights.find(({ number }) => number === flight)
  return [
    {
      kind: 'heading',
      text:
        group.length === 1
          ? `Flight ${flight}: ${count} ${kind} stringers`
          : `Flights ${flights}, alike: ${count} ${kind} stringers each`,
    },
    {
      kind: 'drawing',
      drawing: stringerDrawing(pattern),
      layers: ['joists', 'dimensions'],
      near: true,
      share,
    },
    {
      kind: 'steps',
      columns: `marks-${flight}`,
      items: [
        {
          text: `Crown up. Strike the lowest mark ${printInches(nearestTick(lowestMark(pattern)))} from the board’s lower end, hook the tape on it and strike every mark of the table, in one pull; from mark to mark it is ${printInches(nearestTick(step))} along the edge. Then lay the square at each mark, ${printInches(ceilTicks(rise))} on the tongue and ${printInches(run)} on the blade.`,
          notes: [
            ...(kind === 'cut'
              ? [
                  `The head: from the uppermost mark the level line is ${printInches(pattern.topRun)} long; at its end, which is the board’s upper end, the plumb cut goes down with the square.`,
                ]
              : []),
            ...(placed === undefined ? [] : [topStepWords(stairs, placed, pattern)]),
            'The marks rule: do not step off with the square alone, its rounding adds up over the flight.',
          ],
        },
        {
          text: `Cut ${group.length * count} alike from 2x12, ${printLength(length)} of board each${kind === 'cut' ? `; drop the bottom by ${printInches(drop)}, the thickness of a tread: the lowest notch is ${printInches(nearestTick(rise - drop))} high` : ''}. ${endCuts(pattern)} Try the first in its place before the others are cut.`,
          notes: [
            `${kind === 'cut' ? `${nearest(throat)} of wood is left under the notches. ` : 'Nothing is notched: the dashed lines are where the treads stand. '}Stand them ${nearest(spacing)} apart, centre to centre.`,
          ],
        },
      ],
    },
    {
      kind: 'table',
      columns: `marks-${flight}`,
      whole: true,
      table: marksTable(pattern),
      empty: 'One riser needs no marks.',
    },
  ]
}

function marksTable(pattern: StringerPattern): PaperTable {
  const { flight, kind, marks } = pattern
  const lowest = nearestTick(lowestMark(pattern))
  const head = nearestTick(headMark(pattern))
  const from = (at: Ticks) => ({ at: printLength(at), end: printLength(ticks(at + lowest)) })
  return {
    id: `stringer-marks-${flight}`,
    title: 'Marks along the edge',
    columns: [
      { key: 'riser', label: 'Top of riser', align: 'right' },
      { key: 'at', label: 'From the lowest mark', align: 'right' },
      { key: 'end', label: 'From the board’s lower end', align: 'right' },
    ],
    rows: [
      ...marks.map(({ riser, at }) => ({ riser: `${riser}`, ...from(at) })),
      // a cut one's lies past the end of the board that is ordered
      ...(kind === 'closed' ? [{ riser: 'plumb cut of the head', ...from(head) }] : []),
    ],
  }
}

function guardBlocks(
  estimate: PaperSource['estimate'],
  guard: NonNullable<PaperSource['estimate']['guard']>,
): readonly Block[] {
  const { job, layout } = estimate
  return [
    ...guardDrawings(estimate, guard),
    {
      kind: 'facts',
      together: 'guard',
      rows: [
        ['Height', `${printInches(job.guard.height)} from the decking to the top of the rail`],
        [
          'Posts',
          `${guard.deckPosts} on the deck, ${guard.stairPosts} on the stairs, ${job.guard.postSize}, fixed by ${job.guard.fixing}`,
        ],
        ...(guard.house.length === 0
          ? []
          : [
              [
                'Along the house',
                `no guard beside ${houseSideWords(guard.house)}: the wall closes that side${guard.house.some(({ closes }) => closes === 'wall going on') ? '; see that it goes on as far as the stairs, else that side needs a guard too' : ''}. A handrail on that side is fixed to the wall`,
              ] as const,
            ]),
        ...guard.balusters.map(({ count, length, sloped }): readonly [string, string] => [
          sloped ? 'Balusters along stairs' : 'Balusters',
          `${count} of ${printInches(length)}${sloped ? ' to the long points, both ends cut to the slope' : ''}`,
        ]),
        ...guard.panels.map(({ count, stock, sloped }): readonly [string, string] => [
          sloped ? 'Panels along stairs' : 'Panels',
          `${count} of ${printLength(stock)}`,
        ]),
      ],
    },
    {
      kind: 'caution',
      together: 'guard',
      text: 'No opening passes a 4 in ball. A post must hold a person who leans on it: do not notch it, do not fix it to the decking.',
    },
    ...guardTables(estimate, guard),
    { kind: 'table', table: guardTable(guard, { layout }), empty: 'No edge has a guard.' },
  ]
}

/** A length off the grid, to the nearest 1/16 in as a tape shows it. */
function nearest(length: number): string {
  return printInches(ticks(Math.round(length / 2) * 2))
}

/** How long the cuts at foot and head are on the board, and what the foot stands on. */
function endCuts({ kind, rise, run, topRun, step, drop, below }: StringerPattern): string {
  const plumb = (inches(11.25) * step) / run
  const foot = ((plumb - rise + drop - below) * run) / rise
  const head = plumb - (kind === 'cut' ? rise - ((run - topRun) * rise) / run : 0)
  return `The head’s plumb cut is ${printInches(nearestTick(head))} long, the foot’s level cut ${printInches(nearestTick(foot))}${below > 0 ? `, ${printInches(below)} under the landing’s boards: the plumb cut runs down to it from the lowest notch` : ''}.`
}

function nearestTick(length: number): Ticks {
  return ticks(Math.round(length))
}
