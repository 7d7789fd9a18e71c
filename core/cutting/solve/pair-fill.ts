import type { Fill, PairNode } from './pair-node.ts'

/** Most steps of one search for fills. */
const MOST_STEPS = 400_000

export interface Found {
  readonly fills: Fill[]
  /** true: no fill is worth more than `above` beyond those found, of which there are none */
  readonly complete: boolean
}

/**
 * Fills of one board that keep all pairs apart and are worth more than `above`, by depth first search, widest piece
 * first, cut by what the narrower pieces can still add.
 * @param completion completion[k × size + room]: best worth of pieces k, k + 1, … within `room`, pairs ignored
 */
export function fillsAbove(
  node: PairNode,
  profits: ArrayLike<number>,
  completion: Float64Array,
  capacity: number,
  above: number,
  most: number,
): Found {
  const size = capacity + 1
  const n = node.pieces.length
  const widths = node.pieces.map((piece) => piece.width)
  const fills: Fill[] = []
  const pieces: number[] = []
  const counts: number[] = []
  const banned = new Int32Array(n)
  let steps = 0
  let full = false
  const ban = (piece: number, by: number): void => {
    for (const other of node.apart[piece] ?? []) banned[other] = (banned[other] ?? 0) + by
  }
  const walk = (from: number, room: number, earned: number): void => {
    if (full) return
    if (++steps > MOST_STEPS) {
      full = true
      return
    }
    let extended = false
    for (let piece = from; piece < n && !full; piece++) {
      if (earned + (completion[piece * size + room] as number) <= above) break
      const width = widths[piece] as number
      if (width > room || (banned[piece] as number) > 0 || (profits[piece] as number) <= 0) continue
      extended = true
      const self = node.apart[piece]?.has(piece) === true
      const fit = Math.min(Math.floor(room / width), self ? 1 : (node.pieces[piece]?.demand ?? 0))
      ban(piece, 1)
      for (let count = fit; count > 0 && !full; count--) {
        pieces.push(piece)
        counts.push(count)
        walk(piece + 1, room - count * width, earned + count * (profits[piece] as number))
        pieces.pop()
        counts.pop()
      }
      ban(piece, -1)
    }
    if (!extended || earned > above) {
      if (earned > above) {
        fills.push({ pieces: [...pieces], counts: [...counts] })
        if (fills.length >= most) full = true
      }
    }
  }
  walk(0, capacity, 0)
  return { fills, complete: !full && fills.length === 0 }
}
