import type { Source, Species } from '../types.ts'

/** Reference design values, psi; gravity is the specific gravity G. Symbols of the NDS beside them. */
export interface DesignValues {
  /** Fb */
  readonly bending: number
  /** Ft */
  readonly tension: number
  /** Fv */
  readonly shear: number
  /** Fc⊥ */
  readonly compressionAcross: number
  /** Fc */
  readonly compression: number
  /** E */
  readonly modulus: number
  /** Emin */
  readonly leastModulus: number
  readonly gravity: number
}

type ByDepth = Pick<DesignValues, 'bending' | 'tension' | 'compression'>

/** A species offered, open-grain redwood, or northern species, which stands for ponderosa and red pine in the code's groups. */
export type TabledSpecies = Species | 'RWO' | 'NS'

export type DimensionLumber = {
  readonly [species in TabledSpecies]: {
    readonly source: Source
    readonly common: Omit<DesignValues, keyof ByDepth>
    /** by nominal depth in inches, or one for any depth, which then takes the size factor */
    readonly byDepth: { readonly [depth: string]: ByDepth }
  }
}

export type Timbers = {
  readonly [species in Species]: {
    readonly source: Source
    readonly values: DesignValues
    /** Fc of the grading agency that gives less, from memory: reckoned with, as nobody knows the stamp beforehand */
    readonly lesserCompression?: number
  }
}
