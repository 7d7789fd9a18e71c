import { printLength, ticks } from '../../units/index.ts'
import { deckElevation, deckSection } from '../drawings/upright-views.ts'
import { numberList } from '../number-list.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import type { Layer } from '../types.ts'

/** What elevations and sections show, from the lowest layer up. */
export const UPRIGHT_LAYERS: readonly Layer[] = [
  'house',
  'footings',
  'posts',
  'beams',
  'joists',
  'decking',
  'guard',
  'stairs',
  'marks',
  'dimensions',
]

/** What a plan review wants beside the plan: one section, two elevations, and every height in figures. */
export function sectionSheet({ estimate }: PaperSource): Sheet {
  const { job, layout, frame } = estimate
  const drawing = (made: Extract<Block, { kind: 'drawing' }>['drawing']): Block => ({
    kind: 'drawing',
    drawing: made,
    layers: UPRIGHT_LAYERS,
    alike: 'upright',
  })
  return {
    id: 'section',
    title: 'Section and elevations',
    audience: 'permit office',
    across: true,
    blocks: [
      drawing(deckSection(estimate)),
      drawing(deckElevation(estimate, 'front')),
      drawing(deckElevation(estimate, 'side')),
      {
        kind: 'facts',
        together: 'facts',
        rows: [
          [
            'Top of decking',
            `${printLength(ticks(layout.deckTop))} over the ground at the wall's left end, which is the datum`,
          ],
          ...postRows(frame.posts),
          ['Footings', 'dashed under the ground line, to the bottom of everything'],
          ...(job.scope.guard.included
            ? [
                [
                  'Guard and stairs',
                  'where they are framed by the job they are drawn; where they are in the price as a sum, they are not',
                ] as const,
              ]
            : []),
        ],
      },
    ],
  }
}

/** How long each post is, like ones together. */
function postRows(posts: PaperSource['estimate']['frame']['posts']): readonly (readonly [string, string])[] {
  const alike = Map.groupBy(
    posts,
    ({ ground, length }) =>
      `${printLength(length)} long as drawn; ground there ${printLength(ticks(Math.round(ground)))} against the datum`,
  )
  return [...alike].map(([words, all]) => [
    `${all.length === 1 ? 'Post' : 'Posts'} ${numberList(all.map(({ number }) => number))}`,
    words,
  ])
}
