import { solveLinear } from './linear-solve.ts'

/** A straight prismatic beam on knife-edge supports, in inches from its left end. Two supports at least. */
export interface BeamModel {
  readonly length: number
  /** ascending, within the length */
  readonly supports: readonly number[]
  /** E′ I, lb-in² */
  readonly stiffness: number
}

/** Loads act downwards: lb per in over a stretch, or lb at a point. */
export type BeamLoad =
  | { readonly kind: 'uniform'; readonly from: number; readonly to: number; readonly load: number }
  | { readonly kind: 'point'; readonly at: number; readonly load: number }

/** A stretch of the beam between nodes, with what is needed to say moment, shear and deflection within it. */
export interface BeamPiece {
  readonly from: number
  readonly to: number
  /** lb per in */
  readonly load: number
  /** internal shear just inside its left end, lb; positive lifts the right-hand part */
  readonly shear: number
  /** internal moment at its left end, in-lb; positive sags */
  readonly moment: number
  /** downward deflection at its left end, in, and slope there */
  readonly deflection: number
  readonly slope: number
}

export interface BeamResult {
  readonly model: BeamModel
  /** upward, lb, in the order of the supports; negative: the support holds the beam down */
  readonly reactions: readonly number[]
  readonly pieces: readonly BeamPiece[]
}

/**
 * Exact elastic analysis by the stiffness method: beam elements between supports, load ends and point loads, whose
 * end displacements are solved for, and within which statics and the elastic line give the rest. Any number of unequal
 * spans, overhangs at both ends. Shear deformation is left out, as in the tables of design aids.
 */
export function analyseBeam(model: BeamModel, loads: readonly BeamLoad[]): BeamResult {
  return analyseBeams(model, [loads])[0] ?? { model, reactions: [], pieces: [] }
}

/** The same for many load cases on one beam, which is assembled and eliminated once. */
export function analyseBeams(
  model: BeamModel,
  cases: readonly (readonly BeamLoad[])[],
): readonly BeamResult[] {
  if (model.supports.length < 2) throw new Error('the beam is not held by its supports')
  const nodes = nodesOf(model, cases.flat())
  const held = new Set(model.supports.map((support) => 2 * indexOfNode(nodes, support)))
  const free = Array.from({ length: 2 * nodes.length }, (_, i) => i).filter((i) => !held.has(i))
  const place = new Map(free.map((freedom, i) => [freedom, i]))
  const matrix = free.map(() => new Array<number>(free.length).fill(0))
  for (let e = 0; e + 1 < nodes.length; e++)
    addElement(matrix, place, e, elementLength(nodes, e), model.stiffness)
  const forces = cases.map((loads) => nodalForces(nodes, loads))
  const columns = forces.map((force) => free.map((freedom) => force[freedom] ?? 0))
  const solved = solveLinear(matrix, columns)
  return cases.map((loads, c) => {
    const moved = new Array<number>(2 * nodes.length).fill(0)
    for (const [i, freedom] of free.entries()) moved[freedom] = solved[c]?.[i] ?? 0
    return resultOf(model, nodes, loads, moved)
  })
}

function nodesOf(model: BeamModel, loads: readonly BeamLoad[]): readonly number[] {
  const marks = loads.flatMap((load) => (load.kind === 'point' ? [load.at] : [load.from, load.to]))
  const all = [0, model.length, ...model.supports, ...marks].filter((x) => x >= 0 && x <= model.length)
  return [...new Set(all)].sort((a, b) => a - b)
}

function indexOfNode(nodes: readonly number[], at: number): number {
  const index = nodes.indexOf(at)
  if (index < 0) throw new Error(`a support or a load at ${at} in lies off the beam`)
  return index
}

function elementLength(nodes: readonly number[], e: number): number {
  return (nodes[e + 1] ?? 0) - (nodes[e] ?? 0)
}

