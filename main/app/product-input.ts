import { z } from 'zod'
import { lumberSizes } from '../../core/data/index.ts'
import type { ProductClass } from '../../core/frame/index.ts'

/** A product class by the words of the job's fields. */
export const productInput: z.ZodType<ProductClass> = z.strictObject({
  size: z.enum(lumberSizes),
  species: z.enum(['SP', 'DFL', 'HF', 'SPF', 'RW', 'WC']),
  grade: z.enum(['No.2']),
  treatment: z.enum(['treated', 'untreated']),
})
