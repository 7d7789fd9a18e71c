/** Which ends lie on a board, as far as it matters which of them find no like one: numbered states. */
export interface EndsLeft {
  readonly states: number
  /** step(state, kind): with one more piece of that kind; '' is a piece whose ends do not matter */
  readonly step: (state: number, kind: string) => number
  /** ticks that the board loses for ends without a like one */
  readonly lost: (state: number) => number
}

/**
 * States of boards by the kinds of pieces on them, none, oddly or evenly many of each; those that nothing later can tell
 * apart are one (Moore 1956). Kinds are "class class", a class empty where that end shares no cut.
 */
export function endsLeft(
  kinds: readonly string[],
  saves: ReadonlyMap<string, number>,
  wider: number,
): EndsLeft {
  const all = 3 ** kinds.length
  const digit = (state: number, k: number): number => Math.floor(state / 3 ** k) % 3
  const after = kinds.map((_, k) =>
    Int32Array.from({ length: all }, (__, state) => state + (digit(state, k) === 2 ? -1 : 1) * 3 ** k),
  )
  const lost = Array.from({ length: all }, (_, state) =>
    lostBy(
      kinds.flatMap((kind, k) => (digit(state, k) === 0 ? [] : [{ kind, odd: digit(state, k) === 1 }])),
      saves,
      wider,
    ),
  )
  let block = numbered(lost.map(String))
  for (;;) {
    const finer = numbered(
      block.map((own, state) => [own, ...after.map((next) => block[next[state] ?? 0])].join(',')),
    )
    if (Math.max(...finer) === Math.max(...block)) break
    block = finer
  }
  const first = new Map<number, number>()
  block.forEach((own, state) => {
    if (!first.has(own)) first.set(own, state)
  })
  return {
    states: first.size,
    step: (own, kind) => {
      const k = kinds.indexOf(kind)
      return k < 0 ? own : (block[after[k]?.[first.get(own) ?? 0] ?? 0] ?? 0)
    },
    lost: (own) => lost[first.get(own) ?? 0] ?? 0,
  }
}

/** The same names as numbers from 0, in the order in which they occur. */
function numbered(names: readonly string[]): number[] {
  const known = new Map<string, number>()
  return names.map((name) => {
    const number = known.get(name) ?? known.size
    known.set(name, number)
    return number
  })
}

/**
 * Ends of a class pair off; the last of an odd number stays alone and loses half of its saving. Pieces that hang together
 * with no end alone, nor one that shares no cut, form a ring, which has to be opened where it costs least. What is then
 * left are stretches; between two of them the saw takes more where one of the ends slants.
 */
function lostBy(
  pieces: readonly { readonly kind: string; readonly odd: boolean }[],
  saves: ReadonlyMap<string, number>,
  wider: number,
): number {
  let sum = 0
  const stretches = { both: 0, one: 0, none: pieces.some(({ kind }) => kind === '') ? 1 : 0 }
  const waiting = pieces.filter(({ kind }) => kind !== '')
  for (let first = waiting.shift(); first !== undefined; first = waiting.shift()) {
    const group = [first]
    const classes = new Set(first.kind.split(' '))
    classes.delete('')
    for (let found = true; found; ) {
      const at = waiting.findIndex(({ kind }) => kind.split(' ').some((name) => classes.has(name)))
      found = at >= 0
      for (const piece of at < 0 ? [] : waiting.splice(at, 1)) {
        group.push(piece)
        for (const name of piece.kind.split(' ')) if (name !== '') classes.add(name)
      }
    }
    const open = group.some(({ kind }) => kind.split(' ').includes(''))
    const alone = [...classes].filter((name) => {
      const ends = group
        .flatMap(({ kind, odd }) => (odd ? kind.split(' ') : []))
        .filter((end) => end === name)
      return ends.length % 2 === 1
    })
    sum += alone.reduce((part, name) => part + (saves.get(name) ?? 0) / 2, 0)
    if (open) {
      stretches.one += alone.length
      stretches.none += alone.length === 0 ? 1 : 0
    } else {
      stretches.both += alone.length === 0 ? 1 : alone.length / 2
      if (alone.length === 0) sum += Math.min(...[...classes].map((name) => saves.get(name) ?? 0))
    }
  }
  return sum + wider * slantingCuts(stretches.both, stretches.one, stretches.none, null)
}

/** Fewest cuts between stretches beside a slanting end, over every order of them; how the last one laid ends. */
function slantingCuts(both: number, one: number, none: number, slants: boolean | null): number {
  if (both + one + none === 0) return 0
  const then = (left: boolean, right: boolean, rest: readonly [number, number, number]): number =>
    (slants !== null && (slants || left) ? 1 : 0) + slantingCuts(...rest, right)
  return Math.min(
    both > 0 ? then(true, true, [both - 1, one, none]) : Number.POSITIVE_INFINITY,
    one > 0 ? then(true, false, [both, one - 1, none]) : Number.POSITIVE_INFINITY,
    one > 0 ? then(false, true, [both, one - 1, none]) : Number.POSITIVE_INFINITY,
    none > 0 ? then(false, false, [both, one, none - 1]) : Number.POSITIVE_INFINITY,
  )
}
