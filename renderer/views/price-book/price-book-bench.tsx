import { PriceBookPart } from '../price/price-book.tsx'
import { SplitPart } from './split-part.tsx'

/** Whose prices they are and how they come in; and what the open job is bought for with them. */
export function PriceBookBench() {
  return (
    <>
      <PriceBookPart />
      <SplitPart />
    </>
  )
}