/** Hermite beam element: freedoms are downward deflection and slope at both ends. */
function addElement(
  matrix: number[][],
  place: ReadonlyMap<number, number>,
  e: number,
  l: number,
  ei: number,
): void {
  const k = ei / l ** 3
  const element = [
    [12, 6 * l, -12, 6 * l],
    [6 * l, 4 * l * l, -6 * l, 2 * l * l],
    [-12, -6 * l, 12, -6 * l],
    [6 * l, 2 * l * l, -6 * l, 4 * l * l],
  ]
  for (const [i, row] of element.entries()) {
    // freedoms that a support holds have no line
    const line = matrix[place.get(2 * e + i) ?? -1]
    for (const [j, value] of row.entries()) {
      const from = place.get(2 * e + j)
      if (line && from !== undefined) line[from] = (line[from] ?? 0) + k * value
    }
  }
}

/** Loads as forces and moments on the nodes; a uniform load acts as its fixed-end forces. */
function nodalForces(nodes: readonly number[], loads: readonly BeamLoad[]): number[] {
  const force = new Array<number>(2 * nodes.length).fill(0)
  const add = (freedom: number, value: number) => {
    force[freedom] = (force[freedom] ?? 0) + value
  }
  for (const load of loads) if (load.kind === 'point') add(2 * indexOfNode(nodes, load.at), load.load)
  for (let e = 0; e + 1 < nodes.length; e++) {
    const l = elementLength(nodes, e)
    const w = uniformOn(nodes, e, loads)
    add(2 * e, (w * l) / 2)
    add(2 * e + 1, (w * l * l) / 12)
    add(2 * e + 2, (w * l) / 2)
    add(2 * e + 3, (-w * l * l) / 12)
  }
  return force
}

function uniformOn(nodes: readonly number[], e: number, loads: readonly BeamLoad[]): number {
  const [from, to] = [nodes[e] ?? 0, nodes[e + 1] ?? 0]
  let sum = 0
  for (const load of loads)
    if (load.kind === 'uniform' && load.from <= from && load.to >= to) sum += load.load
  return sum
}

function resultOf(
  model: BeamModel,
  nodes: readonly number[],
  loads: readonly BeamLoad[],
  moved: readonly number[],
): BeamResult {
  const pieces: BeamPiece[] = []
  const shears: { left: number; right: number }[] = nodes.map(() => ({ left: 0, right: 0 }))
  for (let e = 0; e + 1 < nodes.length; e++) {
    const l = elementLength(nodes, e)
    const load = uniformOn(nodes, e, loads)
    const [v1, t1, v2, t2] = [
      moved[2 * e] ?? 0,
      moved[2 * e + 1] ?? 0,
      moved[2 * e + 2] ?? 0,
      moved[2 * e + 3] ?? 0,
    ]
    const ei = model.stiffness
    const curved = (ei / l ** 2) * (6 * (v1 - v2) + l * (4 * t1 + 2 * t2))
    const sheared = (ei / l ** 3) * (12 * (v1 - v2) + 6 * l * (t1 + t2))
    // end forces of the element less the fixed-end ones, in the sense of internal forces
    const shear = (load * l) / 2 - sheared
    const moment = curved - (load * l * l) / 12
    pieces.push({
      from: nodes[e] ?? 0,
      to: nodes[e + 1] ?? 0,
      load,
      shear,
      moment,
      deflection: v1,
      slope: t1,
    })
    const start = shears[e]
    const end = shears[e + 1]
    if (start) start.right = shear
    if (end) end.left = shear - load * l
  }
  const reactions = model.supports.map((support) => {
    const node = nodes.indexOf(support)
    const { left, right } = shears[node] ?? { left: 0, right: 0 }
    const there = loads.reduce(
      (sum, load) => (load.kind === 'point' && load.at === support ? sum + load.load : sum),
      0,
    )
    return right - left + there
  })
  return { model, reactions, pieces }
}
