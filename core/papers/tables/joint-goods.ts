import { GALVANISED_FEWER, nailsPerPound } from '../../data/index.ts'
import type { Line } from '../../pricing/index.ts'
import { AT_LEDGER_JOINT } from '../../takeoff/index.ts'

/** What a yard counts out for joints: so many of a unit, and what they are. */
export interface JointGoods {
  /** in thousandths of the unit */
  readonly thousandths: number
  readonly unit: string
  readonly label: string
}

/** What one joint takes, beside its price in the book: common practice, no source. */
const PLATE_NAILS = 8
const RIM_NAILS = 6
const SCREWS = 2

/** The joints of one kind as goods: plates by the piece, nails by the pound, screws and bolts by number; null of other lines. */
export function jointGoods({ id, group, label, thousandths }: Line): JointGoods | null {
  if (group !== 'joints') return null
  const joints = Math.round(thousandths / 1000)
  const at = `${joints} ${joints === 1 ? 'joint' : 'joints'}`
  switch (id) {
    case 'joint-beam-ply-material':
      return {
        thousandths: joints * 1000,
        unit: joints === 1 ? 'plate' : 'plates',
        label: `${label}: one plate at each, with ${PLATE_NAILS} nails 10d × 1-1/2 in, ${pounds(joints * PLATE_NAILS, '10d × 1-1/2')} lb in all`,
      }
    case 'joint-rim-material':
      return {
        thousandths: Math.round(pounds(joints * RIM_NAILS, '16d common') * 1000),
        unit: 'lb',
        label: `${label}: nails 16d common for ${at}, ${RIM_NAILS} each`,
      }
    case 'joint-ledger-material':
      return {
        thousandths: joints * AT_LEDGER_JOINT * 1000,
        unit: 'each',
        label: `${label}: ${AT_LEDGER_JOINT} at ${joints === 1 ? 'the joint' : `each of ${at}`}, as those of the ledger`,
      }
    case 'joint-decking-material':
      return {
        thousandths: joints * SCREWS * 1000,
        unit: 'screws',
        label: `${label}: for ${at}, as those of the decking`,
      }
    default:
      return null
  }
}

/** Rounded up to a tenth of a pound; a galvanised pound holds fewer. */
function pounds(nails: number, kind: keyof typeof nailsPerPound): number {
  return Math.ceil((nails * 10) / (nailsPerPound[kind] * (1 - GALVANISED_FEWER / 100))) / 10
}
