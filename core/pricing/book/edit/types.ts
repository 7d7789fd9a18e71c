import type { Ticks } from '../../../units/index.ts'

/** What a change of a price book is about. */
export type BookRow =
  | { readonly of: 'board'; readonly product: string; readonly length: Ticks; readonly supplier: string }
  /** a board with all its lengths */
  | { readonly of: 'product'; readonly product: string }
  | { readonly of: 'good'; readonly sku: string; readonly supplier: string }
  | { readonly of: 'rate'; readonly id: string }
  | { readonly of: 'joint'; readonly kind: string }
  | { readonly of: 'supplier'; readonly name: string }
  | { readonly of: 'book' }

/** What of a row can be written over. */
export const BOOK_FIELDS = [
  'price',
  'code',
  'date',
  'pack',
  'minimum',
  'supply',
  'breaks',
  'crewHours',
  'workers',
  'material',
  'minutes',
  'name',
  'delivery',
  'freeFrom',
  'labourRate',
  'crewSize',
] as const
export type BookField = (typeof BOOK_FIELDS)[number]

/** One change, with texts as a person writes them. */
export type BookEdit =
  | { readonly kind: 'set'; readonly row: BookRow; readonly field: BookField; readonly text: string }
  /** a board or a good at a supplier who did not sell it so far */
  | { readonly kind: 'add price'; readonly row: BookRow; readonly price: string; readonly code: string }
  | {
      readonly kind: 'add length'
      readonly product: string
      readonly length: string
      readonly supplier: string
      readonly price: string
      readonly code: string
    }
  /** a board that the book did not have, with its first length */
  | {
      readonly kind: 'add product'
      readonly size: string
      readonly species: string
      readonly grade: string
      readonly treatment: string
      readonly useClass: string
      readonly length: string
      readonly supplier: string
      readonly price: string
      readonly code: string
    }
  /** a good that jobs may need and the book has not */
  | {
      readonly kind: 'add good'
      readonly sku: string
      readonly supplier: string
      readonly price: string
      readonly code: string
    }
  | {
      readonly kind: 'add supplier'
      readonly name: string
      readonly delivery: string
      readonly freeFrom: string
    }
  /** a price, a length with its last price, a board with all its lengths, or a supplier with all prices of that supplier */
  | { readonly kind: 'remove'; readonly row: BookRow }

/** What is wrong with an edit, by its place in the list of edits. */
export interface EditFault {
  readonly edit: number
  readonly message: string
  readonly fix: string
}

/** A cell or row that cannot be changed so. */
export interface Refusal {
  readonly message: string
  readonly fix: string
}
