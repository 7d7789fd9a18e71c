import type { Line, PriceBook } from '../types.ts'

const prefix = 'delivery-'

/**
 * Whether deliveries are counted by the suppliers' fees; a sum or trips stated in the job are then not added. While no
 * fee is stated, what the job states counts on.
 */
export function countsDeliveries({ suppliers }: Pick<PriceBook, 'suppliers'>): boolean {
  return suppliers.some(({ delivery }) => delivery !== null)
}

export function deliveryLineId(supplier: string): Line['id'] {
  return `${prefix}${supplier}`
}

export function isDeliveryLine({ id }: Pick<Line, 'id'>): boolean {
  return id.startsWith(prefix)
}
