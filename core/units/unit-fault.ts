import { toNearestTick } from './grid.ts'
import { printLength } from './print-length.ts'
import { type Ratio, ratio, timesWhole } from './ratio.ts'
import type { TextFault } from './text-fault.ts'

/** Inches in each unit that is not used here, as numerator and denominator. */
const OTHER_UNITS: ReadonlyMap<string, readonly [bigint, bigint]> = new Map([
  ...named([5n, 127n], 'mm', 'millimeter', 'millimeters', 'millimetre', 'millimetres'),
  ...named([50n, 127n], 'cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres'),
  ...named([5000n, 127n], 'm', 'meter', 'meters', 'metre', 'metres'),
  ...named([36n, 1n], 'yd', 'yds', 'yard', 'yards'),
])

function named(inches: readonly [bigint, bigint], ...names: readonly string[]) {
  return names.map((name): [string, readonly [bigint, bigint]] => [name, inches])
}

/** Says why a word after a number is no unit of length here, and what the value would be in feet and inches. */
export function unitFault(word: string, value: Ratio, at: number): TextFault {
  const perUnit = OTHER_UNITS.get(word.toLowerCase())
  if (perUnit === undefined) {
    return {
      message: `"${word}" is not a unit of length here`,
      fix: 'use ft, in, \' or ", as in 12 ft 6 in',
      at,
    }
  }
  const inches = timesWhole(value, perUnit[0])
  const near = toNearestTick(ratio(inches.numerator, inches.denominator * perUnit[1]))
  return {
    message: `lengths are in feet and inches, not in "${word}"`,
    fix:
      near === null
        ? 'use ft, in, \' or "'
        : `write feet and inches; to the nearest 1/32 in that is ${printLength(near)}`,
    at,
  }
}
