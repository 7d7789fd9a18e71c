import {
  type Confidence,
  type DesignValues,
  DIMENSION_LUMBER,
  dressedSizes,
  INCISING,
  type LumberSize,
  REPETITIVE,
  SIZE_FACTOR,
  type Source,
  type Species,
  type TabledSpecies,
  TIMBERS,
  WET_SERVICE,
} from '../data/index.ts'

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
  /** factors used, as a person would write them */
  readonly steps: readonly string[]
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
 * Reference values of No.2 times CD, CM, CF, Ci and Cr. NDS 2018 Table 4.3.1.
 * Posts and timbers (5x5 and larger) have values and wet factors of their own and take no size factor here, being
 * under 12 in deep.
 */
export function adjustedValues(size: LumberSize, species: TabledSpecies, service: Service): AdjustedValues {
  return dressedSizes[size].nominalThickness >= 5
    ? timber(species, service)
    : dimension(size, species, service)
}

function dimension(size: LumberSize, species: TabledSpecies, service: Service): AdjustedValues {
  const entry = DIMENSION_LUMBER[species]
  const { nominalThickness, nominalDepth } = dressedSizes[size]
  const base = entry.byDepth[String(nominalDepth)] ?? entry.byDepth.any
  if (base === undefined) throw new Error(`no design value of ${species} for ${size}`)
  const cf =
    species === 'SP'
      ? { bending: 1, compression: 1, tension: 1 }
      : sizeFactors(nominalThickness, nominalDepth)
  const wet = service.wet ? WET_SERVICE.dimension : DRY
  // NDS Supplement Table 4A: strength too low to be lowered further by wet service
  const cmBending = base.bending * cf.bending <= WET_SERVICE.bendingFreeTo ? 1 : wet.bending
  const cmCompression =
    base.compression * cf.compression <= WET_SERVICE.compressionFreeTo ? 1 : wet.compression
  return apply(
    { ...entry.common, ...base },
    entry.source,
    { ...wet, bending: cmBending, compression: cmCompression },
    cf,
    service,
  )
}

function timber(species: TabledSpecies, service: Service): AdjustedValues {
  const entry = TIMBERS[timberSpecies(species)]
  const wet = service.wet ? WET_SERVICE.timber : DRY
  return apply(entry.values, entry.source, wet, { bending: 1, compression: 1, tension: 1 }, service)
}

/** Open-grain redwood and northern species have no tabled timbers, and no job can ask for them. */
function timberSpecies(species: TabledSpecies): Species {
  if (species === 'RWO' || species === 'NS') throw new Error(`no design values for timbers of ${species}`)
  return species
}

const DRY = { bending: 1, tension: 1, shear: 1, compressionAcross: 1, compression: 1, modulus: 1 } as const

type SizeFactors = { readonly bending: number; readonly compression: number; readonly tension: number }

function sizeFactors(thickness: number, depth: number): SizeFactors {
  const of = (row: { readonly [depth: string]: number }) => row[String(depth)] ?? 1
  return {
    bending: of(thickness >= 4 ? SIZE_FACTOR.bendingFour : SIZE_FACTOR.bendingThin),
    tension: of(SIZE_FACTOR.tension),
    compression: of(SIZE_FACTOR.compression),
  }
}

type WetFactors = {
  readonly [value in
    | 'bending'
    | 'tension'
    | 'shear'
    | 'compressionAcross'
    | 'compression'
    | 'modulus']: number
}

function apply(
  base: DesignValues,
  source: Source,
  wet: WetFactors,
  cf: SizeFactors,
  { duration, repetitive, incised }: Service,
): AdjustedValues {
  const ci = incised ? INCISING.strength : 1
  const ciModulus = incised ? INCISING.modulus : 1
  const bending = base.bending * duration * wet.bending * cf.bending * ci * repetitive
  const shear = base.shear * duration * wet.shear * ci
  const modulus = base.modulus * wet.modulus * ciModulus
  return {
    bending,
    tension: base.tension * duration * wet.tension * cf.tension * ci,
    shear,
    compressionAcross: base.compressionAcross * wet.compressionAcross,
    compression: base.compression * duration * wet.compression * cf.compression * ci,
    modulus,
    leastModulus: base.leastModulus * wet.modulus * ciModulus,
    gravity: base.gravity,
    source,
    steps: [
      `Fb' = ${base.bending} × CD ${duration} × CM ${wet.bending} × CF ${cf.bending} × Ci ${ci} × Cr ${repetitive} = ${Math.round(bending)} psi`,
      `Fv' = ${base.shear} × CD ${duration} × CM ${wet.shear} × Ci ${ci} = ${Math.round(shear)} psi`,
      `E' = ${base.modulus} × CM ${wet.modulus} × Ci ${ciModulus} = ${Math.round(modulus)} psi`,
    ],
  }
}

/** Confidence of a calculation that rests on a source: a calculation is never better than its values. */
export function calculationConfidence(source: Source): Confidence {
  return source.confidence === 'verified' ? 'computed only' : source.confidence
}
