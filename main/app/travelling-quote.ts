import { z } from 'zod'
import { writePriceBook } from '../../core/pricing/index.ts'
import type { Cents } from '../../core/units/index.ts'
import type { KeptQuote } from '../store/index.ts'
import { firmInput } from './firm-file.ts'
import { lengthInput } from './length-input.ts'
import { readPriceText } from './price-file.ts'
import { productInput } from './product-input.ts'
import type { MadeFrom } from './quote-service.ts'
import { statementInput } from './statement-input.ts'

/** A quote's paper: a page or a few, with the firm's logo. */
const LONGEST_PAPER = 8_000_000

/** What a quote was made from, its price book as a price file has it, so that the same reader judges both. */
const madeFrom = z.strictObject({
  statement: statementInput,
  book: z.string(),
  rack: z
    .array(z.strictObject({ product: productInput, length: lengthInput, count: z.int().min(1) }))
    .max(20_000),
  firm: firmInput,
})

/** A sent quote as it travels in a file of everything. */
export const travellingQuote = z.strictObject({
  jobId: z.string().min(1).max(100),
  number: z.int().min(1).max(1_000_000),
  revision: z.int().min(1).max(10_000),
  date: z.iso.date(),
  sentAt: z.iso.datetime(),
  price: z.int(),
  madeFrom,
  pdf: z
    .base64()
    .max(LONGEST_PAPER)
    .refine((text) => Buffer.from(text.slice(0, 8), 'base64').toString('latin1').startsWith('%PDF'), {
      error: 'is no PDF',
    }),
})

export type TravellingQuote = z.infer<typeof travellingQuote>

export function packQuote({ madeFrom: text, pdf, ...sent }: KeptQuote): TravellingQuote {
  const { book, ...from } = JSON.parse(text) as MadeFrom
  return {
    ...sent,
    madeFrom: { ...from, book: JSON.stringify(writePriceBook(book)), rack: [...from.rack] },
    pdf: Buffer.from(pdf).toString('base64'),
  }
}

/** The quote as it is kept; null where the price book in it cannot be read. */
export function unpackQuote({ madeFrom: from, pdf, ...sent }: TravellingQuote): KeptQuote | null {
  const book = readPriceText(from.book)
  if (!book.ok) return null
  const made: MadeFrom = { ...from, book: book.value }
  return {
    ...sent,
    price: sent.price as Cents,
    madeFrom: JSON.stringify(made),
    pdf: new Uint8Array(Buffer.from(pdf, 'base64')),
  }
}
