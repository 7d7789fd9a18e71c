import { classKey, type EndClass } from './slants.ts'

/** What matters of a piece's two ends, sorted; '': neither end may share its cut. */
export type KindKey = string

/**
 * What a board loses for ends that share no cut, by which kinds of pieces lie on it. Ends of one class pair off, each
 * pair at one cut, but not all of a closed ring, for a board has two ends: a ring loses the least of its savings, a class
 * with an odd number of ends half of its own. A slanting end that shares no cut takes a wider kerf beside its neighbour.
 * So only this matters: which kinds there are, and whether oddly or evenly many; boards that differ in nothing that
 * matters later are one state.
 */
export interface Mix {
  /** the first is that of pieces neither of whose ends may share its cut */
  readonly kinds: readonly KindKey[]
  /** the classes of their ends */
  readonly classes: readonly string[]
  readonly states: number
  /** held[state]: ticks; state 0 is the empty board */
  readonly held: readonly number[]
  /** one more piece: after[state × kinds + kind] */
  readonly after: Int32Array
  /** two lots of pieces together: joined[one × states + other] */
  readonly joined: Int32Array
}

/** More kinds of boards than this are not told apart before those that make no difference are taken together, */
const MOST_BOARDS = 2_200
/** nor more states after: they make the search slow. The ends of further classes then count as sharing no cut, or any. */
const MOST_STATES = 32

export type Slanting = NonNullable<EndClass>

/** A kind of piece by its ends; null: that end shares no cut. */
export type Kind = readonly [EndClass, EndClass]

export function kindKey([left, right]: Kind): KindKey {
  if (left === null && right === null) return ''
  return [left, right]
    .map((end) => (end === null ? '' : classKey(end)))
    .sort()
    .join(' ')
}

/**
 * The mix of these kinds, or null where there are too many states.
 * @param savedBy what two ends of a class save by sharing a cut; even
 * @param wider how much wider the kerf beside a slanting end that shares no cut is
 */
export function mixOf(kinds: readonly Kind[], savedBy: (end: Slanting) => number, wider: number): Mix | null {
  const own: readonly Kind[] = [[null, null], ...kinds.filter((kind) => kindKey(kind) !== '')]
  const boards = 3 ** own.length
  if (boards > MOST_BOARDS) return null
  const countsOf = (board: number): number[] => own.map((_, k) => Math.floor(board / 3 ** k) % 3)
  const boardOf = (counts: readonly number[]): number =>
    counts.reduce((sum, count, k) => sum + count * 3 ** k, 0)
  const together = (one: readonly number[], other: readonly number[]): number =>
    boardOf(one.map((count, k) => added(count, other[k] ?? 0)))
  const held = Array.from({ length: boards }, (_, board) => {
    const [plain = 0, ...slanting] = countsOf(board)
    return heldBy(groupsOf(own.slice(1), slanting), plain > 0, savedBy, wider)
  })
  const next = Array.from({ length: boards }, (_, board) =>
    own.map((_kind, k) =>
      together(
        countsOf(board),
        own.map((_other, other) => (other === k ? 1 : 0)),
      ),
    ),
  )
  const state = statesOf(held, next)
  const first = [...new Map(state.map((own_, board) => [own_, board] as const).reverse())].sort(
    ([a], [b]) => a - b,
  )
  const states = first.length
  if (states > MOST_STATES) return null
  const after = Int32Array.from(
    first.flatMap(([, board]) => (next[board] ?? []).map((reached) => state[reached] ?? 0)),
  )
  const joined = Int32Array.from(
    first.flatMap(([, one]) =>
      first.map(([, other]) => state[together(countsOf(one), countsOf(other))] ?? 0),
    ),
  )
  return {
    kinds: own.map(kindKey),
    classes: [...new Set(own.flat().flatMap((end) => (end === null ? [] : classKey(end))))].sort(),
    states,
    held: first.map(([, board]) => held[board] ?? 0),
    after,
    joined,
  }
}

/** Boards that hold alike, and go on holding alike whatever is added, as one state each (Moore 1956); the empty one is 0. */
function statesOf(held: readonly number[], next: readonly (readonly number[])[]): number[] {
  let state = numbered(held.map(String))
  for (;;) {
    const finer = numbered(
      state.map((own, board) => [own, ...(next[board] ?? []).map((reached) => state[reached])].join(',')),
    )
    if (Math.max(...finer) === Math.max(...state)) return state
    state = finer
  }
}

function numbered(names: readonly string[]): number[] {
  const known = new Map<string, number>()
  return names.map((name) => {
    const number = known.get(name) ?? known.size
    known.set(name, number)
    return number
  })
}

/** 0 none, 1 an odd number, 2 an even one. */
function added(one: number, other: number): number {
  if (one === 0 || other === 0) return one + other
  return (one + other) % 2 === 0 ? 2 : 1
}

interface Group {
  readonly ends: ReadonlyMap<string, { readonly end: Slanting; readonly odd: boolean }>
  /** it has ends of other kinds too, so that it is no ring */
  readonly open: boolean
}

/** Classes that hang together by the pieces there are. */
function groupsOf(kinds: readonly Kind[], counts: readonly number[]): readonly Group[] {
  let groups: Group[] = []
  kinds.forEach((kind, k) => {
    const count = counts[k] ?? 0
    if (count === 0) return
    const ends = kind.filter((end) => end !== null)
    const meets = (group: Group) => ends.some((end) => group.ends.has(classKey(end)))
    const together = new Map(groups.filter(meets).flatMap((group) => [...group.ends]))
    for (const end of ends) {
      const odd = (together.get(classKey(end))?.odd ?? false) !== (count === 1)
      together.set(classKey(end), { end, odd })
    }
    const open = ends.length < 2 || groups.some((group) => meets(group) && group.open)
    groups = [...groups.filter((group) => !meets(group)), { ends: together, open }]
  })
  return groups
}

/** @param plain pieces neither of whose ends may share its cut are there too */
function heldBy(
  groups: readonly Group[],
  plain: boolean,
  savedBy: (end: Slanting) => number,
  wider: number,
): number {
  let sum = 0
  /** stretches of pieces that share cuts, by how many of their two outer ends slant: both, one, none */
  let [both, one, none] = [0, 0, plain ? 1 : 0]
  for (const { ends, open } of groups) {
    const all = [...ends.values()]
    const odd = all.filter((each) => each.odd)
    for (const { end } of odd) sum += savedBy(end) / 2
    if (open) one += odd.length
    else if (odd.length > 0) both += odd.length / 2
    else {
      both += 1
      sum += Math.min(...all.map(({ end }) => savedBy(end)))
    }
    if (open && odd.length === 0) none += 1
  }
  return sum + wider * cutsBesideSlants(both, one, none)
}

/**
 * Fewest cuts beside a slanting end that shares none, where such ends lie at the board's own ends as far as they can:
 * of stretches with two slanting outer ends, with one, with none.
 */
function cutsBesideSlants(both: number, one: number, none: number): number {
  if (one >= 2) return both + Math.ceil(one / 2) - 1
  if (one === 1 || none > 0) return both
  return Math.max(0, both - 1)
}
