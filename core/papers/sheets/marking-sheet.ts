import { type Carrier, type CarrierEnd, carriers } from '../../frame/index.ts'
import { printInches, printLength, ticks } from '../../units/index.ts'
import { markingDrawing } from '../drawings/marking-drawing.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { carrierLinesTable, markingTables } from '../tables/marking-table.ts'
import { ledgerBlocks } from './ledger-blocks.ts'

/** Carriers that stand in one drawing, so that a sheet's drawing is not made small. */
const IN_ONE = 3
/** Tables of more columns than this stand alone on a page's width: what is narrow keeps out of their company. */
const WIDE = 4

/** Every layout mark along ledger, rims and beams: which edge, which side, running from one end. */
export function markingSheet(source: PaperSource): Sheet {
  const { estimate } = source
  const { job } = estimate
  const all = carriers(estimate, estimate.plans)
  const tables = markingTables(all)
  const hips = all.filter(({ outerFace }) => outerFace === true)
  const askew = all.filter(({ slanting, outerFace }) => slanting === true && outerFace !== true)
  const end = job.frame.joists.layoutFrom
  const away = all.filter(({ from }) => from === 'rear' || from === 'front')
  return {
    id: 'marking',
    title: 'Joist marking',
    audience: 'crew',
    across: true,
    blocks: [
      ...(askew.length === 0
        ? []
        : [
            {
              kind: 'caution',
              text: `${askew.map(({ label }) => label).join(', ')}: at an angle. Figures run along ${askew.length === 1 ? 'its' : 'their'} own middle line, from the ${end} end; on top each line lies as the joist comes, on the faces it stands plumb.`,
            } as const,
          ]),
      ...(hips.length === 0
        ? []
        : [
            {
              kind: 'caution',
              text: `${hips.map(({ label }) => label).join(', ')}: before the halves are nailed together, stand facing the face that the joists meet, the one away from the other half, and hook the tape at the long point of its ${end} end: of ${hips.map(({ mark, hookedAt }) => `${mark} the end at the ${hookedAt}`).join(', of ')}. Hooked at the short point, every line stands wrong.`,
            } as const,
          ]),
      ...groups(all).map(
        (group, index): Block => ({
          kind: 'drawing',
          drawing: { ...markingDrawing(group), id: `joist-marking-${index + 1}` },
          layers: ['joists', 'beams', 'joints', 'marks', 'dimensions'],
        }),
      ),
      {
        kind: 'steps',
        items: [
          {
            text: `Lay ledger, rims and beams beside each other as they will stand, ${end} end to the ${end} seen from the yard side of the plan. Hook one tape on the ${end} end of each and leave it there: measure every line from that end, never from line to line.`,
            notes:
              away.length === 0
                ? []
                : [
                    `${away.map(({ label }) => label).join(', ')}: running away from the house. ${away[0]?.from === 'rear' ? 'The rear end, hooked,' : 'The front end, hooked,'} is the one ${away[0]?.from === 'rear' ? 'farther from' : 'nearer to'} the yard.`,
                  ],
          },
          {
            text: `At each figure draw a line square across the board’s face. It is the edge of the joist that is nearer to the hooked end; put the X beyond it, where the joist stands (${printInches(all[0]?.marks[0]?.wide ?? job.frame.joists.spacing)} thick).`,
            notes: [
              `Joists stand at ${printInches(job.frame.joists.spacing)} on centre, counted from the ${end} edge of their own part of the deck. Where a figure on the ledger differs from that on the rim, it is because the ledger's own end stands elsewhere; each column is true for its own board.`,
            ],
          },
          {
            text: 'Check before nailing: hold rim and ledger together as they will stand, not end to end flush, for the ledger may begin farther in; the lines must meet.',
            notes: all.map((carrier) => lastLine(carrier)),
          },
        ],
      },
      ...tables.map(
        (table): Block => ({
          kind: 'table',
          columns: 'marks',
          table,
          empty: 'No joist meets a ledger, rim or beam.',
        }),
      ),
      {
        kind: 'table',
        columns: tables.some(({ columns }) => columns.length > WIDE) ? 'lines' : 'marks',
        table: carrierLinesTable(all),
        empty: 'No posts and no joints.',
      },
      ...ledgerBlocks(source),
    ],
  }
}

const OTHER_END = { left: 'right', right: 'left', rear: 'front', front: 'rear' } as const satisfies {
  readonly [end in CarrierEnd]: CarrierEnd
}

function lastLine({ label, marks, length, from }: Carrier): string {
  const last = marks.at(-1)
  if (last === undefined) return label
  return `${label}: the last line, ${last.mark}, is at ${printLength(last.at)} of ${printLength(length)}; it leaves ${printLength(ticks(length - last.at))} to the ${OTHER_END[from]} end.`
}

function groups(all: readonly Carrier[]): readonly (readonly Carrier[])[] {
  return Array.from({ length: Math.ceil(all.length / IN_ONE) }, (_, i) =>
    all.slice(i * IN_ONE, (i + 1) * IN_ONE),
  )
}
