import type { Design } from '../../estimate-types.ts'
import { layoutChecks, layoutCorners, layoutStrings } from '../../ground/index.ts'
import { printLength } from '../../units/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Strings to set up: which way each runs, where its ends stand, which holes lie under it. */
export function layoutStringsTable(design: Design): PaperTable {
  const { strings } = layoutStrings(design)
  const wall = design.job.site.attachment === 'ledger' ? 'the wall' : 'the rear rim’s outer face'
  return tableOf(
    'layout-strings',
    'Strings',
    [
      ['name', 'String', 'left'],
      ['runs', 'Runs', 'left'],
      ['offset', 'Offset', 'right'],
      ['from', 'Measured from', 'left'],
      ['holes', 'Over', 'left'],
    ],
    strings.map(({ name, runs, offset, edge, holes }) => ({
      name,
      runs,
      offset: printLength(offset),
      from: runs === 'along the wall' ? wall : 'the deck’s left end',
      holes: edge ? 'outside of the frame' : `hole${holes.length > 1 ? 's' : ''} ${holes.join(', ')}`,
    })),
  )
}

/** Where two strings cross over each centre, and the two diagonals that prove it, to 1/16 in. */
export function layoutHolesTable(design: Design): PaperTable {
  return tableOf(
    'layout-holes',
    'Hole centres',
    [
      ['hole', 'Hole', 'right'],
      ['strings', 'Strings', 'left'],
      ['along', 'Along wall', 'right'],
      ['away', 'From wall', 'right'],
      ['left', 'From left corner', 'right'],
      ['right', 'From right corner', 'right'],
    ],
    layoutStrings(design).crossings.map((hole) => ({
      hole: `${hole.number}`,
      strings: hole.strings,
      along: printLength(hole.along),
      away: printLength(hole.fromWall),
      left: printLength(hole.fromLeftCorner),
      right: printLength(hole.fromRightCorner),
    })),
  )
}

/** Corners of a frame that is no rectangle, each with the two diagonals that prove it, to 1/16 in. */
export function layoutCornersTable(design: Design): PaperTable {
  return tableOf(
    'layout-corners',
    'Corners of the frame',
    [
      ['corner', 'Corner', 'right'],
      ['along', 'Along wall', 'right'],
      ['away', 'From wall', 'right'],
      ['left', 'From left corner', 'right'],
      ['right', 'From right corner', 'right'],
    ],
    layoutCorners(design).map((corner) => ({
      corner: `${corner.number}`,
      along: printLength(corner.along),
      away: printLength(corner.fromWall),
      left: printLength(corner.fromLeftCorner),
      right: printLength(corner.fromRightCorner),
    })),
  )
}

/** The measures by which a person finds a mistake, and where to look for it. */
export function layoutChecksTable(design: Design): PaperTable {
  return tableOf(
    'layout-checks',
    'To find a mistake before digging',
    [
      ['what', 'Measure', 'left'],
      ['measures', 'Must be', 'right'],
      ['tolerance', 'Within', 'right'],
      ['otherwise', 'Where it is not', 'left'],
    ],
    layoutChecks(design).map(({ what, measures, tolerance, otherwise }) => ({
      what,
      measures: printLength(measures),
      tolerance: `± ${printLength(tolerance)}`,
      otherwise,
    })),
  )
}
