import { carriers } from '../../frame/index.ts'
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
import type { PaperSource } from '../source.ts'

/** The longest that any sheet for the crew asks to be measured in one pull: strings, proofs, marks, boards as laid. */
export function longestMeasure(estimate: PaperSource['estimate']): Ticks {
  const { frame, layout, plans } = estimate
  const { strings, crossings } = layoutStrings(estimate)
  const corners = layoutCorners(estimate)
  const sight = sightOf(layout)
  const ties = allHoles(estimate).flatMap((hole) => tiesTo(hole, sight))
  return ticks(
    Math.max(
      0,
      ...layoutChecks(estimate).map(({ measures }) => measures),
      ...strings.map(({ offset }) => offset),
      ...(isBeforeOneWall(estimate)
        ? [...crossings, ...corners].flatMap(({ fromLeftCorner, fromRightCorner }) => [
            fromLeftCorner,
            fromRightCorner,
          ])
        : [...ties, ...corners.flatMap((corner) => corner.ties)].map(({ measures }) => measures)),
      ...carriers(estimate, plans).map(({ length }) => length),
      ...frame.members.map(({ length }) => length),
    ),
  )
}
