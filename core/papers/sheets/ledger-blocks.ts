import { LEDGER_EDGES } from '../../data/index.ts'
import { AT_LEDGER_JOINT } from '../../takeoff/index.ts'
import { printInches, printLength } from '../../units/index.ts'
import { ledgerEndWords, ledgerHoleWords } from '../build/ledger-words.ts'
import { ledgerMap } from '../drawings/ledger-map.ts'
import { type LedgerFastening, ledgerFastenings } from '../marking/ledger-fastenings.ts'
import type { Block } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { tableOf } from '../tables/table.ts'
import type { PaperTable } from '../types.ts'

/** Ledgers that stand in one drawing, so that it is not made small. */
const IN_ONE = 3

/** Where every fastener of the ledgers goes; nothing of a deck without one, a caution of one that no table covers. */
export function ledgerBlocks({ estimate }: PaperSource): readonly Block[] {
  const { job, frame } = estimate
  const ledgers = frame.members.filter(({ role }) => role === 'ledger')
  if (ledgers.length === 0) return []
  const all = ledgerFastenings(estimate)
  const name = job.site.ledgerFastener === 'lag' ? '1/2 in lag screws' : '1/2 in bolts'
  const drawn = all.reduce((sum, { places }) => sum + ringsOf(places), 0)
  const joints = all.reduce((sum, { carrier }) => sum + carrier.lines.length, 0)
  const without = ledgers.filter(({ id }) => !all.some(({ carrier }) => carrier.id === id))
  return [
    ...Array.from(
      { length: Math.ceil(all.length / IN_ONE) },
      (_, i): Block => ({
        kind: 'drawing',
        drawing: {
          ...ledgerMap(all.slice(i * IN_ONE, (i + 1) * IN_ONE), name),
          id: `ledger-fasteners-${i + 1}`,
        },
        layers: ['joists', 'beams', 'joints', 'marks', 'dimensions'],
        follows: 60,
      }),
    ),
    ...(all.length === 0
      ? []
      : [
          {
            kind: 'steps',
            items: [
              {
                text: `Hold each ledger where it goes before it is bored: ${ledgerEndWords(estimate)}`,
              },
              { text: ledgerHoleWords(job) },
              {
                text: `Rings: ${name}. Single ones are staggered, one up, one down; the two ends${joints === 0 ? '' : ', and either side of a joint,'} have one in each row. Keep ${LEDGER_EDGES.ends} in or more from every end and joint of a ledger, and ${LEDGER_EDGES.bottom} in or more from its lower edge.`,
                notes: [
                  'Drawn clear of joists and their hangers. Where one meets a pipe, a wire or an edge of the band behind, move it nearer to the one before it, never farther, and set one more.',
                  `They are ${drawn}, as many as are ordered${joints === 0 ? '' : `: ${drawn - joints * AT_LEDGER_JOINT} for the ledgers and ${joints * AT_LEDGER_JOINT} at ${joints === 1 ? 'the joint' : 'the joints'}`}.`,
                ],
              },
            ],
          } as const,
          { kind: 'table', columns: 'fastening', table: zonesTable(all), empty: '' } as const,
        ]),
    ...(without.length === 0
      ? []
      : [
          {
            kind: 'caution',
            text: `${without.map(({ mark }) => `Ledger ${mark}`).join(', ')}: no table sets the fasteners here. Have them designed before it is hung.`,
          } as const,
        ]),
  ]
}

/** Fasteners of one ledger: a column has one, at the ends of a piece two. */
function ringsOf(places: LedgerFastening['places']): number {
  return places.reduce((sum, { row }) => sum + (row === 'both' ? 2 : 1), 0)
}

/** Which joists ask for which spacing, and what is held. */
function zonesTable(all: readonly LedgerFastening[]): PaperTable {
  return tableOf(
    'ledger-spacing',
    'Spacing along the ledgers',
    [
      ['ledger', 'Ledger', 'left'],
      ['joists', 'Along joists', 'left'],
      ['from', 'From', 'right'],
      ['to', 'To', 'right'],
      ['most', 'At most', 'right'],
      ['held', 'Drawn and ordered at', 'right'],
    ],
    all.flatMap(({ carrier, zones, spacing }) =>
      zones.map((zone) => ({
        ledger: carrier.mark,
        joists: zone.marks.length === 1 ? `${zone.marks[0]}` : `${zone.marks[0]} to ${zone.marks.at(-1)}`,
        from: printLength(zone.from),
        to: printLength(zone.to),
        most: printInches(zone.spacing),
        held: printInches(spacing),
      })),
    ),
  )
}
