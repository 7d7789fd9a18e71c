import type { Fault, Job } from '../job/index.ts'
import { inches, printLength } from '../units/index.ts'
import type { ViewOpening } from './joist-places.ts'
import type { PlacedJoist } from './joists.ts'

interface JoistedZone {
  readonly openings: readonly ViewOpening[]
  readonly joists: readonly PlacedJoist[]
}

/** Openings whose trimmers or headers would lie where an end joist goes on from a step of the outline. */
export function openingClashes(zones: readonly JoistedZone[]): readonly Fault[] {
  return zones.flatMap(({ openings, joists }) =>
    openings.flatMap(({ number, x0, x1, y0, y1 }): readonly Fault[] => {
      const beside = joists.some(
        ({ place, from, to }) =>
          place.end && from < y1 && to > y0 && place.centre > x0 - CLASH && place.centre < x1 + CLASH,
      )
      if (!beside) return []
      return [
        {
          path: 'shape.openings',
          message: `opening ${number} lies across or beside an end joist that goes on from a step of the outline`,
          fix: `leave ${printLength(CLASH)} between it and the line of the step`,
        },
      ]
    }),
  )
}

/** End joists of one part that would stand in each other: a step of the outline lies too near where parts meet. */
export function crowdedSides(job: Job, zones: readonly Pick<JoistedZone, 'joists'>[]): readonly Fault[] {
  const inEachOther = zones.some(({ joists }) => {
    const ends = joists.filter(({ place }) => place.end)
    return ends.some((one, i) =>
      ends.slice(i + 1).some((other) => {
        const apart = Math.abs(one.place.centre - other.place.centre)
        return apart > 1 && apart < END_JOIST - 1 && one.from < other.to && other.from < one.to
      }),
    )
  })
  if (!inEachOther) return []
  return [
    {
      path: job.shape.zones.trim() === '' ? 'shape.outline' : 'shape.zones',
      message:
        'two end joists would stand in each other, for two lines of the shape lie less than 1-1/2 in apart',
      fix: 'lay the two on one line, or farther apart',
    },
  ]
}

/** Thickness of an end joist, which is a 2x. */
const END_JOIST = inches(1.5)

/** Two trimmers and the room beside them. */
const CLASH = inches(6)
