import type { Fill, PairNode } from './pair-node.ts'

/**
 * A plan with at most `target` boards near a fractional solution: the fills used most first as long as their pieces
 * are left, then each piece left on the fullest board with room. Pairs kept apart bind no real plan. null: none found.
 */
export function packNode(
  node: PairNode,
  capacity: number,
  target: number,
  fills: readonly (Fill | null)[],
  x: ArrayLike<number>,
): number[][] | null {
  const left = node.pieces.map((piece) => piece.demand)
  const boards: { room: number; parts: number[] }[] = []
  const used = fills
    .flatMap((fill, c) => (fill === null || (x[c] ?? 0) <= 1e-6 ? [] : [{ fill, c, value: x[c] ?? 0 }]))
    .sort((a, b) => b.value - a.value || a.c - b.c)
  for (const { fill, value } of used) {
    for (let copy = 0; copy < Math.ceil(value - 1e-6); copy++) {
      const lacking = fill.pieces.some((piece, k) => (left[piece] ?? 0) < (fill.counts[k] ?? 0))
      if (lacking && (copy + 1 > value + 1e-6 || fill.pieces.every((piece) => (left[piece] ?? 0) === 0)))
        break
      const board = { room: capacity, parts: [] as number[] }
      fill.pieces.forEach((piece, k) => {
        const count = Math.min(fill.counts[k] ?? 0, left[piece] ?? 0)
        left[piece] = (left[piece] ?? 0) - count
        board.room -= count * (node.pieces[piece]?.width ?? 0)
        for (let one = 0; one < count; one++) board.parts.push(...(node.pieces[piece]?.parts ?? []))
      })
      boards.push(board)
    }
  }
  if (boards.length > target) return null
  for (let piece = 0; piece < left.length; piece++) {
    const width = node.pieces[piece]?.width ?? 0
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
      tightest.parts.push(...(node.pieces[piece]?.parts ?? []))
    }
  }
  return boards.map((board) => board.parts)
}
