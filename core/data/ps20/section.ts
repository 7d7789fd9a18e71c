import { TICKS_PER_FOOT, TICKS_PER_INCH, type Ticks } from '../../units/index.ts'
import type { LumberSize, Section, Species } from '../types.ts'
import { woodDensity } from './density.ts'
import { dressedSizes } from './dressed-sizes.ts'
import { moistureContent, specificGravity } from './weights.ts'

/** Dressed section of a nominal size: PS 20, dry. */
export function sectionOf(size: LumberSize): Section {
  const { thickness, depth } = dressedSizes[size]
  return { size, thickness, depth }
}

/** Board feet of a length in ticks, in 1/1000 board foot, by its size; see `nominalBoardFeet`. */
export function boardFeetThousandths(size: LumberSize, length: number): number {
  const { nominalThickness, nominalDepth } = dressedSizes[size]
  return nominalBoardFeet(nominalThickness, nominalDepth, length)
}

/**
 * Board feet of a length, in 1/1000 board foot, a half up: nominal thickness × nominal width (in) × length (ft) ÷ 12.
 * @param length ticks
 */
export function nominalBoardFeet(thickness: number, width: number, length: number): number {
  // 4 × keeps the 1-1/4 in of a 5/4 board whole
  const numerator = 4 * thickness * width * length * 1000
  const denominator = 4 * 12 * TICKS_PER_FOOT
  return Math.floor((2 * numerator + denominator) / (2 * denominator))
}

/** Pounds per foot of a size, by the density formula of the NDS Supplement (see `densitySource`). */
export function poundsPerFoot(
  size: LumberSize,
  species: Species,
  state: keyof typeof moistureContent,
): number {
  const density = woodDensity(specificGravity[species], moistureContent[state])
  const section = sectionOf(size)
  return (density * squareInches(section.thickness, section.depth)) / 144
}

function squareInches(thickness: Ticks, depth: Ticks): number {
  return (thickness * depth) / (TICKS_PER_INCH * TICKS_PER_INCH)
}
