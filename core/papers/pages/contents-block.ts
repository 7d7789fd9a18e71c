import type { Block } from '../sheet-types.ts'
import { tableOf } from '../tables/table.ts'

type Contents = Extract<Block, { kind: 'contents' }>

/** The index of a set as a table: how many pages each of the sheets has, in their order, from which page on. */
export function contentsTable(
  { rows }: Contents,
  counts: readonly number[],
  first: number,
): Extract<Block, { kind: 'table' }> {
  let from = first
  return {
    kind: 'table',
    empty: 'No other sheet.',
    table: tableOf(
      'contents',
      '',
      [
        ['pages', 'Page', 'right'],
        ['title', 'Sheet', 'left'],
        ['readers', 'For', 'left'],
        ['use', 'To do or to see', 'left'],
      ],
      rows.map((row, at) => {
        const count = counts[at] ?? 0
        const pages = count > 1 ? `${from} to ${from + count - 1}` : `${from}`
        from += count
        return { pages, ...row }
      }),
    ),
  }
}
