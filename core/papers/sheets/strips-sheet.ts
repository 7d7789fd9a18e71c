import { carriers } from '../../frame/index.ts'
import { printLength } from '../../units/index.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'

/** The marks of each carrier at true size, to be cut out, joined and laid beside the board. */
export function stripsSheet({ estimate }: PaperSource): Sheet {
  const all = carriers(estimate, estimate.plans)
  return {
    id: 'strips',
    title: 'Marking strips, true size',
    audience: 'crew',
    across: true,
    blocks: [
      {
        kind: 'caution',
        text: 'Print at 100 %, without fitting to the page. Hold a tape to the inch rule of each band: where 10 in do not measure 10 in, do not use the strips, use the figures of the joist marking sheet.',
      },
      {
        kind: 'steps',
        items: [
          {
            text: 'Cut each band at its two ends. Lay them end to end in their order and tape them from below.',
          },
          {
            text: 'Hold the whole strip to a tape before use: its length is printed below. Then lay it along the board with 0 at the hooked end and carry the lines over.',
            notes: all.map(
              ({ label, length, from }) => `${label}: ${printLength(length)}, from its ${from} end`,
            ),
          },
        ],
      },
      ...all.map(
        ({ id, label, length, from, marks, lines }): Block => ({
          kind: 'strip',
          id,
          title: `${label}, from its ${from} end`,
          length,
          // a strip is read from its zero, whichever end of the board that is
          marks: [
            ...marks.map(({ at, mark, wide }) => ({ at, label: mark, side: 'right' as const, wide })),
            ...lines.map(({ at, label: what }) => ({ at, label: what, side: null, wide: 0 })),
          ],
        }),
      ),
    ],
  }
}
