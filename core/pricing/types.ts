import type { Cause, JointKind, ProductClass } from '../frame/index.ts'
import type { Cents, Share, Ticks, UnitPrice } from '../units/index.ts'
import type { CalendarStep } from './calendar.ts'

/** Of which day a price is, and whose. */
export interface PriceSource {
  /** ISO date */
  readonly date: string
  readonly supplier: string
}

/** Who sells, and what bringing one order costs, however much it brings (one fee an order: common practice, no source). */
export interface Supplier {
  readonly name: string
  /** null: not stated, so that it counts as nothing and that is said */
  readonly delivery: Cents | null
  /** an order of at least so much, before tax, is brought free; null: none is */
  readonly freeFrom: Cents | null
}

/** What one board of a length costs, and on what terms. */
export interface StockTerms {
  readonly price: Cents
  /** the supplier's own code for this length */
  readonly code: string
  /** how plans and lines call it where its code is not enough: codes of two suppliers may be the same */
  readonly id?: string
  readonly supply?: number
  readonly pack?: number
  readonly minimum?: number
  /** what each costs once that many are bought */
  readonly breaks?: readonly { readonly from: number; readonly price: Cents }[]
}

/** A length at another supplier; day where it is not the book's. */
export interface StockOffer extends StockTerms {
  readonly supplier: string
  readonly date?: string
}

/** One length on sale; day and supplier of its price where they are not the book's. */
export interface StockPrice extends StockTerms, Partial<PriceSource> {
  readonly length: Ticks
  /** the same at other suppliers */
  readonly offers?: readonly StockOffer[]
}

/** A good at another supplier, by the book's unit; day where it is not the book's. */
export interface GoodOffer {
  readonly supplier: string
  readonly price: UnitPrice
  /** smallest amount sold, in 1/1000 unit */
  readonly pack: number
  readonly code: string
  readonly date?: string
}

/** A lumber product on the yard's list. */
export interface LumberProduct {
  readonly product: ProductClass
  readonly useClass: string
  readonly code: string
  readonly substitutes: readonly string[]
  readonly stock: readonly StockPrice[]
}

/** One good; day and supplier of its price where they are not the book's. */
export interface GoodPrice extends Partial<PriceSource> {
  readonly sku: string
  readonly label: string
  /** sold by */
  readonly unit: string
  readonly code: string
  readonly price: UnitPrice
  /** smallest amount sold, in 1/1000 unit: a box, a bag, a roll. Quantities are rounded up to whole packs. */
  readonly pack: number
  readonly note: string
  /** the same at other suppliers */
  readonly offers?: readonly GoodOffer[]
}

export interface LabourRate {
  readonly id: string
  readonly label: string
  readonly unit: string
  /** crew hours per unit, in 1/100,000 hour */
  readonly crewHours: number
  readonly workers: number
  readonly confidence: string
}

/** What one joint takes, as real money: material from the goods list, and minutes. */
export interface JointKit {
  readonly kind: JointKind
  /** material of one joint, a whole number of cents; blocks behind one of a rim are offcuts, or boards with a line of their own */
  readonly material: Cents
  readonly sku: string
  readonly label: string
  /** worker minutes of one joint */
  readonly minutes: number
}

/** Dated prices and production rates. */
export interface PriceBook {
  readonly version: number
  readonly name: string
  /** ISO date */
  readonly date: string
  readonly supplier: string
  readonly invented: boolean
  /** those whose deliveries are stated; empty: deliveries are as each job states them */
  readonly suppliers: readonly Supplier[]
  readonly lumber: readonly LumberProduct[]
  readonly goods: readonly GoodPrice[]
  readonly rates: readonly LabourRate[]
  readonly joints: readonly JointKit[]
  /** loaded rate, cents per worker hour */
  readonly labourRate: Cents
  readonly crewSize: number
}

export type LineGroup =
  | 'lumber'
  | 'decking'
  | 'spares'
  | 'hardware'
  | 'fasteners'
  | 'concrete'
  | 'other material'
  | 'joints'
  | 'labour'
  | 'other'

/** What was counted and looked up for a line of which something is stated by hand. */
export interface Overridden {
  /** which of the two is stated */
  readonly quantity: boolean
  readonly price: boolean
  readonly computed: Pick<Line, 'thousandths' | 'price' | 'amount'>
}

/** One printed line: quantity × unit price, rounded once. */
export interface Line {
  readonly id: string
  readonly group: LineGroup
  readonly label: string
  readonly code: string
  /** in 1/1000 unit; for labour, worker hours */
  readonly thousandths: number
  readonly unit: string
  readonly price: UnitPrice
  readonly amount: Cents
  /** counts toward M (material, taxed), L (labour) or O (other) */
  readonly part: 'material' | 'labour' | 'other'
  readonly cause: Cause
  /** absent where all of it is computed */
  readonly overridden?: Overridden
  /** day and supplier of the price, where they are not the book's */
  readonly source?: PriceSource
}

/** Something stated by hand for a line that does not count: the line is gone, or cannot hold it. */
export interface IdleLine {
  /** id of the line as the job states it */
  readonly line: string
  /** the line in words, as far as they are known */
  readonly label: string
  readonly message: string
  readonly fix: string
}

export interface Totals {
  readonly material: Cents
  readonly tax: Cents
  readonly labour: Cents
  readonly other: Cents
  readonly direct: Cents
  readonly contingency: Cents
  readonly overhead: Cents
  readonly cost: Cents
  readonly price: Cents
  readonly priceTax: Cents
  readonly priceWithTax: Cents
  /** price ÷ outline area, or cost ÷ area where an owner builds; cents per square foot */
  readonly perSquareFoot: Cents
  readonly perSquareFootOf: 'price' | 'cost'
  readonly method: 'margin' | 'markup' | 'none'
  readonly methodShare: Share
  /** clock hours of the crew and paid hours, in 1/100 hour */
  readonly crewHours: number
  readonly workerHours: number
}

export interface Pricing {
  readonly lines: readonly Line[]
  /** kept in the job, and counted nowhere */
  readonly idle: readonly IdleLine[]
  readonly totals: Totals
  /** working days of the crew by stage */
  readonly calendar: readonly CalendarStep[]
  readonly bookName: string
  readonly bookDate: string
}

/** Named faults: what has no price, so that no total can be trusted. */
export interface PriceFault {
  readonly subject: string
  readonly message: string
  readonly fix: string
}
