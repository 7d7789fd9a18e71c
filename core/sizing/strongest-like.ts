import { sectionOf } from '../data/index.ts'
import { ticks } from '../units/index.ts'
import type { BeamChoice, Catalogue, Choice } from './types.ts'

/**
 * The strongest beams of a catalogue on as many posts as a choice has, under joists of its size as near together as
 * any, on the widest posts and bases.
 */
export function strongestLike(
  { setbacks, joist, front, rear }: Choice,
  { joists, front: fronts, rear: rears, postSizes, footings }: Catalogue,
): Choice {
  const spacings = joists.filter(({ size }) => size === joist.size).map(({ spacing }) => spacing)
  return {
    setbacks,
    joist: { size: joist.size, spacing: ticks(Math.min(joist.spacing, ...spacings)) },
    front: strongest(front, fronts),
    rear: rear && strongest(rear, rears),
    postSize: widestOf(postSizes),
    footing: footings.reduce((a, b) => (b.base > a.base ? b : a)),
  }
}

/** The deepest joists as near together as any, between the beams of fewest or of most plies, on the widest posts. */
export function farthestReach(choice: Choice, catalogue: Catalogue, mostPlies: boolean): Choice {
  const { joists, front, rear, postSizes } = catalogue
  const deeper = (a: Choice['joist'], b: Choice['joist']) =>
    sectionOf(b.size).depth - sectionOf(a.size).depth || a.spacing - b.spacing
  const joist = [choice.joist, ...joists].toSorted(deeper)[0] ?? choice.joist
  const withPlies = (beam: BeamChoice, all: readonly (BeamChoice | null)[]): BeamChoice => {
    const plies = all.flatMap((one) => one?.plies ?? [])
    return { ...beam, plies: mostPlies ? Math.max(beam.plies, ...plies) : Math.min(beam.plies, ...plies) }
  }
  return {
    ...choice,
    joist,
    front: withPlies(choice.front, front),
    rear: choice.rear && withPlies(choice.rear, rear),
    postSize: widestOf(postSizes),
  }
}

/** The first of the posts with the greatest section: a 4x6 takes three plies, a 4x4 as thick does not. */
export function widestOf(postSizes: Catalogue['postSizes']): Choice['postSize'] {
  return postSizes.reduce((a, b) => (areaOf(b) > areaOf(a) ? b : a))
}

function areaOf(size: Choice['postSize']): number {
  const { thickness, depth } = sectionOf(size)
  return thickness * depth
}

function strongest(beam: BeamChoice, all: readonly (BeamChoice | null)[]): BeamChoice {
  return all.reduce<BeamChoice>(
    (a, b) => (b !== null && b.posts === beam.posts && strengthOf(b) > strengthOf(a) ? b : a),
    beam,
  )
}

function strengthOf({ size, plies }: BeamChoice): number {
  return sectionOf(size).depth ** 2 * plies
}
