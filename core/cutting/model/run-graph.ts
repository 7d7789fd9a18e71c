import type { Ticks } from '../../units/index.ts'
import type { Measure } from '../mitres/measure.ts'
import type { KindKey } from '../mitres/mix.ts'
import { mitresBetween } from '../mitres/run-mitres.ts'
import type { Mitres, RunGroup } from '../types.ts'

export interface RawArc {
  readonly from: number
  readonly to: number
  readonly start: Ticks
  readonly end: Ticks
  readonly length: Ticks
  /** by the measure: what it takes of a board without the kerf, and the kind of its ends */
  readonly size: Ticks
  readonly kind: KindKey
  readonly jointCost: number
  readonly point: number
}

export interface RunGraph {
  readonly nodes: number
  readonly arcs: readonly RawArc[]
}

/** Cut length of the piece from point i to point j (−1 the run's start, points.length its end), laps included. */
function cutLength(run: RunGroup, i: number, j: number): Ticks {
  const left = run.points[i]
  const right = run.points[j]
  const start = left === undefined ? 0 : left.at - left.lap
  const end = right === undefined ? run.length : right.at + right.lap
  return (end - start) as Ticks
}

/** What the piece takes of a board by the measure, without the kerf. */
function sizeOf(run: RunGroup, i: number, j: number, measure: Measure): Ticks {
  const length = cutLength(run, i, j)
  return (length - measure.less(length, mitresOf(run, i, j))) as Ticks
}

function mitresOf(run: RunGroup, i: number, j: number): Mitres | undefined {
  return mitresBetween(run, run.points[i]?.at ?? 0, run.points[j]?.at ?? run.length)
}

function admissible(run: RunGroup, i: number, j: number, longest: Ticks): boolean {
  return cutLength(run, i, j) <= longest && keepsRules(run, i, j)
}

function keepsRules(run: RunGroup, i: number, j: number): boolean {
  if (i < 0 && j >= run.points.length) return true
  if (cutLength(run, i, j) < run.minPiece) return false
  const start = run.points[i]?.at ?? 0
  const end = run.points[j]?.at ?? run.length
  const covered = run.supports.filter((at) => at >= start && at <= end).length
  return covered >= run.minSupports
}

/** All pieces that the run's own rules allow of boards of any length. */
export function admissibleArcs(
  run: RunGroup,
): { readonly length: Ticks; readonly mitres: Mitres | undefined }[] {
  const found: { readonly length: Ticks; readonly mitres: Mitres | undefined }[] = []
  for (let i = -1; i < run.points.length; i++) {
    for (let j = i + 1; j <= run.points.length; j++) {
      if (keepsRules(run, i, j)) found.push({ length: cutLength(run, i, j), mitres: mitresOf(run, i, j) })
    }
  }
  return found
}

/**
 * The pieces a member may be made of, as arcs of a graph without circles. Nodes are joint points; where the number
 * of joints is limited, a point with so many joints behind it. Node 0 is the start, node 1 the end.
 */
export function runGraph(run: RunGroup, longest: Ticks, measure: Measure): RunGraph {
  const n = run.points.length
  const layers = run.maxJoints === null || run.maxJoints >= n ? null : run.maxJoints
  const node = (point: number, joints: number): number => 2 + point + (layers === null ? 0 : (joints - 1) * n)
  const arcs: RawArc[] = []
  const add = (from: number, i: number, j: number, joints: number): void => {
    const right = run.points[j]
    arcs.push({
      from,
      to: right === undefined ? 1 : node(j, joints),
      start: (run.points[i]?.at ?? 0) as Ticks,
      end: (right?.at ?? run.length) as Ticks,
      length: cutLength(run, i, j),
      size: sizeOf(run, i, j, measure),
      kind: measure.kindOf(cutLength(run, i, j), mitresOf(run, i, j)),
      jointCost: right?.cost ?? 0,
      point: right === undefined ? -1 : j,
    })
  }
  const most = layers ?? n
  for (let joints = 0; joints <= (layers === null ? 1 : most); joints++) {
    for (let i = joints === 0 ? -1 : 0; i < (joints === 0 ? 0 : n); i++) {
      for (let j = i + 1; j <= n; j++) {
        if (j < n && layers !== null && joints >= most) continue
        if (!admissible(run, i, j, longest)) continue
        add(i < 0 ? 0 : node(i, joints), i, j, joints + 1)
      }
    }
  }
  return pruned({ nodes: 2 + n * (layers === null ? 1 : Math.max(1, most)), arcs })
}

/** Keeps only arcs that lie on some way from start to end. */
function pruned(graph: RunGraph): RunGraph {
  const outgoing = new Map<number, RawArc[]>()
  const incoming = new Map<number, RawArc[]>()
  for (const arc of graph.arcs) {
    outgoing.set(arc.from, [...(outgoing.get(arc.from) ?? []), arc])
    incoming.set(arc.to, [...(incoming.get(arc.to) ?? []), arc])
  }
  const reach = (first: number, next: Map<number, RawArc[]>, other: (arc: RawArc) => number): Set<number> => {
    const seen = new Set([first])
    const open = [first]
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      for (const arc of next.get(at) ?? []) {
        const to = other(arc)
        if (!seen.has(to)) {
          seen.add(to)
          open.push(to)
        }
      }
    }
    return seen
  }
  const fromStart = reach(0, outgoing, (arc) => arc.to)
  const toEnd = reach(1, incoming, (arc) => arc.from)
  return {
    nodes: graph.nodes,
    arcs: graph.arcs.filter((arc) => fromStart.has(arc.from) && toEnd.has(arc.to)),
  }
}
