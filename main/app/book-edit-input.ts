import { z } from 'zod'
import { BOOK_FIELDS } from '../../core/pricing/index.ts'
import { lengthInput } from './length-input.ts'

/** Cells of one pasted block. */
export const MOST_EDITS = 2000

const text = z.string().max(200)

const row = z.discriminatedUnion('of', [
  z.strictObject({ of: z.literal('board'), product: text, length: lengthInput, supplier: text }),
  z.strictObject({ of: z.literal('product'), product: text }),
  z.strictObject({ of: z.literal('good'), sku: text, supplier: text }),
  z.strictObject({ of: z.literal('rate'), id: text }),
  z.strictObject({ of: z.literal('joint'), kind: text }),
  z.strictObject({ of: z.literal('supplier'), name: text }),
  z.strictObject({ of: z.literal('book') }),
])

/** One change of the price book, with its texts as they were typed. */
export const bookEditInput = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('set'), row, field: z.enum(BOOK_FIELDS), text }),
  z.strictObject({ kind: z.literal('add price'), row, price: text, code: text }),
  z.strictObject({
    kind: z.literal('add length'),
    product: text,
    length: text,
    supplier: text,
    price: text,
    code: text,
  }),
  z.strictObject({
    kind: z.literal('add product'),
    size: text,
    species: text,
    grade: text,
    treatment: text,
    useClass: text,
    length: text,
    supplier: text,
    price: text,
    code: text,
  }),
  z.strictObject({ kind: z.literal('add good'), sku: text, supplier: text, price: text, code: text }),
  z.strictObject({ kind: z.literal('add supplier'), name: text, delivery: text, freeFrom: text }),
  z.strictObject({ kind: z.literal('remove'), row }),
])
