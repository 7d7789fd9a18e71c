import { PriceBookPart } from '../price/price-book.tsx'
import { BookRowPart } from './book-row.tsx'
import { SplitPart } from './split-part.tsx'

/** What can be added where one stands; whose prices they are and how they come in; and what the open job is bought for with them. */
export function PriceBookBench() {
  return (
    <>
      <BookRowPart />
      <PriceBookPart />
      <SplitPart />
    </>
  )
}
