export { atThisBook } from './at-this-book.ts'
export { type EditedBook, editBook } from './book/edit/edit-book.ts'
export { goodOf, stockOf, stockSellers } from './book/edit/sellers-of.ts'
export { withSupplier } from './book/edit/stated-supplier.ts'
export * from './book/edit/types.ts'
export { readPriceBook } from './book/read-price-book.ts'
export { writePriceBook } from './book/write-price-book.ts'
export { bookAge, OLD_AFTER_DAYS } from './book-age.ts'
export { type CalendarStep, workCalendar } from './calendar.ts'
export { type ConcreteWays, concreteWays, leastConcrete } from './concrete-ways.ts'
export { type ClassToCut, type CutJobs, cutJobs, type Needs } from './cut-jobs.ts'
export { type JointCost, jointCost } from './joint-cost.ts'
export { hoursOf } from './lines/labour-lines.ts'
export type { PlannedClass } from './lines/lumber-lines.ts'
export { cannotHold } from './lines/stated-lines.ts'
export type { OffcutsOnHand } from './offcut-stock.ts'
export { labelOfLine, overrideWords } from './override-words.ts'
export { type Priceable, priceJob } from './price-job.ts'
export { type StalePrices, sourceOf, stalePrices } from './price-source.ts'
export { productKey, productName } from './product-name.ts'
export { SAMPLE_BOOK } from './sample-book.ts'
export { isModelled, leaveOut, scopeTopics, topicOfLine } from './scope.ts'
export { type BoughtFrom, bookAsBought, leastPrices } from './suppliers/as-bought.ts'
export { goodThing, stockThing } from './suppliers/book-from.ts'
export { isDeliveryLine } from './suppliers/counted.ts'
export { type SupplierOrder, supplierOrders } from './suppliers/deliveries.ts'
export {
  goodOffers,
  hasSeveralSuppliers,
  isFromYard,
  stockOffers,
  suppliersOf,
} from './suppliers/offers.ts'
export type * from './types.ts'
