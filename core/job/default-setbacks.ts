import { dressedSizes } from '../data/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import type { FieldValue } from './field-value.ts'
import type { FieldPath } from './types.ts'

type Side = 'front' | 'rear'

/** Setback of a beam on a deck of usual depth: common practice, no source. */
const USUAL = inches(24)
/** A beam nearer the rim than this is set flush with it by choice, not by default: common practice, no source. */
const LEAST = inches(6)
const STEP = inches(1)
const THICKNESS = dressedSizes['2x10'].thickness

/**
 * Setbacks that the statement leaves open: 24 in, and on a shallower deck as far as joists may reach past their beam,
 * in whole inches: a quarter of the clear span beside it and no more than IRC 2021 Table R507.6 allows there, which is
 * 12 in to 6 ft of span, 18 in to 8 ft and 24 in beyond, less for shallow joists. So no default fails where a smaller one would not.
 */
export function defaultSetbacks(
  values: ReadonlyMap<FieldPath, FieldValue>,
  given: ReadonlySet<FieldPath>,
): ReadonlyMap<FieldPath, Ticks> {
  const free = values.get('site.attachment') === 'freestanding'
  const sides: readonly Side[] = free ? ['front', 'rear'] : ['front']
  const open = sides.filter((side) => !given.has(pathOf(side)))
  for (let setback = USUAL; setback > LEAST; setback = ticks(setback - STEP)) {
    if (reaches(setback)) return told(setback)
  }
  return told(LEAST)

  function told(setback: Ticks): ReadonlyMap<FieldPath, Ticks> {
    return new Map(open.map((side) => [pathOf(side), setback]))
  }

  function reaches(setback: Ticks): boolean {
    const taken = sides.map((side) => (open.includes(side) ? setback : number(pathOf(side))))
    const beams = sides.reduce((sum, side) => sum + number(`frame.beams.${side}.plies`), 0) * THICKNESS
    const ledger = free ? 0 : THICKNESS
    const clear = number('size.depth') - taken.reduce((a, b) => a + b, 0) - beams / 2 - ledger
    return setback * 4 <= clear && setback <= byTable(clear)
  }

  function byTable(clear: number): number {
    const step = clear < inches(72) ? inches(12) : clear < inches(96) ? inches(18) : USUAL
    const size = values.get('frame.joists.size')
    const soft = values.get('frame.species') === 'RW' || values.get('frame.species') === 'WC'
    if (size === '2x6') return Math.min(step, inches(12))
    return size === '2x8' && soft ? Math.min(step, inches(23)) : step
  }

  function number(path: FieldPath): number {
    const found = values.get(path)
    if (typeof found !== 'number') throw new TypeError(`${path} is not a number`)
    return found
  }
}

function pathOf(side: Side): FieldPath {
  return `frame.beams.${side}.setback`
}
