import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import type { LpEngine } from '../../../core/cutting/index.ts'
import { PairMaster } from '../../../core/cutting/solve/pair-master.ts'
import {
  breaksPair,
  type Fill,
  keptApart,
  needsRow,
  type PairNode,
  putTogether,
} from '../../../core/cutting/solve/pair-node.ts'
import { PairTree } from '../../../core/cutting/solve/pairs.ts'
import { Work } from '../../../core/cutting/solve/work.ts'
import { loadGlpk, loadHighs } from '../../../main/workers/lp/index.ts'

const CAPACITY = 30

/** Widths that leave little room on a board, several of each, so that pairs decide. */
const lists = fc
  .uniqueArray(
    fc.record({ width: fc.integer({ min: 6, max: 17 }), demand: fc.integer({ min: 1, max: 4 }) }),
    { minLength: 2, maxLength: 6, selector: (piece) => piece.width },
  )
  .map((list) => list.sort((a, b) => b.width - a.width))
type List = readonly { readonly width: number; readonly demand: number }[]

/** Fewest boards, by trying every board for every piece in turn. */
function fewestBoards(list: List): number {
  const pieces = list.flatMap(({ width, demand }) => Array.from({ length: demand }, () => width))
  let best = pieces.length
  const place = (at: number, rooms: number[]): void => {
    if (rooms.length >= best) return
    const width = pieces[at]
    if (width === undefined) {
      best = rooms.length
      return
    }
    const tried = new Set<number>()
    rooms.forEach((room, board) => {
      if (room < width || tried.has(room)) return
      tried.add(room)
      place(at + 1, rooms.with(board, room - width))
    })
    place(at + 1, [...rooms, CAPACITY - width])
  }
  place(0, [])
  return best
}

/** Every fill of one board that a node allows. */
function everyFill(node: PairNode): Fill[] {
  const fills: Fill[] = []
  const walk = (piece: number, room: number, pieces: number[], counts: number[]): void => {
    const { width, demand } = node.pieces[piece] ?? { width: 0, demand: -1 }
    if (demand < 0) {
      const fill = { pieces, counts }
      if (pieces.length > 0 && !breaksPair(node, fill)) fills.push(fill)
      return
    }
    walk(piece + 1, room, pieces, counts)
    for (let count = 1; count <= demand && count * width <= room; count++)
      walk(piece + 1, room - count * width, [...pieces, piece], [...counts, count])
  }
  walk(0, CAPACITY, [], [])
  return fills
}

function wordOf(fill: Fill): string {
  return `${fill.pieces.join(',')}:${fill.counts.join(',')}`
}

function rootOf(list: List): PairNode {
  return {
    pieces: list.map(({ width, demand }, id) => ({ id, width, demand, parts: [id], rows: [[id, 1]] })),
    apart: list.map(() => new Set<number>()),
    merges: [],
  }
}

function treeOf(list: List, target: number, engine: LpEngine): PairTree {
  const work = new Work({ columns: 1e6, nodes: 1e6, patterns: 1e6 }, () => false)
  return new PairTree(rootOf(list), [], CAPACITY, target, engine, work)
}

describe('branching on pairs of pieces', () => {
  const engines: [string, LpEngine][] = []
  beforeAll(async () => {
    engines.push(['HiGHS', await loadHighs()], ['GLPK', await loadGlpk()])
  })

  test('finds a plan with the fewest boards that trying everything finds, and refutes one board less', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const fewest = fewestBoards(list)
        for (const [name, engine] of engines) {
          const tree = treeOf(list, fewest, engine)
          const found = tree.ask(2000).boards
          tree.dispose()
          expect(found?.length, name).toBeLessThanOrEqual(fewest)
          const cut = list.map((_, item) => (found ?? []).flat().filter((part) => part === item).length)
          expect(cut).toEqual(list.map(({ demand }) => demand))
          for (const board of found ?? [])
            expect(board.reduce((sum, item) => sum + (list[item]?.width ?? 0), 0)).toBeLessThanOrEqual(
              CAPACITY,
            )
          const less = treeOf(list, fewest - 1, engine)
          expect(less.ask(2000), name).toEqual({ boards: null, refuted: true })
          less.dispose()
        }
      }),
      { numRuns: 60 },
    )
  })

  test('is at every node of its tree as good a bound as a program made for that node alone', () => {
    const [, engine] = engines[0] as [string, LpEngine]
    const steps = fc.array(fc.record({ i: fc.nat(), j: fc.nat(), together: fc.boolean() }), { maxLength: 5 })
    let joinedRows = 0
    fc.assert(
      fc.property(lists, fc.array(steps, { minLength: 1, maxLength: 4 }), (list, walks) => {
        const root = rootOf(list)
        const master = new PairMaster(engine, root, [])
        let joined = list.length
        const nodes = walks.flatMap((walk) => {
          const visited: PairNode[] = []
          let node = root
          for (const { i, j, together } of walk) {
            const a = i % node.pieces.length
            const b = j % node.pieces.length
            const [first, second] = [node.pieces[a], node.pieces[b]]
            if (first === undefined || second === undefined || (a === b && first.demand < 2)) continue
            if (!together) node = keptApart(node, a, b)
            else if (first.width + second.width <= CAPACITY) {
              const row = needsRow(node, a, b) ? master.addRow() : -1
              node = putTogether(node, a, b, joined++, row) ?? node
            }
            visited.push(node)
          }
          return visited
        })
        joinedRows += master.rows - list.length
        for (const node of [...nodes, root, ...nodes.toReversed()]) {
          master.goTo(node)
          const fills = everyFill(node)
          master.add(fills)
          expect(master.fills.filter((fill) => fill !== null).length).toBeGreaterThanOrEqual(1)
          for (const fill of master.fills)
            if (fill !== null) expect(fills.map(wordOf)).toContain(wordOf(fill))
          const alone = engine.create(
            node.pieces.map(({ demand }) => ({ lower: demand, upper: Number.POSITIVE_INFINITY })),
            fills.map(({ pieces, counts }) => ({
              cost: 1,
              lower: 0,
              upper: Number.POSITIVE_INFINITY,
              rows: pieces,
              values: counts,
            })),
          )
          expect(master.solve().objective).toBeCloseTo(alone.solve().objective, 6)
          alone.dispose()
        }
        master.dispose()
      }),
      { numRuns: 40 },
    )
    expect(joinedRows).toBeGreaterThan(5)
  })

  test('goes on where it ended when it is asked for more nodes', () => {
    const list = [
      { width: 14, demand: 4 },
      { width: 11, demand: 4 },
      { width: 9, demand: 4 },
      { width: 7, demand: 4 },
    ]
    const [, engine] = engines[0] as [string, LpEngine]
    const tree = treeOf(list, fewestBoards(list) - 1, engine)
    let asked = 0
    while (!tree.ask(1).refuted && asked < 5000) asked++
    tree.dispose()
    expect(asked).toBeLessThan(5000)
  })
})
