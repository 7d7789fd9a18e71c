import type { Fill, PairNode } from './pair-node.ts'

/**
 * A plan with at most `target` boards near a fractional solution: the fills used most first as long as their pieces
 * are left, then each piece left on the fullest board with room. Pairs kept apart bind no real plan. null: none found.
 */
export function packNode(
  node: PairNode,
  capacity: number,
  target: number,
  fills: readonly Fill[],
  x: ArrayLike<number>,
): number[][] | null {
  const left = [...node.demands]
  const boards: { room: number; parts: number[] }[] = []
  const used = fills
    .map((fill, c) => ({ fill, c, value: x[c] ?? 0 }))
    .filter((entry) => entry.value > 1e-6)
    .sort((a, b) => b.value - a.value || a.c - b.c)
  for (const { fill, value } of used) {
    for (let copy = 0; copy < Math.ceil(value); copy++) {
      if (fill.pieces.some((piece, k) => (left[piece] ?? 0) < (fill.counts[k] ?? 0))) break
      const board = { room: capacity, parts: [] as number[] }
      fill.pieces.forEach((piece, k) => {
        const count = fill.counts[k] ?? 0
        left[piece] = (left[piece] ?? 0) - count
        board.room -= count * (node.widths[piece] ?? 0)
        for (let one = 0; one < count; one++) board.parts.push(...(node.parts[piece] ?? []))
      })
      boards.push(board)
    }
  }
  if (boards.length > target) return null
  for (let piece = 0; piece < left.length; piece++) {
    const width = node.widths[piece] ?? 0
    for (; (left[piece] ?? 0) > 0; left[piece] = (left[piece] ?? 0) - 1) {
      let tightest: { room: number; parts: number[] } | null = null
      for (const board of boards) {
        if (board.room >= width && (tightest === null || board.room < tightest.room)) tightest = board
      }
      if (tightest === null) {
        if (boards.length === target) return null
        tightest = { room: capacity, parts: [] }
        boards.push(tightest)
      }
      tightest.room -= width
      tightest.parts.push(...(node.parts[piece] ?? []))
    }
  }
  return boards.map((board) => board.parts)
}
