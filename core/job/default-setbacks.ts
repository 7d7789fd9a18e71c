import { dressedSizes } from '../data/index.ts'
import { inches, type Ticks, ticks } from '../units/index.ts'
import type { FieldValue } from './field-value.ts'
import { rectangleList } from './rectangle-list.ts'
import type { FieldPath } from './types.ts'

type Side = 'front' | 'rear'

/** Setback of a beam on a deck of usual depth: common practice, no source. */
const USUAL = inches(24)
/** A beam nearer the rim than this is set flush with it by choice, not by default: common practice, no source. */
const LEAST = inches(6)
const STEP = inches(1)
const THICKNESS = dressedSizes['2x10'].thickness

/** What says how far joists may reach past a beam. */
interface JoistWood {
  readonly size: unknown
  readonly species: unknown
}

/**
 * The greatest setback, in whole inches, up to a given one: joists reach past their beam by a quarter of the clear span
 * beside it and no more than IRC 2021 Table R507.6 allows there, which is 12 in to 6 ft of span, 18 in to 8 ft and 24 in
 * beyond, less for shallow joists; 6 in where not even that is allowed.
 * @param clearAt least clear span beside a beam that is set back so far, ticks
 * @param rounding by how much joists may come out longer past it, ticks
 */
export function greatestSetback(
  clearAt: (setback: Ticks) => number,
  { size, species }: JoistWood,
  most: Ticks = USUAL,
  rounding = 0,
): Ticks {
  for (let setback = most; setback > LEAST; setback = ticks(setback - STEP)) {
    const clear = clearAt(setback)
    const reach = setback + rounding
    if (reach * 4 <= clear && reach <= byTable(clear)) return setback
  }
  return LEAST

  function byTable(clear: number): number {
    const step = clear < inches(72) ? inches(12) : clear < inches(96) ? inches(18) : USUAL
    const soft = species === 'RW' || species === 'WC'
    if (size === '2x6') return Math.min(step, inches(12))
    return size === '2x8' && soft ? Math.min(step, inches(23)) : step
  }
}

/**
 * Setbacks that the statement leaves open: 24 in, and on a shallower deck as far as joists may reach past their beam. On
 * other outlines than a rectangle this is the most: the layout takes less behind an edge whose joists are shorter. So no
 * default fails where a smaller one would not.
 */
export function defaultSetbacks(
  values: ReadonlyMap<FieldPath, FieldValue>,
  given: ReadonlySet<FieldPath>,
): ReadonlyMap<FieldPath, Ticks> {
  const free = values.get('site.attachment') === 'freestanding'
  const sides: readonly Side[] = free ? ['front', 'rear'] : ['front']
  const open = sides.filter((side) => !given.has(pathOf(side)))
  const wood = { size: values.get('frame.joists.size'), species: values.get('frame.species') }
  const openings = isPlain(values) ? rectangleList(String(values.get('shape.openings'))) : []
  const setback = greatestSetback(clearAt, wood)
  return new Map(open.map((side) => [pathOf(side), setback]))

  function clearAt(setback: Ticks): number {
    const taken = sides.map((side) => (open.includes(side) ? setback : number(pathOf(side))))
    const beams = sides.reduce((sum, side) => sum + number(`frame.beams.${side}.plies`), 0) * THICKNESS
    const ledger = free ? 0 : THICKNESS
    const depth = number('size.depth')
    const whole = depth - taken.reduce((a, b) => a + b, 0) - beams / 2 - ledger
    // joists that start at the header beside an opening
    const short = openings.flatMap(({ y, depth: across }) =>
      open.map((side) => {
        const beyond = side === 'front' ? depth - y - across : y
        return beyond - 2 * THICKNESS - setback - (number(`frame.beams.${side}.plies`) * THICKNESS) / 2
      }),
    )
    return Math.min(whole, ...short)
  }

  function number(path: FieldPath): number {
    const found = values.get(path)
    if (typeof found !== 'number') throw new TypeError(`${path} is not a number`)
    return found
  }
}

/** Whether no outline, levels or parts are stated: then the layout has the setbacks as they are. */
function isPlain(values: ReadonlyMap<FieldPath, FieldValue>): boolean {
  return ['outline', 'zones', 'middleBeams', 'levels'].every((what) => values.get(`shape.${what}`) === '')
}

function pathOf(side: Side): FieldPath {
  return `frame.beams.${side}.setback`
}
