import {
  fail,
  feet,
  lengthFromInches,
  ok,
  parseLength,
  printLength,
  type Result,
  type Ticks,
} from '../units/index.ts'
import type { Spot } from './field-value.ts'
import { excerpt, isObject, kindOf } from './json-shape.ts'
import type { Fault, FieldPath, JsonValue } from './types.ts'

const AXES = ['x', 'y', 'z'] as const

/** Reach of a spot from the datum on each axis: ground further off says nothing about the deck. */
const REACH: { readonly [axis in (typeof AXES)[number]]: Ticks } = { x: feet(200), y: feet(200), z: feet(40) }

const SAMPLE = '{ "x": 0, "y": "13 ft 6 in", "z": -6 }'

/** Most spots that are read: a survey of every foot of the largest deck has fewer. */
const MOST_SPOTS = 4000

/** Reads a list of ground spots; all faults, each with the path of its number (`site.ground.spots.0.x`). */
export function readSpots(path: FieldPath, stated: JsonValue): Result<readonly Spot[], readonly Fault[]> {
  if (!Array.isArray(stated)) {
    return fail([
      {
        path,
        message: `Spot heights are ${kindOf(stated)}`,
        fix: `give a list of spots such as [${SAMPLE}]`,
      },
    ])
  }
  if (stated.length > MOST_SPOTS) {
    return fail([{ path, message: `there are ${stated.length} spots`, fix: `give at most ${MOST_SPOTS}` }])
  }
  const faults: Fault[] = []
  const spots: Spot[] = []
  const places = new Map<string, number>()
  for (const [index, entry] of (stated as readonly JsonValue[]).entries()) {
    const spot = readSpot(`${path}.${index}`, entry)
    if (!spot.ok) {
      faults.push(...spot.error)
      continue
    }
    const place = `${spot.value.x},${spot.value.y}`
    const earlier = places.get(place)
    if (earlier !== undefined) {
      faults.push({
        path: `${path}.${index}`,
        message: `spot ${index + 1} stands where spot ${earlier + 1} does`,
        fix: 'give one height for each place',
      })
    }
    places.set(place, index)
    spots.push(spot.value)
  }
  return faults.length > 0 ? fail(faults) : ok(spots)
}

function readSpot(path: FieldPath, stated: JsonValue): Result<Spot, readonly Fault[]> {
  if (!isObject(stated))
    return fail([{ path, message: `this spot is ${kindOf(stated)}`, fix: `write it as ${SAMPLE}` }])
  const faults: Fault[] = []
  const read: { x?: Ticks; y?: Ticks; z?: Ticks } = {}
  for (const key of Object.keys(stated)) {
    if (!AXES.some((axis) => axis === key)) {
      faults.push({
        path: `${path}.${key}`,
        message: `a spot has no "${excerpt(key)}"`,
        fix: `write it as ${SAMPLE}`,
      })
    }
  }
  for (const axis of AXES) {
    const length = readAxis(axis, Object.hasOwn(stated, axis) ? stated[axis] : undefined)
    if (length.ok) read[axis] = length.value
    else faults.push({ path: `${path}.${axis}`, ...length.error })
  }
  const { x, y, z } = read
  if (faults.length > 0 || x === undefined || y === undefined || z === undefined) return fail(faults)
  return ok({ x, y, z })
}

function readAxis(
  axis: (typeof AXES)[number],
  stated: JsonValue | undefined,
): Result<Ticks, Pick<Fault, 'message' | 'fix'>> {
  if (stated === undefined) return fail({ message: `this spot has no ${axis}`, fix: `write it as ${SAMPLE}` })
  if (typeof stated !== 'number' && typeof stated !== 'string') {
    return fail({ message: `${axis} is ${kindOf(stated)}`, fix: 'give a length, or a number of inches' })
  }
  const length = typeof stated === 'number' ? lengthFromInches(stated) : parseLength(stated)
  const shown = typeof stated === 'number' ? `${stated}` : `"${excerpt(stated)}"`
  if (!length.ok)
    return fail({ message: `${axis} is given as ${shown}: ${length.error.message}`, fix: length.error.fix })
  const reach = REACH[axis]
  if (Math.abs(length.value) > reach) {
    return fail({
      message: `${axis} is ${printLength(length.value)}, too far from the deck`,
      fix: `give it within ${printLength(reach)} of the deck’s left corner at the wall`,
    })
  }
  return length
}
