import { sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { HOLD_DOWN_LEG, type HouseHoldDown, houseHoldDowns, OFF_LEDGER } from '../../frame/index.ts'
import { inches, printInches, ticks } from '../../units/index.ts'
import { houseHoldDownWords } from '../build/house-hold-downs.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { said } from '../said.ts'
import { GOES_ON } from './decking-above.ts'
import { box, type Detail, detail, trace } from './detail.ts'

const BAND = inches(1.5)
const SHEATHING = { 'up to 1/2 in': inches(0.5), 'up to 1 in': inches(1) } as const
const INSIDE = inches(12)

/** A lateral hold-down from a joist of the deck through ledger and band to the house's floor framing; null where none is. */
export function houseHoldDownDetail({ job, frame, checks }: Estimate): Detail | null {
  const held = houseHoldDowns(frame)
  const [first] = held
  if (first === undefined || job.site.attachment !== 'ledger') return null
  const deep = sectionOf(job.frame.joists.size).depth
  const ledger = inches(1.5)
  const sheathing = SHEATHING[job.site.sheathing]
  // the rod lies at mid-depth, clear of the ledger's rows: common practice, no source
  const z = deep / 2
  const band = -sheathing - BAND
  const id = 'detail-house-hold-down'
  return detail(
    id,
    'Hold-down from the deck to the house, section along a joist',
    [
      box('house-band', [band, 0], [-sheathing, deep], { fill: 'wood', weight: 'fine' }),
      box('house-floor', [band - INSIDE, 0], [band, deep], { fill: 'wood', weight: 'fine', layer: 'house' }),
      box('sheathing', [-sheathing, -inches(3)], [0, deep + inches(3)], { weight: 'fine' }),
      box('ledger', [0, 0], [ledger, deep], { fill: 'wood', weight: 'heavy' }),
      box(first.joist.id, [ledger, 0], [ledger + GOES_ON, deep], { fill: 'wood' }),
      ...[
        [ledger + OFF_LEDGER, ledger + OFF_LEDGER + HOLD_DOWN_LEG],
        [band - OFF_LEDGER - HOLD_DOWN_LEG, band - OFF_LEDGER],
      ].map(([from = 0, to = 0]) =>
        box('house-hold-down', [from, z - inches(0.75)], [to, z + inches(0.75)], { fill: 'ground' }),
      ),
      ...trace(
        'house-hold-down-rod',
        [
          [band - inches(2), z],
          [ledger + inches(2), z],
        ],
        'heavy',
      ),
      uprightDimension(id, 0, z, ledger + GOES_ON, inches(4)),
      levelDimension(id, 0, ledger, deep, inches(3)),
    ],
    [
      {
        at: [ledger + HOLD_DOWN_LEG / 2, z],
        to: [ledger + inches(6), deep + inches(6)],
        text: [
          `${held.length} hold-downs of 1,500 lb, each on the side of a joist, every hole filled: ${houseHoldDownWords({ frame })}.`,
          sideWords(held),
          'Its nearer end lies about 1 in off the ledger (common practice, no source).',
          ...said(checks, 'Lateral load'),
        ].join(' '),
      },
      {
        at: [ledger / 2, z],
        to: [ledger + inches(2), -inches(5)],
        text: `A threaded rod of the size that its sheet names, at half the joist’s depth, ${printInches(ticks(Math.round(z)))} under its top, through ledger, sheathing and band: at least 2 in clear of the ledger’s own fasteners.`,
      },
      {
        at: [band - HOLD_DOWN_LEG / 2, z],
        to: [band - inches(8), deep + inches(6)],
        text: 'Inside the house a second one on a floor joist beside the rod, or on blocking between the floor’s joists that is nailed through the subfloor, as IRC 2021 Figure R507.9.2(1) shows (from memory): look before the ledger is hung. Where the floor cannot be reached from below, four of 750 lb screwed through the ledger into the plates or studs may do instead, by their maker’s sheet.',
      },
    ],
  )
}

/** On which side of its joist each lies: blocks behind guard posts are kept off there. */
function sideWords(held: readonly HouseHoldDown[]): string {
  const outward = held.filter(({ inward }) => !inward)
  const away = 'On the joist’s side that faces away from that end of the ledger'
  if (outward.length === 0) return `${away}, where no block behind a guard post stands.`
  return `${away}, but at ${outward.map(({ joist }) => joist.mark).join(', ')} on the other, for the next joist stands too near.`
}
