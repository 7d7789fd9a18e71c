import { GALVANISED_FEWER, nailsPerPound } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import type { Line, PriceBook } from '../../pricing/index.ts'
import { AT_LEDGER_JOINT } from '../../takeoff/index.ts'
import { type Cents, priceOf } from '../../units/index.ts'

/** What a yard counts out for joints: so many of a unit, and what they are. */
export interface JointGoods {
  /** in thousandths of the unit */
  readonly thousandths: number
  readonly unit: string
  readonly label: string
  /** the good of the price book that it is a part of; null where the joint's own price is all that is known */
  readonly sku: string | null
}

type Source = Pick<Estimate, 'job' | 'takeoff'>

/** What is bought for joints of the good that they are a part of, beside what that good's own line buys. */
export interface JointPurchase {
  /** line of the good itself */
  readonly part: Line
  readonly good: PriceBook['goods'][number]
  /** of that line's packs, in thousandths of the unit */
  readonly left: number
  /** 0 where enough of those is left */
  readonly bought: number
}

/** Null where nothing but the joint's own price is known. */
export function jointPurchase(
  { pricing, takeoff }: Pick<Estimate, 'pricing' | 'takeoff'>,
  goods: PriceBook['goods'],
  { sku, thousandths }: JointGoods,
): JointPurchase | null {
  const part = pricing?.lines.find(({ id }) => id === `good-${sku}`)
  const good = goods.find((one) => one.sku === sku)
  if (part === undefined || good === undefined) return null
  const needed = takeoff.goods.find((one) => one.sku === sku)?.thousandths ?? 0
  const left = part.thousandths - needed
  const isCounted = good.pack === 1000 && part.unit === 'each'
  const enough = !isCounted && left >= thousandths
  return { part, good, left, bought: enough ? 0 : Math.ceil(thousandths / good.pack) * good.pack }
}

/**
 * What a yard bills for a line. Joints are estimated by the joint; billed is what is bought for them, and what comes out
 * of packs that are bought anyway is in those.
 */
export function billOf(
  line: Line,
  estimate: Source & Pick<Estimate, 'pricing'>,
  goods: PriceBook['goods'],
): Cents {
  const joints = jointGoods(line, estimate)
  const purchase = joints === null ? null : jointPurchase(estimate, goods, joints)
  return purchase === null ? line.amount : priceOf(purchase.bought, purchase.part.price)
}

/** What one joint takes, beside its price in the book: common practice, no source. */
const PLATE_NAILS = 8
const RIM_NAILS = 6
const SCREWS = 2

/** The joints of one kind as goods: plates by the piece, nails by the pound, screws and bolts by number; null of other lines. */
export function jointGoods(
  { id, group, label, thousandths }: Line,
  { job, takeoff }: Source,
): JointGoods | null {
  if (group !== 'joints') return null
  const joints = Math.round(thousandths / 1000)
  const each = joints === 1 ? 'at the one joint' : `at each of ${joints} joints`
  switch (id) {
    case 'joint-beam-ply-material':
      return {
        thousandths: joints * 1000,
        unit: joints === 1 ? 'plate' : 'plates',
        label: `${label}: one flat plate at each, galvanised, no deeper than the ply and with room for ${PLATE_NAILS / 2} nails on either side of the joint; its ${PLATE_NAILS} nails 10d × 1-1/2 in, ${pounds(joints * PLATE_NAILS, '10d × 1-1/2')} lb in all, come with it`,
        sku: null,
      }
    case 'joint-rim-material':
      return {
        thousandths: Math.round(pounds(joints * RIM_NAILS, '16d common') * 1000),
        unit: 'lb',
        label: `${label}: ${RIM_NAILS} nails 16d common, galvanised, ${each}; the blocks are sawn as the cutting sheet says`,
        sku: 'nail-16d-common',
      }
    case 'joint-ledger-material':
      return {
        thousandths: joints * AT_LEDGER_JOINT * 1000,
        unit: 'each',
        label: `${label}: ${AT_LEDGER_JOINT} ${each}, as those of the ledger`,
        sku: job.site.ledgerFastener === 'lag' ? 'ledger-lag-1/2' : 'ledger-bolt-1/2',
      }
    case 'joint-decking-material':
      return {
        thousandths: joints * SCREWS * 1000,
        unit: 'screws',
        label: `${label}: ${SCREWS} ${each}, as those of the decking`,
        sku:
          takeoff.goods.find(
            ({ sku, cause }) => sku.startsWith('screw-') && cause.fields.includes('decking.size'),
          )?.sku ?? null,
      }
    default:
      return null
  }
}

/** Rounded up to a tenth of a pound; a galvanised pound holds fewer. */
function pounds(nails: number, kind: keyof typeof nailsPerPound): number {
  return Math.ceil((nails * 10) / (nailsPerPound[kind] * (1 - GALVANISED_FEWER / 100))) / 10
}
