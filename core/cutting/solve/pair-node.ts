/** A way to fill one board, by the node's own pieces. */
export interface Fill {
  /** ascending piece index */
  readonly pieces: readonly number[]
  readonly counts: readonly number[]
}

/** One board more or less in a row of the pair master: [row, copies]. */
export type RowEntry = readonly [row: number, copies: number]

/** How two pieces of a node became one of its child; the numbers are identities that hold through the tree. */
export interface Merge {
  readonly first: number
  readonly second: number
  readonly joined: number
  /** the row that asks for one joined piece; −1: the rows of its parts say it, as no loose copy of one is left */
  readonly row: number
  /** where there is no row: the one of the two of which no loose copy is left */
  readonly usedUp: number
}

/** One piece of a node. */
export interface PairPiece {
  /** the same through the tree: the problem's items first, then joined pieces */
  readonly id: number
  readonly width: number
  readonly demand: number
  /** the items of the problem that it is made of */
  readonly parts: readonly number[]
  /** what one copy counts for in the master's rows, ascending rows */
  readonly rows: readonly RowEntry[]
}

/**
 * A node of the pair tree: pieces of its own, some of them two of the parent's put together, and pairs that share no
 * board. Widths descend.
 */
export interface PairNode {
  readonly pieces: readonly PairPiece[]
  /** per piece, the places of those that may not share a board with it; itself: not two of it */
  readonly apart: readonly ReadonlySet<number>[]
  /** from the root down */
  readonly merges: readonly Merge[]
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

/** No board holds both pieces (or two of one). */
export function keptApart(node: PairNode, i: number, j: number): PairNode {
  const apart = node.apart.map((set, k) =>
    k === i ? new Set([...set, j]) : k === j ? new Set([...set, i]) : set,
  )
  return { ...node, apart }
}

/** True where some copy of both pieces stays loose once one of each is joined, so that the joined piece needs a row of its own. */
export function needsRow(node: PairNode, i: number, j: number): boolean {
  const taken = i === j ? 2 : 1
  return (node.pieces[i]?.demand ?? 0) > taken && (node.pieces[j]?.demand ?? 0) > taken
}

/**
 * Some board holds both pieces: one of each becomes a single piece of their summed width.
 * @param id of the joined piece
 * @param row of its own, or −1
 */
export function putTogether(node: PairNode, i: number, j: number, id: number, row: number): PairNode | null {
  const first = node.pieces[i]
  const second = node.pieces[j]
  if (first === undefined || second === undefined || node.apart[i]?.has(j) === true) return null
  const joined: PairPiece = {
    id,
    width: first.width + second.width,
    demand: 1,
    parts: [...first.parts, ...second.parts],
    rows: summed(first.rows, row < 0 ? second.rows : [...second.rows, [row, 1]]),
  }
  const old = node.pieces.map((piece, k) => ({
    piece: { ...piece, demand: piece.demand - (k === i ? 1 : 0) - (k === j ? 1 : 0) },
    from: k,
  }))
  const list = [...old.filter((entry) => entry.piece.demand > 0), { piece: joined, from: -1 }].sort(
    (a, b) => b.piece.width - a.piece.width || a.from - b.from,
  )
  const place = new Map(list.map((entry, k) => [entry.from, k]))
  const moved = (set: Iterable<number>): number[] => [...set].flatMap((k) => place.get(k) ?? [])
  const conflicts = new Set([...(node.apart[i] ?? []), ...(node.apart[j] ?? [])])
  const apart = list.map(
    (entry) => new Set(entry.from < 0 ? moved(conflicts) : moved(node.apart[entry.from] ?? [])),
  )
  const at = place.get(-1) ?? 0
  for (const k of apart[at] ?? []) apart[k]?.add(at)
  return {
    pieces: list.map((entry) => entry.piece),
    apart,
    merges: [
      ...node.merges,
      {
        first: first.id,
        second: second.id,
        joined: id,
        row,
        usedUp: i === j || first.demand === 1 ? first.id : second.id,
      },
    ],
  }
}

function summed(a: readonly RowEntry[], b: readonly RowEntry[]): RowEntry[] {
  const sum = new Map<number, number>()
  for (const [row, copies] of [...a, ...b]) sum.set(row, (sum.get(row) ?? 0) + copies)
  return [...sum].sort(([x], [y]) => x - y)
}
