import {
  type Confidence,
  type DesignValues,
  DIMENSION_LUMBER,
  dressedSizes,
  INCISING,
  type LumberSize,
  REPETITIVE,
  type Source,
  type TabledSpecies,
  TIMBERS,
} from '../data/index.ts'
import { figure } from './figure.ts'
import { type SizeFactors, sizeFactors } from './size-factor.ts'
import { type WetFactors, wetDimension, wetTimber } from './wet-service.ts'

export interface Service {
  readonly wet: boolean
  /** incised for treatment: see `isIncised` */
  readonly incised: boolean
  /** CD */
  readonly duration: number
  /** Cr */
  readonly repetitive: number
}

/** Design values after every factor but CL, CP and Cb; psi. */
export interface AdjustedValues extends DesignValues {
  readonly source: Source
  /** the factors on each, as a person would write them */
  readonly steps: {
    readonly [value in 'bending' | 'shear' | 'modulus' | 'compression' | 'compressionAcross']: string
  }
}

/** Species that take treatment only when incised; the code's tables assume it for all of them. */
const REFRACTORY: readonly TabledSpecies[] = ['DFL', 'HF', 'SPF']

export function isIncised(species: TabledSpecies): boolean {
  return REFRACTORY.includes(species)
}

/** Cr: 1.15 for three members or more at most 24 in apart, or as many plies of one beam. NDS 2018 4.3.9. */
export function repetitiveFactor(members: number, spacing: number): number {
  return members >= REPETITIVE.leastMembers && spacing <= REPETITIVE.greatestSpacing ? REPETITIVE.factor : 1
}

/**
 * Reference values of No.2 times CD, CM, CF, Ci and Cr. NDS 2018 Table 4.3.1. Posts and timbers, 5x5 and larger, have
 * values and wet factors of their own and, under 12 in deep, no size factor; where two agencies grade them differently,
 * the lesser compression is taken.
 */
export function adjustedValues(size: LumberSize, species: TabledSpecies, service: Service): AdjustedValues {
  return dressedSizes[size].nominalThickness > 4
    ? timber(species, service)
    : dimension(size, species, service)
}

function dimension(size: LumberSize, species: TabledSpecies, service: Service): AdjustedValues {
  const entry = DIMENSION_LUMBER[species]
  const { nominalThickness, nominalDepth } = dressedSizes[size]
  const base = entry.byDepth[String(nominalDepth)] ?? entry.byDepth.any
  if (base === undefined) throw new Error(`no design value of ${species} for ${size}`)
  const cf = sizeFactors(species === 'SP', nominalThickness, nominalDepth)
  const wet = wetDimension(service.wet, base.bending * cf.bending, base.compression * cf.compression)
  return adjust({ ...entry.common, ...base }, entry.source, wet, cf, service)
}

function timber(species: TabledSpecies, service: Service): AdjustedValues {
  // open-grain redwood and northern species have no tabled timbers, and no job can ask for them
  if (species === 'RWO' || species === 'NS') throw new Error(`no design values for timbers of ${species}`)
  const { source, values, lesserCompression } = TIMBERS[species]
  const base = { ...values, compression: lesserCompression ?? values.compression }
  return adjust(base, source, wetTimber(service.wet), { bending: 1, compression: 1, tension: 1 }, service)
}

/** One design value and its factors, by the symbols of the NDS. */
interface Product {
  readonly value: number
  readonly step: string
}

function product(symbol: string, base: number, factors: readonly (readonly [string, number])[]): Product {
  const value = factors.reduce((so, [, factor]) => so * factor, base)
  const written = factors.map(([name, factor]) => ` × ${name} ${figure(factor, 3)}`).join('')
  return {
    value,
    step: `${symbol}' = ${figure(base)}${written} = ${figure(value)} psi`,
  }
}

/** NDS 2018 Table 4.3.1: which factor applies to which value. */
export function adjust(
  base: DesignValues,
  source: Source,
  cm: WetFactors,
  cf: SizeFactors,
  { duration, repetitive, incised }: Service,
): AdjustedValues {
  const ci = incised ? INCISING.strength : 1
  const ciModulus = incised ? INCISING.modulus : 1
  const cd = ['CD', duration] as const
  const bending = product('Fb', base.bending, [
    cd,
    ['CM', cm.bending],
    ['CF', cf.bending],
    ['Ci', ci],
    ['Cr', repetitive],
  ])
  const shear = product('Fv', base.shear, [cd, ['CM', cm.shear], ['Ci', ci]])
  const modulus = product('E', base.modulus, [
    ['CM', cm.modulus],
    ['Ci', ciModulus],
  ])
  const compression = product('Fc', base.compression, [
    cd,
    ['CM', cm.compression],
    ['CF', cf.compression],
    ['Ci', ci],
  ])
  const across = product('Fc⊥', base.compressionAcross, [['CM', cm.compressionAcross]])
  return {
    bending: bending.value,
    tension: base.tension * duration * cm.tension * cf.tension * ci,
    shear: shear.value,
    compressionAcross: across.value,
    compression: compression.value,
    modulus: modulus.value,
    leastModulus: base.leastModulus * cm.modulus * ciModulus,
    gravity: base.gravity,
    source,
    steps: {
      bending: bending.step,
      shear: shear.step,
      modulus: modulus.step,
      compression: compression.step,
      compressionAcross: across.step,
    },
  }
}

/** Confidence of a calculation: never better than that of the values it rests on. */
export function calculationConfidence(source: Source): Confidence {
  return source.confidence === 'verified' ? 'computed only' : source.confidence
}
