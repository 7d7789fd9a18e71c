import type { Design } from '../../estimate-types.ts'
import type { GuardPlan } from '../../guard/index.ts'
import { printInches, printLength, ticks } from '../../units/index.ts'
import { edgeWords } from '../build/edge-words.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Every stretch of guard: its edge, posts by their places on it, and what fills the bays between them. */
export function guardTable({ stretches }: GuardPlan, design: Pick<Design, 'layout'>): PaperTable {
  return tableOf(
    'guard',
    'Guard',
    [
      ['number', 'Stretch', 'right'],
      ['edge', 'Edge', 'left'],
      ['from', 'From', 'right'],
      ['to', 'To', 'right'],
      ['posts', 'Post centres along the edge', 'left'],
      ['bays', 'Bays: clear width, balusters, opening between', 'left'],
    ],
    stretches.map(({ number, edge, from, to, posts, bays }) => ({
      number: `${number}`,
      edge: edgeWords(edge, design),
      from: place(from),
      to: place(to),
      posts: posts.map(({ at, onJoist }) => `${place(at)}${onJoist ? '' : ' (blocking)'}`).join(', '),
      bays: bays
        .map(({ clear, balusters, opening }) =>
          balusters === 0
            ? `${printLength(clear)}: panel`
            : `${printLength(clear)}: ${balusters}, ${printInches(ticks(Math.ceil(opening - 1e-6)))}`,
        )
        .join('; '),
    })),
  )
}

/** A place along an edge, to the nearest 1/32 in. */
function place(at: number): string {
  return printLength(ticks(Math.round(at)))
}
