import type { LumberSize, TabledSpecies } from '../../core/data/index.ts'
import {
  adjustedValues,
  areaOf,
  bendingSpan,
  cantileverByTip,
  deflectionSpan,
  isIncised,
  momentOfInertia,
  rectangleOf,
  shearSpan,
  slendernessFor,
} from '../../core/rules/index.ts'

/**
 * The deck tables recomputed from design values and equations, with the assumptions that their footnotes name and two
 * that had to be inferred. Never an input of the program: the tables are the expectation.
 */

/**
 * The members of each group: the weakest governs. Open-grain redwood is not among them; northern species stand for
 * ponderosa and red pine.
 */
const MEMBERS: { readonly [group: string]: readonly TabledSpecies[] } = {
  SP: ['SP'],
  DF_HF_SPF: ['DFL', 'HF', 'SPF'],
  RW_WC_PP_RP: ['RW', 'WC', 'NS'],
}

/** Least modulus of each group. */
const SOFTEST: { readonly [group: string]: TabledSpecies } = { SP: 'SP', DF_HF_SPF: 'HF', RW_WC_PP_RP: 'WC' }

const DEAD = 10
const LONGEST_JOIST = 216
const TALLEST_POST = 168

/** Joist span, in: simple span, D + L in bending, L/360 under live load only, CD 1.15 on the pages for snow. */
export function joistSpan(size: LumberSize, spacing: number, group: string, load: number): number {
  const spans = (MEMBERS[group] ?? []).map((species) => {
    const service = {
      wet: true,
      incised: isIncised(species),
      duration: load > 40 ? 1.15 : 1,
      repetitive: 1.15,
    }
    const values = adjustedValues(size, species, service)
    const section = rectangleOf(size)
    return Math.min(
      LONGEST_JOIST,
      bendingSpan(((load + DEAD) * spacing) / 144, section, values.bending),
      deflectionSpan((load * spacing) / 144, section, values.modulus, 360),
    )
  })
  return Math.round(Math.min(...spans))
}

/** Length of a cantilever at which 220 lb at its tip bends it by a 180th, in, unrounded. */
export function cantileverByTipLoad(size: LumberSize, group: string, span: number): number {
  const species = SOFTEST[group] ?? 'SP'
  const service = { wet: true, incised: isIncised(species), duration: 1, repetitive: 1 }
  const stiffness = adjustedValues(size, species, service).modulus * momentOfInertia(rectangleOf(size))
  return cantileverByTip(220, span, stiffness, 180)
}

export function cantilever(size: LumberSize, group: string, span: number): number {
  return Math.round(Math.min(span / 4, cantileverByTipLoad(size, group, span)))
}

/** Inferred: 1.10 on the bending of two plies stands nowhere in the NDS. */
const SHARED: { readonly [plies: number]: number } = { 1: 1, 2: 1.1, 3: 1.15 }

/**
 * Span of a Southern Pine beam at 40 psf, in: joists that reach a quarter of their span beyond it load it with
 * 50 psf × 0.78125 of that span; simple span, shear at the support, half of the dead load in the deflection (inferred).
 * @param joists ft
 */
export function beamSpan(plies: number, size: LumberSize, joists: number): number {
  const width = 0.78125 * joists
  const service = { wet: true, incised: false, duration: 1, repetitive: SHARED[plies] ?? 1 }
  const values = adjustedValues(size, 'SP', service)
  const section = rectangleOf(size, plies)
  const total = (50 * width) / 12
  return Math.round(
    Math.min(
      bendingSpan(total, section, values.bending),
      shearSpan(total, section, values.shear),
      deflectionSpan((45 * width) / 12, section, values.modulus, 360),
    ),
  )
}

/**
 * Height of a Southern Pine post at 40 psf, in: NDS 3.7 with Ke 1.0 under 50 psf × area, rounded down and an inch off.
 * @param area sq ft
 */
export function postHeight(size: LumberSize, area: number): number {
  const values = adjustedValues(size, 'SP', { wet: true, incised: false, duration: 1, repetitive: 1 })
  const section = rectangleOf(size)
  const stress = (50 * area) / areaOf(section)
  const slenderness = slendernessFor(stress / values.compression, values.leastModulus, values.compression)
  const height = Math.min(slenderness, 50) * Math.min(section.breadth, section.depth)
  return Math.min(TALLEST_POST, Math.floor(height) - 1)
}
