import type { PaperName } from '../sheet-types.ts'

/** Sizes upright, in points: 8-1/2 × 11 in, 11 × 17 in, 210 × 297 mm, 297 × 420 mm (ASME Y14.1, ISO 216). */
const SIZES: { readonly [paper in PaperName]: readonly [number, number] } = {
  letter: [612, 792],
  tabloid: [792, 1224],
  a4: [595.276, 841.89],
  a3: [841.89, 1190.551],
}

export const PAPERS: readonly PaperName[] = ['letter', 'tabloid', 'a4', 'a3']

export const PAPER_NAMES: { readonly [paper in PaperName]: string } = {
  letter: 'Letter',
  tabloid: 'Tabloid',
  a4: 'A4',
  a3: 'A3',
}

export function paperSize(
  paper: PaperName,
  across: boolean,
): { readonly width: number; readonly height: number } {
  const [short, long] = SIZES[paper]
  return across ? { width: long, height: short } : { width: short, height: long }
}
