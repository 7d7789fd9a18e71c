import type { Ticks } from '../../units/index.ts'
import type { RunArc, RunModel } from '../model/problem.ts'

export interface MemberPath {
  readonly arcs: readonly RunArc[]
}

/** Splits a flow into one path for each member; nodes are visited so that like paths stay together. */
export function pathsOf(run: RunModel, flow: readonly number[]): MemberPath[] {
  const left = [...flow]
  const paths: MemberPath[] = []
  for (let member = 0; member < run.members; member++) {
    const arcs: RunArc[] = []
    for (let node = 0; node !== 1; ) {
      const a = run.arcs.findIndex((arc, index) => arc.from === node && (left[index] ?? 0) > 0)
      const arc = run.arcs[a]
      if (arc === undefined) throw new RangeError('the flow does not reach the end of its run')
      left[a] = (left[a] ?? 0) - 1
      arcs.push(arc)
      node = arc.to
    }
    paths.push({ arcs })
  }
  return paths
}

export function jointsOf(path: MemberPath): Ticks[] {
  return path.arcs.flatMap(arc => (arc.point < 0 ? [] : [arc.end]))
}

/** Most steps of the search for an order. */
const MOST_STEPS = 20_000

/**
 * An order of the paths in which neighbours share no joint point; null where none was found.
 * Equal paths are one kind; the kind with most left goes first, so that common ones are spread out.
 */
export function orderApart(paths: readonly MemberPath[]): MemberPath[] | null {
  const kinds = new Map<string, { joints: Set<number>; paths: MemberPath[] }>()
  for (const path of paths) {
    const joints = jointsOf(path)
    const key = path.arcs.map(arc => `${arc.start}-${arc.end}`).join(' ')
    const kind = kinds.get(key) ?? { joints: new Set<number>(joints), paths: [] }
    kind.paths.push(path)
    kinds.set(key, kind)
  }
  const list = [...kinds.values()].sort((a, b) => b.paths.length - a.paths.length)
  const clash = list.map(a => list.map(b => [...a.joints].some(at => b.joints.has(at))))
  const left = list.map(kind => kind.paths.length)
  const order: number[] = []
  const dead = new Set<string>()
  let steps = 0
  const place = (last: number): boolean => {
    if (order.length === paths.length) return true
    if (++steps > MOST_STEPS) return false
    const key = `${last}|${left.join(',')}`
    if (dead.has(key)) return false
    const choices = list
      .map((_, kind) => kind)
      .filter(kind => (left[kind] ?? 0) > 0 && (last < 0 || clash[last]?.[kind] !== true))
      .sort((a, b) => (left[b] ?? 0) - (left[a] ?? 0))
    for (const kind of choices) {
      left[kind] = (left[kind] ?? 0) - 1
      order.push(kind)
      if (place(kind)) return true
      order.pop()
      left[kind] = (left[kind] ?? 0) + 1
    }
    dead.add(key)
    return false
  }
  if (!place(-1)) return null
  const taken = list.map(() => 0)
  return order.map(kind => {
    const at = taken[kind] ?? 0
    taken[kind] = at + 1
    return list[kind]?.paths[at] as MemberPath
  })
}
