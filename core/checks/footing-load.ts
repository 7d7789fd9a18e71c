import type { Footing } from '../frame/index.ts'
import { CONCRETE_WEIGHT, footingDiameter, soilPressure } from '../rules/index.ts'
import { ceilTicks, inches, TICKS_PER_INCH, type Ticks, ticks, toInches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { length, over } from './finding.ts'
import type { BeamFacts } from './measures.ts'
import { postReaction } from './post-reaction.ts'
import type { Bearing } from './soil.ts'
import type { Finding } from './types.ts'
import { squareFeetText } from './words.ts'

/** A tube and the base that it stands on. */
export type Concrete = Pick<Footing, 'tube' | 'tubeLength' | 'base' | 'baseThickness'>

export interface LoadedFooting {
  readonly footing: Footing
  readonly facts: BeamFacts
  /** tributary area, sq ft */
  readonly area: number
  /** greatest reaction of beams and hip on its post, lb; null where the beam was not reckoned */
  readonly reaction: number | null
}

/** Every footing once with what stands on it, beam by beam. */
export function loadedFootings(context: CheckContext): readonly LoadedFooting[] {
  const seen = new Set<string>()
  return context.beams.flatMap((facts: BeamFacts) =>
    facts.posts.flatMap((post, i) => {
      const footing = context.frame.footings.find((one) => one.postId === post.id)
      if (footing === undefined || seen.has(footing.id)) return []
      seen.add(footing.id)
      return [
        {
          footing,
          facts,
          area: facts.areas[i] ?? 0,
          reaction: postReaction(context, post.id),
        },
      ]
    }),
  )
}

/** Widest part of a footing: its base, or its tube where it has none. */
export function widthOf(footing: Pick<Footing, 'base' | 'tube'>): Ticks {
  return ticks(Math.max(footing.base, footing.tube))
}

/** Up to the next inch, as a base is formed. */
export function toWholeInch(across: number): Ticks {
  return inches(Math.ceil(across / TICKS_PER_INCH))
}

/** The code's own reckoning, unrounded: tributary area times live or snow load and dead load. IRC 2021 Table R507.3.1. */
export function byTributaryArea(
  context: CheckContext,
  one: { readonly footing: Concrete; readonly area: number },
  bearing: Bearing,
): Finding {
  const psf = context.load + context.job.site.deadLoad
  return sizing(
    one.footing,
    bearing,
    psf * one.area,
    [`${squareFeetText(one.area)} × ${psf} psf`],
    'Tributary area',
  )
}

/** Under the beam's greatest reaction, the live load placed worst and the beam continuous or jointed, whichever is more. */
export function byReaction(one: LoadedFooting, bearing: Bearing): Finding | null {
  if (one.reaction === null) return null
  return sizing(
    one.footing,
    bearing,
    Math.max(0, one.reaction),
    ["The beam's greatest reaction, live load placed worst"],
    'Worst reaction',
  )
}

function sizing(
  footing: Concrete,
  bearing: Bearing,
  load: number,
  how: readonly string[],
  name: string,
): Finding {
  const width = widthOf(footing)
  const needed = ceilTicks(footingDiameter(load, bearing.psf) * TICKS_PER_INCH)
  const weight = concreteWeight(footing)
  return {
    method: 'calculated',
    document: 'IRC',
    edition: '2021',
    clause: 'R507.3.1',
    demand: length(needed),
    capacity: length(width),
    ratio: over(needed, width),
    confidence: 'computed only',
    lookup: name,
    steps: [
      ...how,
      bearing.says,
      `Load ${load.toFixed(0)} lb: ${soilPressure(load, toInches(width)).toFixed(0)} psf under the footing`,
      `With the concrete's own ${weight.toFixed(0)} lb, at ${CONCRETE_WEIGHT} lb per cu ft: ${soilPressure(load + weight, toInches(width)).toFixed(0)} psf (not counted, as in the code's table)`,
    ],
  }
}

/** lb; the tube and its base. */
export function concreteWeight(footing: Concrete): number {
  const cylinder = (across: number, high: number) => (Math.PI / 4) * across ** 2 * high
  const cubicInches =
    cylinder(toInches(footing.tube), toInches(footing.tubeLength)) +
    cylinder(toInches(footing.base), toInches(footing.baseThickness))
  return (cubicInches / 1728) * CONCRETE_WEIGHT
}
