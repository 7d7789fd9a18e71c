import type { JointKind } from '../frame/index.ts'
import { type Cents, cents, divideRounded } from '../units/index.ts'
import type { JointKit, PriceBook } from './types.ts'

/** Real money of one joint: what is bought for it and what its minutes are paid. */
export interface JointCost {
  readonly kit: JointKit
  readonly material: Cents
  readonly labour: Cents
  readonly total: Cents
}

/**
 * What one joint of a kind costs by the price book: material + minutes × loaded rate ÷ 60, rounded to the cent.
 * An owner builder pays no wages, so a joint costs only its material. Null where the book has no such joint.
 */
export function jointCost(
  kind: JointKind,
  book: PriceBook,
  builder: 'contractor' | 'owner',
): JointCost | null {
  const kit = book.joints.find((joint) => joint.kind === kind)
  if (kit === undefined) return null
  const labour =
    builder === 'owner' ? cents(0) : divideRounded(BigInt(kit.minutes) * BigInt(book.labourRate), 60n)
  return { kit, material: kit.material, labour, total: cents(kit.material + labour) }
}
