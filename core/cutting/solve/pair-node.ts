/** A way to fill one board, by the node's own pieces. */
export interface Fill {
  /** ascending piece index */
  readonly pieces: readonly number[]
  readonly counts: readonly number[]
}

/**
 * A node of the pair tree: pieces of its own, some of them two of the parent's put together, and pairs that share no
 * board. Widths descend.
 */
export interface PairNode {
  readonly widths: readonly number[]
  readonly demands: readonly number[]
  /** the items of the problem that a piece is made of */
  readonly parts: readonly (readonly number[])[]
  /** per piece, those that may not share a board with it; itself: not two of it */
  readonly apart: readonly ReadonlySet<number>[]
  readonly fills: readonly Fill[]
}

export function breaksPair(node: PairNode, fill: Fill): boolean {
  for (let a = 0; a < fill.pieces.length; a++) {
    const conflicts = node.apart[fill.pieces[a] ?? -1]
    if (conflicts === undefined || conflicts.size === 0) continue
    if ((fill.counts[a] ?? 0) > 1 && conflicts.has(fill.pieces[a] ?? -1)) return true
    for (let b = a + 1; b < fill.pieces.length; b++) if (conflicts.has(fill.pieces[b] ?? -1)) return true
  }
  return false
}

function holds(fill: Fill, i: number, j: number): boolean {
  const a = fill.pieces.indexOf(i)
  if (a < 0) return false
  return i === j ? (fill.counts[a] ?? 0) > 1 : fill.pieces.includes(j)
}

/** No board holds both pieces (or two of one). */
export function keptApart(node: PairNode, i: number, j: number): PairNode {
  const apart = node.apart.map((set, k) =>
    k === i ? new Set([...set, j]) : k === j ? new Set([...set, i]) : set,
  )
  return { ...node, apart, fills: node.fills.filter((fill) => !holds(fill, i, j)) }
}

/** Some board holds both pieces: one of each becomes a single piece of their summed width. */
export function putTogether(node: PairNode, i: number, j: number, capacity: number): PairNode | null {
  const width = (node.widths[i] ?? 0) + (node.widths[j] ?? 0)
  if (width > capacity || node.apart[i]?.has(j) === true) return null
  const old = node.widths.map((w, k) => ({
    width: w,
    demand: (node.demands[k] ?? 0) - (k === i ? 1 : 0) - (k === j ? 1 : 0),
    parts: node.parts[k] ?? [],
    from: k,
  }))
  const joined = { width, demand: 1, parts: [...(node.parts[i] ?? []), ...(node.parts[j] ?? [])], from: -1 }
  const list = [...old.filter((piece) => piece.demand > 0), joined].sort(
    (a, b) => b.width - a.width || a.from - b.from,
  )
  const place = new Map(list.map((piece, k) => [piece.from, k]))
  const moved = (set: Iterable<number>): number[] => [...set].flatMap((k) => place.get(k) ?? [])
  const joinedConflicts = new Set([...(node.apart[i] ?? []), ...(node.apart[j] ?? [])])
  const apart = list.map(
    (piece) => new Set(piece.from < 0 ? moved(joinedConflicts) : moved(node.apart[piece.from] ?? [])),
  )
  const at = place.get(-1) ?? 0
  for (const k of apart[at] ?? []) apart[k]?.add(at)
  const demands = list.map((piece) => piece.demand)
  const fills = node.fills.flatMap((fill) => {
    const counts = new Map<number, number>()
    const both = holds(fill, i, j)
    fill.pieces.forEach((piece, k) => {
      const taken = both ? (piece === i ? 1 : 0) + (piece === j ? 1 : 0) : 0
      const to = place.get(piece)
      const count = (fill.counts[k] ?? 0) - taken
      if (to !== undefined && count > 0) counts.set(to, Math.min(count, demands[to] ?? 0))
    })
    if (both) counts.set(at, 1)
    const pieces = [...counts.keys()].sort((a, b) => a - b)
    return pieces.length === 0 ? [] : [{ pieces, counts: pieces.map((piece) => counts.get(piece) ?? 0) }]
  })
  const next: PairNode = {
    widths: list.map((piece) => piece.width),
    demands,
    parts: list.map((piece) => piece.parts),
    apart,
    fills,
  }
  return { ...next, fills: fills.filter((fill) => !breaksPair(next, fill)) }
}
