import { bearingOf } from '../../checks/index.ts'
import { diagonal } from '../../frame/index.ts'
import {
  allHoles,
  isBeforeOneWall,
  type LayoutString,
  layoutChecks,
  layoutCorners,
  layoutStrings,
  soilCautions,
  wallWords,
} from '../../ground/index.ts'
import { printLength, type Ticks } from '../../units/index.ts'
import { edgeWords } from '../build/edge-words.ts'
import { houseEnd } from '../build/house-end.ts'
import { padPlace } from '../build/stair-bearing-words.ts'
import { footingLayout } from '../drawings/footing-layout.ts'
import { offsetText } from '../offset-text.ts'
import { waitingHoles, waitingWords } from '../order/waiting-holes.ts'
import type { Block, Sheet, Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { frostWords } from '../tables/frost-words.ts'
import { footingLoadWords, footingScheduleTable } from '../tables/ground-footings.ts'
import {
  layoutChecksTable,
  layoutCornersTable,
  layoutHolesTable,
  layoutPadsTable,
  layoutStringsTable,
} from '../tables/ground-layout.ts'
import type { PaperTable } from '../types.ts'

/** Strings, crossings, diagonals and holes: what a person lays out on the ground, and what proves it. */
export function footingsSheet({ estimate }: PaperSource): Sheet {
  const { job } = estimate
  const corners = layoutCornersTable(estimate)
  const pads = layoutPadsTable(estimate)
  const loads = footingLoadWords(estimate)
  return {
    id: 'footings',
    title: 'Footing layout',
    audience: 'crew',
    across: true,
    blocks: [
      {
        kind: 'caution',
        text: 'Before anything is dug: call 811 (in the United States), or the local service, and wait until gas, power, water and telephone are marked on the ground. The call is free; digging into a cable can kill.',
      },
      {
        kind: 'drawing',
        drawing: footingLayout(estimate),
        layers: ['house', 'decking', 'footings', 'strings', 'posts', 'dimensions'],
      },
      ...waitingWords(waitingHoles(estimate)).map((text) => ({ kind: 'caution', text }) as const),
      {
        kind: 'table',
        columns: 'layout',
        table: layoutHolesTable(estimate),
        empty: 'This deck has no holes.',
      },
      {
        kind: 'table',
        columns: 'layout',
        table: layoutStringsTable(estimate),
        empty: 'No strings are needed.',
      },
      ...(corners.rows.length === 0
        ? []
        : [{ kind: 'table', columns: 'layout', table: corners, empty: '' } as const]),
      ...(pads.rows.length === 0
        ? []
        : [{ kind: 'table', columns: 'layout', table: pads, empty: '' } as const]),
      { kind: 'heading', text: 'How to lay it out' },
      { kind: 'steps', items: layoutSteps(estimate) },
      { kind: 'table', table: layoutChecksTable(estimate), empty: 'There is nothing to check.' },
      ...scheduleBlocks(estimate),
      { kind: 'text', columns: 'loads', tone: 'soft', text: loads.explains },
      {
        kind: 'text',
        columns: 'loads',
        tone: 'soft',
        text: `Heights count from the ground at the wall's left end; plus is up. ${frostWords(job)}. ${bearingOf(job).says}. Depth is to the bottom of everything, base included. Bags hold 0.6 cu ft and are counted without waste; the order has it.`,
      },
      { kind: 'heading', columns: 'cautions', text: 'Cautions' },
      ...[...loads.cautions, ...soilCautions(job)].map(
        (text) => ({ kind: 'caution', columns: 'cautions', text }) as const,
      ),
    ],
  }
}

const LOADS = ['load', 'worst', 'pressure', 'worstPressure', 'bearing']

/** The schedule in two, what is dug and what it carries: in one table its words would break on a small paper. */
function scheduleBlocks(estimate: PaperSource['estimate']): readonly Block[] {
  const schedule = footingScheduleTable(estimate)
  const part = (isIn: (key: string) => boolean): PaperTable['columns'] =>
    schedule.columns.filter(({ key }) => key === 'number' || isIn(key))
  const loads = {
    ...schedule,
    id: 'footing-loads',
    title: 'Loads on the footings',
    columns: part((key) => LOADS.includes(key)),
  }
  return [
    {
      kind: 'table',
      table: { ...schedule, columns: part((key) => !LOADS.includes(key)) },
      empty: 'This deck has no footings.',
    },
    ...(schedule.rows.length === 0
      ? []
      : [{ kind: 'table', columns: 'loads', whole: true, table: loads, empty: '' } as const]),
  ]
}

/** Where a string along the wall and one square to it meet over a hole, by their names and its number. */
function crossings(
  rows: readonly { readonly name: string; readonly holes: readonly number[] }[],
  lines: typeof rows,
): string {
  const met = rows.flatMap((row) =>
    row.holes.flatMap((hole) =>
      lines
        .filter(({ holes }) => holes.includes(hole))
        .map((line) => ({ hole, words: `${row.name} × ${line.name} (hole ${hole})` })),
    ),
  )
  return met
    .sort((a, b) => a.hole - b.hole)
    .map(({ words }) => words)
    .join(', ')
}

function layoutSteps(estimate: PaperSource['estimate']): readonly Step[] {
  const { strings } = layoutStrings(estimate)
  const rows = strings.filter(({ runs, edge }) => runs === 'along the wall' && !edge)
  const lines = strings.filter(({ runs, edge }) => runs === 'square to the wall' && !edge)
  const proofs = layoutChecks(estimate).filter(({ kind }) => kind !== 'square')
  const frame = isBeforeOneWall(estimate) ? beforeWallSteps(estimate) : aroundHouseSteps(estimate)
  return [
    ...frame.steps,
    { text: `${frame.rows} ${offsets(rows)}, ${frame.rowsFrom}.` },
    { text: `Square to ${rows.length === 1 ? 'it' : 'them'} stretch ${offsets(lines)}, ${frame.linesFrom}.` },
    {
      text: `These crossings hang over a hole: ${crossings(rows, lines)}. Hold a plumb line to each, drive a pin, write its number on it. No other crossing has one.`,
      notes: [
        'Two distances to each hole stand in the table of hole centres, measured level: within 1/4 in. They find a hole under the wrong crossing.',
        ...rowProofs(estimate),
        'Its last column goes from each hole to the next, centre to centre: a second proof of every hole, which needs neither strings nor corners.',
      ],
    },
    ...frame.corners,
    ...padSteps(estimate),
    ...proofs.map(({ what, measures, tolerance }) => ({
      text: `Proof: ${what}: ${printLength(measures)}, within ${printLength(tolerance)}.`,
    })),
    {
      text: 'Mark each string on its boards with a nail or a saw cut, then take the strings down to dig. The same strings go up again for tubes and anchor bolts.',
    },
  ]
}

/** The pad at the foot of stairs, which no string crosses: by tape from the deck's edge. */
function padSteps(estimate: PaperSource['estimate']): readonly Step[] {
  return estimate.stairs.flatMap((stairs) =>
    stairs.pad === null
      ? []
      : [
          {
            text: `The pad at the foot of ${estimate.stairs.length === 1 ? 'the stairs' : `stairs ${stairs.number}`}, ${printLength(stairs.pad.width)} × ${printLength(stairs.pad.depth)}, is not under a string: ${padPlace(stairs, edgeWords(stairs.edge, estimate))}. Its corners stand in their own table: drive a pin at each once its two distances agree within 1/2 in.`,
          },
        ],
  )
}

/** In one pull along each string over three holes or more, from its first to its last. */
function rowProofs(estimate: PaperSource['estimate']): readonly string[] {
  const places = new Map(allHoles(estimate).map((hole) => [hole.number, hole]))
  const pulls = layoutStrings(estimate).strings.flatMap(({ name, runs, holes }) => {
    const at = (hole: Place) => (runs === 'along the wall' ? hole.x : hole.y)
    const over = holes.flatMap((number) => places.get(number) ?? []).sort((a, b) => at(a) - at(b))
    const [first, last] = [over[0], over.at(-1)]
    return over.length < 3 || first === undefined || last === undefined
      ? []
      : [
          `under ${name} from hole ${first.number} to hole ${last.number} ${printLength(diagonal(last.x - first.x, last.y - first.y))}`,
        ]
  })
  return pulls.length === 0 ? [] : [`One pull along each row, centre to centre: ${pulls.join('; ')}.`]
}

/** Which of the strings over holes end at the house: the others run past it to a batter board at either end. */
function endsWords(runs: LayoutString['runs'], estimate: PaperSource['estimate']): string {
  const own = layoutStrings(estimate).strings.filter((string) => string.runs === runs && !string.edge)
  const held = own.filter((string) => houseEnd(string, estimate) !== null).map(({ name }) => name)
  if (held.length === 0) return 'all run past the house, from batter board to batter board'
  const ends = `${held.join(', ')} ${held.length === 1 ? 'ends' : 'end'} at the house, at the place on its wall that the table of strings gives`
  return held.length === own.length
    ? ends
    : `${ends}; the others run past it, from batter board to batter board`
}

interface FrameSteps {
  /** up to the strings over the frame's edges */
  readonly steps: readonly Step[]
  /** how the strings along the wall are begun, and from where they and the others are measured */
  readonly rows: string
  readonly rowsFrom: string
  readonly linesFrom: string
  readonly corners: readonly Step[]
}

const BATTER =
  'Drive batter boards two feet outside the frame; on a side where a string or a hole lies farther out than the frame, two feet beyond the farthest of them. From each corner stretch a string square from WALL: 3, 4 and 5 ft make a right angle, 9, 12 and 15 ft a better one.'

/** What the line of the wall is: what stands behind the siding, or its face. Common practice, no source. */
const WALL_FACE =
  'The wall’s line is the face that the ledger will be bolted to: the sheathing, once the siding is cut away. Where the siding is still on, measure how thick it is and hold every distance from the siding’s face shorter by that much.'

function beforeWallSteps(estimate: PaperSource['estimate']): FrameSteps {
  const { job } = estimate
  const square = layoutChecks(estimate).find(({ kind }) => kind === 'square')
  const attached = job.site.attachment === 'ledger'
  const wall = attached ? 'the wall' : 'the rear string'
  return {
    steps: [
      {
        text: attached
          ? `Mark the deck's left corner on the wall, and from it, level, the right corner at ${printLength(job.size.width)}.`
          : `Stretch the rear string where the frame's rear face will be. Mark the deck's left corner on it, and from it the right corner at ${printLength(job.size.width)}.`,
        notes: attached ? [WALL_FACE] : [],
      },
      { text: BATTER.replace('WALL', wall) },
      {
        text: `Stretch the front string parallel to ${wall} at ${printLength(job.size.depth)}.`,
        notes:
          square === undefined
            ? []
            : [
                `Measure both diagonals, corner to corner: each must be ${printLength(square.measures)}, within ${printLength(square.tolerance)}. ${square.otherwise}`,
              ],
      },
    ],
    rows: `Along ${wall} stretch`,
    rowsFrom: `measured square from ${wall} at both ends`,
    linesFrom: 'each measured from the left corner on one tape',
    corners:
      layoutCorners(estimate).length > 0
        ? [
            {
              text: 'Mark the other corners of the frame by their two diagonals from the deck’s corners at the wall: they stand in the table of corners, within 1/4 in.',
            },
          ]
        : [],
  }
}

/** Around a house nothing is measured through it: the walls give the edges, the edges give the rest. */
function aroundHouseSteps(estimate: PaperSource['estimate']): FrameSteps {
  const { layout } = estimate
  const { strings } = layoutStrings(estimate)
  const walls = layout.edges.filter(({ kind }) => kind === 'wall')
  const squares = layoutChecks(estimate).filter(({ kind }) => kind === 'square')
  const edges = strings.filter(({ edge }) => edge)
  return {
    steps: [
      {
        text: `The corners of the house are where everything is measured from. Mark on the walls where the frame ends: ${walls
          .map((wall) => `${wallWords(wall, layout.edges)} is ${printLength(lengthOf(wall))}`)
          .join(
            ', ',
          )}. The corners’ numbers stand on the drawing; the table of strings names each wall by the two at its ends.`,
        notes: [WALL_FACE],
      },
      { text: BATTER.replace('WALL', 'the wall') },
      {
        text: `Stretch the frame’s outer strings: ${edges.map(({ name, offset, from }) => `${name}, ${printLength(offset)} from ${from}`).join('; ')}. Each runs parallel to what it is measured from: measure at both ends, on the wall’s line sighted on past its corner where the wall has ended.`,
        notes: squares.map(
          ({ what, measures, tolerance, otherwise }) =>
            `${what}: ${printLength(measures)}, within ${printLength(tolerance)}. ${otherwise}`,
        ),
      },
    ],
    rows: 'Parallel to the front string stretch',
    rowsFrom: `measured back from the front string along the left one; ${endsWords('along the wall', estimate)}`,
    linesFrom: `each measured from the left string on one tape along the front one; ${endsWords('square to the wall', estimate)}`,
    corners: [
      {
        text: 'Mark the other corners of the frame by their distances from the corners of the house: they stand in the table of corners, within 1/4 in.',
      },
    ],
  }
}

function lengthOf({ from, to }: { from: Place; to: Place }): Ticks {
  return diagonal(to.x - from.x, to.y - from.y)
}

interface Place {
  readonly x: number
  readonly y: number
}

function offsets(list: readonly LayoutString[]): string {
  return list.map(({ name, offset }) => `${name} at ${offsetText(offset)}`).join(', ')
}
