import { patternOf } from '../model/board-cost.ts'
import { type Costs, savingIn } from '../model/costs.ts'
import type { Problem } from '../model/problem.ts'
import { demandOf, type Solution, solutionOf } from '../solve/solution.ts'
import { bestSplit, type Kind, kindOf, knownKinds } from './split.ts'

/** Ways to share the pieces of two boards out again that are looked at for one plan. */
const MOST_SPLITS = 20_000

/**
 * The same pieces from the same boards with fewer different set-ups, and among as many with longer offcuts in fewer
 * boards: pieces of two boards are shared out again between them, on all of their copies that are alike, as long as
 * that helps. Never costs more; bounded by how many ways are looked at.
 */
export function fewerSetUps(problem: Problem, costs: Costs, solution: Solution): Solution {
  const kinds = kindsOf(problem, solution)
  const saving = (stock: number, used: number): number => savingIn(problem, costs, stock, used)
  let known = knownKinds(problem, kinds)
  let left = MOST_SPLITS
  for (let better = true; better; ) {
    better = false
    for (let i = 1; i < kinds.length; i++) {
      for (let j = 0; j < Math.min(i, kinds.length); j++) {
        const [a, b] = [kinds[j], kinds[i]]
        if (a === undefined || b === undefined || left <= 0) continue
        const { split, tried } = bestSplit(problem, known, a, b, saving)
        left -= tried
        if (split === null) continue
        share(kinds, a, b, split)
        known = knownKinds(problem, kinds)
        better = true
      }
    }
  }
  return orAsItWas(problem, costs, solution, kinds)
}

/** Boards cut alike, without the pieces that a pattern holds beyond what is wanted. */
function kindsOf(problem: Problem, solution: Solution): Kind[] {
  const wanted = demandOf(problem, solution.flows)
  const kinds = new Map<string, Kind>()
  for (const { pattern, count } of solution.boards) {
    for (let copy = 0; copy < count; copy++) {
      const pieces = pattern.items.flatMap((item, k) => {
        const taken = Math.min(pattern.counts[k] ?? 0, wanted[item] ?? 0)
        wanted[item] = (wanted[item] ?? 0) - taken
        return Array.from({ length: taken }, () => item)
      })
      if (pieces.length > 0) add(kinds, kindOf(problem, pattern.stock, pieces, 1))
    }
  }
  return [...kinds.values()]
}

function add(kinds: Map<string, Kind>, kind: Kind): void {
  const known = kinds.get(kind.key)
  kinds.set(kind.key, known === undefined ? kind : { ...known, copies: known.copies + kind.copies })
}

/** Cuts as many copies of both kinds the new way as there are of the lesser. */
function share(kinds: Kind[], a: Kind, b: Kind, split: readonly Kind[]): void {
  const copies = Math.min(a.copies, b.copies)
  const all = new Map(kinds.map((kind) => [kind.key, kind]))
  for (const kind of [a, b]) {
    if (kind.copies === copies) all.delete(kind.key)
    else all.set(kind.key, { ...kind, copies: kind.copies - copies })
  }
  for (const kind of split) add(all, { ...kind, copies })
  kinds.splice(0, kinds.length, ...all.values())
}

function orAsItWas(problem: Problem, costs: Costs, solution: Solution, kinds: readonly Kind[]): Solution {
  const boards = kinds.map(({ stock, pieces, copies }) => {
    const items = [...new Set(pieces)]
    const counts = items.map((item) => pieces.filter((piece) => piece === item).length)
    return { pattern: patternOf(problem, stock, items, counts), count: copies }
  })
  const made = solutionOf(problem, costs, boards, solution.flows)
  return made === null || made.cost > solution.cost ? solution : made
}
