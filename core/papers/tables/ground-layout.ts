import type { Design } from '../../estimate-types.ts'
import { diagonal } from '../../frame/index.ts'
import {
  allHoles,
  type Hole,
  isBeforeOneWall,
  type LayoutString,
  layoutChecks,
  layoutCorners,
  layoutStrings,
  overallEdges,
  sightOf,
  type Tie,
  tiesTo,
  wallCorners,
} from '../../ground/index.ts'
import { printLength, type Ticks } from '../../units/index.ts'
import { houseEnd } from '../build/house-end.ts'
import { padSpots } from '../drawings/stair-places.ts'
import { offsetText } from '../offset-text.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Strings to set up: which way each runs, where its ends stand, which holes lie under it. */
export function layoutStringsTable(design: Design): PaperTable {
  const { strings } = layoutStrings(design)
  const around = !isBeforeOneWall(design)
  return tableOf(
    'layout-strings',
    'Strings',
    [
      ['name', 'String', 'left'],
      ['runs', 'Runs', 'left'],
      ['offset', 'Offset', 'right'],
      ['from', 'Measured from', 'left'],
      ...(around ? ([['house', 'Its end on the wall', 'left']] as const) : []),
      ['holes', 'Over', 'left'],
    ],
    strings.map((string) => {
      const { name, runs, offset, from, edge, holes } = string
      return {
        name,
        runs: runsWords(runs, design),
        offset: offsetText(offset),
        from,
        house: (edge ? null : houseEnd(string, design)) ?? '',
        holes: edge ? 'outside of the frame' : `hole${holes.length > 1 ? 's' : ''} ${holes.join(', ')}`,
      }
    }),
  )
}

/** Around a house there are walls in both directions: a string runs as one of them does, named by its corners. */
function runsWords(runs: LayoutString['runs'], design: Design): string {
  if (isBeforeOneWall(design)) return runs
  const { edges } = design.layout
  const wall = edges.find(
    ({ kind, from, to }) =>
      kind === 'wall' && (runs === 'along the wall' ? from.y === to.y : from.x === to.x),
  )
  return wall === undefined ? 'square to the others' : `as wall ${wallCorners(wall, edges).join('-')}`
}

/** Where two strings cross over each centre, and the two diagonals that prove it, to 1/16 in. */
export function layoutHolesTable(design: Design): PaperTable {
  if (!isBeforeOneWall(design)) return tiedHolesTable(design)
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
      ['next', 'To the next hole', 'left'],
    ],
    layoutStrings(design).crossings.map((hole) => ({
      hole: `${hole.number}`,
      next: nextWords(hole.number, design),
      strings: hole.strings,
      along: offsetText(hole.along),
      away: offsetText(hole.fromWall),
      left: printLength(hole.fromLeftCorner),
      right: printLength(hole.fromRightCorner),
    })),
  )
}

/** Around a house: the same, each proved from the corners of the house that are in sight of it. */
function tiedHolesTable(design: Design): PaperTable {
  const sight = sightOf(design.layout)
  const places = new Map(allHoles(design).map((hole) => [hole.number, hole]))
  return tableOf(
    'layout-holes',
    'Hole centres',
    [
      ['hole', 'Hole', 'right'],
      ['strings', 'Strings', 'left'],
      ['one', 'From the house', 'left'],
      ['other', 'And', 'left'],
      ['next', 'To the next hole', 'left'],
    ],
    layoutStrings(design).crossings.map(({ number, strings }) => {
      const place = places.get(number)
      const [one, other] = place === undefined ? [] : tiesTo(place, sight).map(tieWords)
      return {
        hole: `${number}`,
        strings,
        one: one ?? '',
        other: other ?? '',
        next: nextWords(number, design),
      }
    }),
  )
}

/**
 * A proof that uses neither strings nor the house: from hole to hole in their order, from the last one to the first; where
 * the house stands between, to the nearest that is in sight. Nothing where there is one hole.
 */
function nextWords(number: number, design: Design): string {
  const holes = allHoles(design)
  const at = holes.findIndex((hole) => hole.number === number)
  const here = holes[at]
  if (here === undefined) return ''
  const { isClear } = sightOf(design.layout)
  const others = [...holes.slice(at + 1), ...holes.slice(0, at)].filter((hole) => isClear(here, hole))
  const next = holes[(at + 1) % holes.length]
  const found =
    others.find((hole) => hole === next) ?? others.toSorted((a, b) => apart(here, a) - apart(here, b))[0]
  return found === undefined ? '' : `hole ${found.number}: ${printLength(apart(here, found))}`
}

/** Centre to centre, level, nearest 1/16 in. */
function apart(one: Hole, other: Hole): Ticks {
  return diagonal(other.x - one.x, other.y - one.y)
}

function tieWords({ corner, measures }: Tie): string {
  return `corner ${corner.number}: ${printLength(measures)}`
}

/** Corners of a frame that is no rectangle, each with the two diagonals that prove it, to 1/16 in. */
export function layoutCornersTable(design: Design): PaperTable {
  if (!isBeforeOneWall(design)) return tiedCornersTable(design)
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

/** Corners of the pads at the feet of stairs, which no string crosses, each with two distances that prove it. */
export function layoutPadsTable(design: Design): PaperTable {
  const { job, layout, stairs } = design
  const around = !isBeforeOneWall(design)
  const { left, front } = overallEdges(layout)
  const sight = sightOf(layout)
  const corners = padSpots(stairs).flatMap((pad) => pad.corners)
  return tableOf(
    'layout-pads',
    stairs.length === 1 ? 'Corners of the stairs’ pad' : 'Corners of the pads',
    [
      ['corner', 'Corner', 'left'],
      ['along', around ? 'From left edge' : 'Along wall', 'right'],
      ['away', around ? 'From front edge' : 'From wall', 'right'],
      ['left', around ? 'From the house' : 'From left corner', around ? 'left' : 'right'],
      ['right', around ? 'And' : 'From right corner', around ? 'left' : 'right'],
    ],
    corners.map(({ name, spot }) => {
      const [one, other] = around ? tiesTo(spot, sight).map(tieWords) : []
      const proof = (from: number) => printLength(diagonal(spot.x - from, spot.y))
      return {
        corner: name,
        along: offsetText(around ? spot.x - left : spot.x),
        away: offsetText(around ? front - spot.y : spot.y),
        left: around ? (one ?? '') : proof(0),
        right: around ? (other ?? '') : proof(job.size.width),
      }
    }),
  )
}

function tiedCornersTable(design: Design): PaperTable {
  return tableOf(
    'layout-corners',
    'Corners of the frame',
    [
      ['corner', 'Corner', 'right'],
      ['one', 'From the house', 'left'],
      ['other', 'And', 'left'],
    ],
    layoutCorners(design).map(({ number, ties }) => ({
      corner: `${number}`,
      one: ties[0] === undefined ? 'at the house' : tieWords(ties[0]),
      other: ties[1] === undefined ? '' : tieWords(ties[1]),
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
