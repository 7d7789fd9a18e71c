import { layoutChecks, layoutCorners, layoutStrings, soilCautions } from '../../ground/index.ts'
import { printInches, printLength } from '../../units/index.ts'
import { footingLayout } from '../drawings/footing-layout.ts'
import type { Sheet, Step } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { footingScheduleTable } from '../tables/ground-footings.ts'
import {
  layoutChecksTable,
  layoutCornersTable,
  layoutHolesTable,
  layoutStringsTable,
} from '../tables/ground-layout.ts'

/** Strings, crossings, diagonals and holes: what a person lays out on the ground, and what proves it. */
export function footingsSheet({ estimate }: PaperSource): Sheet {
  const { job } = estimate
  const corners = layoutCornersTable(estimate)
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
      { kind: 'table', table: layoutHolesTable(estimate), empty: 'This deck has no holes.' },
      { kind: 'table', table: layoutStringsTable(estimate), empty: 'No strings are needed.' },
      ...(corners.rows.length === 0 ? [] : [{ kind: 'table', table: corners, empty: '' } as const]),
      { kind: 'heading', text: 'How to lay it out' },
      { kind: 'steps', items: layoutSteps(estimate) },
      { kind: 'table', table: layoutChecksTable(estimate), empty: 'There is nothing to check.' },
      { kind: 'table', table: footingScheduleTable(estimate), empty: 'This deck has no footings.' },
      {
        kind: 'text',
        tone: 'soft',
        text: `Heights count from the ground at the wall's left end; plus is up. Frost depth ${printInches(job.site.frostDepth)}, ${job.site.frostSource === '' ? 'source not stated' : `as told by ${job.site.frostSource}`}; soil: ${job.site.soil}, ${job.site.soilBearing} psf as stated. Depth is to the bottom of everything, base included. Bags hold 0.6 cu ft and are counted without waste; the order has it.`,
      },
      { kind: 'heading', text: 'Cautions' },
      ...soilCautions(job).map((text) => ({ kind: 'caution', text }) as const),
    ],
  }
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
  const { job } = estimate
  const { strings } = layoutStrings(estimate)
  const checks = layoutChecks(estimate)
  const square = checks.find(({ kind }) => kind === 'square')
  const proofs = checks.filter(({ kind }) => kind !== 'square')
  const hasCorners = layoutCorners(estimate).length > 0
  const attached = job.site.attachment === 'ledger'
  const wall = attached ? 'the wall' : 'the rear string'
  const rows = strings.filter(({ runs, edge }) => runs === 'along the wall' && !edge)
  const lines = strings.filter(({ runs, edge }) => runs === 'square to the wall' && !edge)
  const offsets = (list: typeof strings): string =>
    list.map(({ name, offset }) => `${name} at ${printLength(offset)}`).join(', ')
  return [
    {
      text: attached
        ? `Mark the deck's left corner on the wall, and from it, level, the right corner at ${printLength(job.size.width)}.`
        : `Stretch the rear string where the frame's rear face will be. Mark the deck's left corner on it, and from it the right corner at ${printLength(job.size.width)}.`,
    },
    {
      text: `Drive batter boards two feet outside the frame. From each corner stretch a string square from ${wall}: 3, 4 and 5 ft make a right angle, 9, 12 and 15 ft a better one.`,
    },
    {
      text: `Stretch the front string parallel to ${wall} at ${printLength(job.size.depth)}.`,
      notes:
        square === undefined
          ? []
          : [
              `Measure both diagonals, corner to corner: each must be ${printLength(square.measures)}, within ${printLength(square.tolerance)}. ${square.otherwise}`,
            ],
    },
    { text: `Along ${wall} stretch ${offsets(rows)}, measured square from ${wall} at both ends.` },
    { text: `Square to it stretch ${offsets(lines)}, each measured from the left corner on one tape.` },
    {
      text: `These crossings hang over a hole: ${crossings(rows, lines)}. Hold a plumb line to each, drive a pin, write its number on it. No other crossing has one.`,
      notes: [
        'Both diagonals of each hole stand in the table of hole centres, measured level: within 1/4 in.',
      ],
    },
    ...(hasCorners
      ? [
          {
            text: 'Mark the other corners of the frame by their two diagonals from the deck’s corners at the wall: they stand in the table of corners, within 1/4 in.',
          },
        ]
      : []),
    ...proofs.map(({ what, measures, tolerance }) => ({
      text: `Proof: ${what}: ${printLength(measures)}, within ${printLength(tolerance)}.`,
    })),
    {
      text: 'Mark each string on its boards with a nail or a saw cut, then take the strings down to dig. The same strings go up again for tubes and anchor bolts.',
    },
  ]
}
