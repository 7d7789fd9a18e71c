import type { RunArc, RunModel } from '../model/problem.ts'

/** The pieces of one member, start to end. */
export interface MemberPath {
  readonly arcs: readonly RunArc[]
}

/** Most steps of the search for an order. */
const MOST_STEPS = 40_000

export type Arrangement =
  | { readonly kind: 'arranged'; readonly paths: MemberPath[] }
  /** proven: no way to split this flow into members has an order with neighbours apart */
  | { readonly kind: 'none' }
  | { readonly kind: 'unknown' }

/** Splits a flow into one path for each member, in no particular order. */
export function pathsOf(run: RunModel, flow: readonly number[]): MemberPath[] {
  const left = [...flow]
  const outgoing = arcsByNode(run)
  return Array.from({ length: run.members }, () => {
    const arcs: RunArc[] = []
    for (let node = 0; node !== 1; ) {
      const a = outgoing[node]?.find((index) => (left[index] ?? 0) > 0) ?? -1
      const arc = run.arcs[a]
      if (arc === undefined) throw new RangeError('the flow does not reach the end of its run')
      left[a] = (left[a] ?? 0) - 1
      arcs.push(arc)
      node = arc.to
    }
    return { arcs }
  })
}

function arcsByNode(run: RunModel): number[][] {
  const outgoing = Array.from({ length: run.nodes }, () => [] as number[])
  run.arcs.forEach((arc, a) => {
    outgoing[arc.from]?.push(a)
  })
  return outgoing
}

/**
 * Splits a flow into members laid side by side so that neighbours share no joint point: one member after another,
 * each by a way that is left and free of its neighbour's joints, points with most joints left first.
 */
export function arrange(run: RunModel, flow: readonly number[]): Arrangement {
  const left = [...flow]
  const outgoing = arcsByNode(run)
  const order: MemberPath[] = []
  const dead = new Set<string>()
  let steps = 0
  const jointsLeft = (): number[] => {
    const joints = run.group.points.map(() => 0)
    run.arcs.forEach((arc, a) => {
      if (arc.point >= 0) joints[arc.point] = (joints[arc.point] ?? 0) + (left[a] ?? 0)
    })
    return joints
  }
  const place = (last: ReadonlySet<number>): boolean => {
    const rest = run.members - order.length
    if (rest === 0) return true
    const joints = jointsLeft()
    if (joints.some((count, point) => count > (last.has(point) ? Math.floor(rest / 2) : Math.ceil(rest / 2))))
      return false
    const key = `${[...last].join(',')}|${left.join(',')}`
    if (dead.has(key)) return false
    const ways = waysThrough(run, outgoing, left, last)
    const weight = (way: readonly number[]): number =>
      way.reduce((sum, a) => sum + (joints[run.arcs[a]?.point ?? -1] ?? 0) ** 2, 0)
    ways.sort((a, b) => weight(b) - weight(a))
    for (const way of ways) {
      if (++steps > MOST_STEPS) return false
      for (const a of way) left[a] = (left[a] ?? 0) - 1
      const arcs = way.map((a) => run.arcs[a] as RunArc)
      order.push({ arcs })
      if (place(new Set(arcs.flatMap((arc) => (arc.point < 0 ? [] : [arc.point]))))) return true
      order.pop()
      for (const a of way) left[a] = (left[a] ?? 0) + 1
    }
    dead.add(key)
    return false
  }
  if (place(new Set())) return { kind: 'arranged', paths: order }
  return { kind: steps > MOST_STEPS ? 'unknown' : 'none' }
}

/** All ways from start to end over arcs that are left, with no joint at a forbidden point. */
function waysThrough(
  run: RunModel,
  outgoing: readonly (readonly number[])[],
  left: readonly number[],
  forbidden: ReadonlySet<number>,
): number[][] {
  const ways: number[][] = []
  const way: number[] = []
  const walk = (node: number): void => {
    if (node === 1) {
      ways.push([...way])
      return
    }
    for (const a of outgoing[node] ?? []) {
      const arc = run.arcs[a]
      if (arc === undefined || (left[a] ?? 0) <= 0 || forbidden.has(arc.point)) continue
      way.push(a)
      walk(arc.to)
      way.pop()
    }
  }
  walk(0)
  return ways
}
