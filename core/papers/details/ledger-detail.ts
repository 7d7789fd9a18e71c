import type { Estimate } from '../../estimate-types.ts'
import { inches, printInches, printLength, ticks } from '../../units/index.ts'
import { ledgerHoleWords } from '../build/ledger-words.ts'
import { uprightDimension } from '../drawings/shapes.ts'
import { rowsOf } from '../marking/ledger-fastenings.ts'
import { said } from '../said.ts'
import { boardOf, deckingAbove, GOES_ON } from './decking-above.ts'
import { box, type Detail, detail, trace } from './detail.ts'

/** Sheathing as the job says it, at most so thick. */
const SHEATHING = { 'up to 1/2 in': inches(0.5), 'up to 1 in': inches(1) } as const
const BAND = inches(1.5)
const UP_THE_WALL = inches(5)

/** The ledger in section, with what keeps water out of the wall; null where the deck hangs on none. */
export function ledgerDetail({ job, frame, layout, checks }: Estimate): Detail | null {
  const ledger = frame.members.find(({ role }) => role === 'ledger')
  if (ledger === undefined || job.site.attachment !== 'ledger') return null
  const sheathing = SHEATHING[job.site.sheathing]
  const thick = inches(1.5)
  const deep = ledger.box.z1 - ledger.box.z0
  const { thickness } = boardOf(job.decking.size)
  const top = layout.deckTop - ledger.box.z1 - thickness
  const wood = top + thickness
  const id = 'detail-ledger'
  const flashing = trace(
    'ledger-flashing',
    [
      [-sheathing, wood - UP_THE_WALL],
      [-inches(0.125), wood - UP_THE_WALL],
      [-inches(0.125), wood - inches(0.125)],
      [thick + inches(0.25), wood - inches(0.125)],
      [thick + inches(0.5), wood + inches(1)],
    ],
    'heavy',
  )
  const bolt = (z: number) =>
    trace(
      'ledger-fastener',
      [
        [-sheathing - BAND - inches(1), z],
        [thick + inches(0.5), z],
      ],
      'heavy',
    )
  const rows = rowsOf(ledger)
  const bolts = rows === null ? [] : [rows.top, rows.bottom]
  return detail(
    id,
    'Ledger, section square to the wall',
    [
      box(
        'house-wall',
        [-sheathing - BAND - inches(6), wood - UP_THE_WALL - inches(3)],
        [-sheathing - BAND, wood + deep + inches(4)],
        { fill: 'ground', weight: 'fine', layer: 'house' },
      ),
      box('house-band', [-sheathing - BAND, wood - inches(1)], [-sheathing, wood + deep], {
        fill: 'wood',
        weight: 'fine',
      }),
      box('sheathing', [-sheathing, wood - UP_THE_WALL - inches(3)], [0, wood + deep + inches(4)], {
        weight: 'fine',
      }),
      box(ledger.id, [0, wood], [thick, wood + deep], { fill: 'wood', weight: 'heavy' }),
      box('joist', [thick, wood], [thick + GOES_ON, wood + deep], { fill: 'wood', weight: 'fine' }),
      ...deckingAbove(job, job.decking.wallGap, thick + GOES_ON, wood - thickness),
      ...flashing,
      ...bolts.flatMap((row) => bolt(wood + row)),
      ...bolts.map((row, i) =>
        uprightDimension(id, wood, wood + row, -sheathing - BAND - inches(6), -inches(4 + 6 * i)),
      ),
      uprightDimension(id, wood, wood + deep, thick + GOES_ON, inches(4)),
      uprightDimension(id, wood - thickness, wood, thick + GOES_ON, inches(9)),
    ],
    [
      {
        at: [-inches(0.125), wood - inches(3.5)],
        to: [inches(7), wood - inches(6)],
        text: 'Flashing: a Z with a drip edge over the ledger’s top, up the wall under the house’s own barrier. Membrane behind the ledger. Water runs out, never in.',
      },
      {
        at: [thick / 2, wood + deep / 2],
        to: [inches(6), wood + deep + inches(5)],
        text: `Ledger ${ledger.mark}, ${ledger.product.size}, its top ${printLength(ticks(Math.round(layout.deckTop - ledger.box.z1)))} under the top of the decking.`,
      },
      {
        at: [-sheathing - BAND, wood + deep - inches(1)],
        to: [-sheathing - BAND - inches(9), wood + deep + inches(2)],
        text: [
          `1/2 in ${job.site.ledgerFastener === 'lag' ? 'lag screws' : 'bolts'} through sheathing of ${job.site.sheathing} into the house’s band.`,
          ...said(checks, 'Ledger fasteners'),
          ...said(checks, 'Places of ledger fasteners'),
          ledgerHoleWords(job),
          'Drawn at the least distances; each has its place on the marking sheet.',
        ].join(' '),
      },
      {
        at: [thick + inches(5), wood + deep * 0.7],
        to: [inches(15), wood + deep + inches(5)],
        text: `Joists ${job.frame.joists.size} at ${printInches(job.frame.joists.spacing)} o.c., tops flush, each in a hanger with every hole filled.`,
      },
      {
        at: [job.decking.wallGap / 2, wood - thickness / 2],
        to: [-sheathing - inches(9), wood - inches(4)],
        text: `Decking ${job.decking.size}${job.decking.wallGap > 0 ? `, ${printInches(job.decking.wallGap)} off the wall so that it dries` : ', tight against the wall: a gap lets it dry'}.`,
      },
    ],
  )
}
