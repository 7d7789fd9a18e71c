import type { Hole } from './holes.ts'

export interface HoleColumn {
  readonly label: string
  readonly read: (hole: Hole) => string
}

/** Where each centre lies: its strings, offsets and the diagonals that prove it. */
export const PLACE_COLUMNS: readonly HoleColumn[] = [
  { label: 'Strings', read: (hole) => hole.strings },
  { label: 'Along wall', read: (hole) => hole.across },
  { label: 'From wall', read: (hole) => hole.away },
  { label: 'Diagonal, left', read: (hole) => hole.fromLeft },
  { label: 'Diagonal, right', read: (hole) => hole.fromRight },
]

const SIZES: readonly HoleColumn[] = [
  { label: 'Depth', read: (hole) => hole.depth },
  { label: 'Hole across', read: (hole) => hole.hole },
  { label: 'Tube', read: (hole) => `${hole.tube} × ${hole.tubeLength}` },
  { label: 'Base', read: (hole) => hole.base },
  { label: 'Concrete', read: (hole) => hole.concrete },
  { label: 'Load', read: (hole) => hole.load },
  { label: 'Soil pressure', read: (hole) => hole.pressure },
  { label: 'Post', read: (hole) => hole.post },
]

/** Sizes and loads of each hole; what is the same for every hole is said once instead. */
export function sizeColumns(holes: readonly Hole[]): {
  readonly columns: readonly HoleColumn[]
  readonly same: readonly string[]
} {
  const differs = ({ read }: HoleColumn) => new Set(holes.map(read)).size > 1
  const first = holes[0]
  return {
    columns: SIZES.filter(differs),
    same: first
      ? SIZES.filter((column) => !differs(column)).map(
          ({ label, read }) => `${label.toLowerCase()} ${read(first)}`,
        )
      : [],
  }
}
