import type { LumberSize } from '../data/index.ts'
import type { Ticks } from '../units/index.ts'
import { beamKey, footingKey, setbacksKey } from './catalogue.ts'
import type { BeamChoice, JoistChoice } from './types.ts'

/** More than the beams of any catalogue, so that two of them make one number. */
export const BEAMS = 8192

/** A small number for each part of a choice, so that what is known of parts is found without writing them out. */
export class PartNumbers {
  readonly setbacks = numbering(setbacksKey)
  readonly joist = numbering(({ size, spacing }: JoistChoice) => `${size} ${spacing}`)
  readonly footing = numbering(footingKey)
  readonly #beam = numbering((beam: BeamChoice) => beamKey(beam))
  readonly #sizes = new Map<LumberSize, number>()
  readonly #spacings = new Map<Ticks, number>()

  /** 0 for none */
  beam(beam: BeamChoice | null): number {
    return beam === null ? 0 : this.#beam(beam) + 1
  }

  size(size: LumberSize): number {
    return numberIn(this.#sizes, size)
  }

  spacing(spacing: Ticks): number {
    return numberIn(this.#spacings, spacing)
  }
}

/** Numbers by content; of a thing that comes again itself the content is not written out again. */
function numbering<Part extends object>(keyOf: (part: Part) => string): (part: Part) => number {
  const known = new WeakMap<Part, number>()
  const byKey = new Map<string, number>()
  return (part) => {
    const found = known.get(part)
    if (found !== undefined) return found
    const number = numberIn(byKey, keyOf(part))
    known.set(part, number)
    return number
  }
}

function numberIn<Key>(numbers: Map<Key, number>, key: Key): number {
  const found = numbers.get(key) ?? numbers.size
  numbers.set(key, found)
  return found
}
