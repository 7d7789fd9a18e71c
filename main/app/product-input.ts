import { z } from 'zod'
import type { ProductClass } from '../../core/frame/index.ts'

/** A product class by the words of the job's fields. */
export const productInput: z.ZodType<ProductClass> = z.strictObject({
  size: z.enum([
    '2x4',
    '2x6',
    '2x8',
    '2x10',
    '2x12',
    '4x4',
    '4x6',
    '6x6',
    '8x8',
    '5/4x6',
    '5/4x6 grooved',
    '1x8',
    '1x10',
    '1x12',
  ]),
  species: z.enum(['SP', 'DFL', 'HF', 'SPF', 'RW', 'WC']),
  grade: z.enum(['No.2']),
  treatment: z.enum(['treated', 'untreated']),
})
