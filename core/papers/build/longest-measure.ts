import { carriers, diagonal } from '../../frame/index.ts'
import {
  allHoles,
  isBeforeOneWall,
  layoutChecks,
  layoutCorners,
  layoutStrings,
  sightOf,
  tiesTo,
} from '../../ground/index.ts'
import { type Ticks, ticks } from '../../units/index.ts'
import { padSpots } from '../drawings/stair-places.ts'
import type { PaperSource } from '../source.ts'

/** The longest that any sheet for the crew asks to be measured in one pull: strings, proofs, marks, boards as laid. */
export function longestMeasure(estimate: PaperSource['estimate']): Ticks {
  const { frame, job, layout, plans, stairs } = estimate
  const { strings, crossings } = layoutStrings(estimate)
  const corners = layoutCorners(estimate)
  const sight = sightOf(layout)
  const pads = padSpots(stairs).flatMap((pad) => pad.corners.map(({ spot }) => spot))
  const ties = allHoles(estimate).flatMap((hole) => tiesTo(hole, sight))
  return ticks(
    Math.max(
      0,
      ...layoutChecks(estimate).map(({ measures }) => measures),
      ...strings.map(({ offset }) => offset),
      ...(isBeforeOneWall(estimate)
        ? [
            ...[...crossings, ...corners].flatMap(({ fromLeftCorner, fromRightCorner }) => [
              fromLeftCorner,
              fromRightCorner,
            ]),
            ...pads.flatMap(({ x, y }) => [diagonal(x, y), diagonal(x - job.size.width, y)]),
          ]
        : [
            ...ties,
            ...corners.flatMap((corner) => corner.ties),
            ...pads.flatMap((spot) => tiesTo(spot, sight)),
          ].map(({ measures }) => measures)),
      ...carriers(estimate, plans).map(({ length }) => length),
      ...frame.members.map(({ length }) => length),
    ),
  )
}
