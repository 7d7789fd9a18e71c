import { z } from 'zod'
import { lumberGrades, lumberSizes, lumberSpecies, lumberTreatments } from '../../core/data/index.ts'
import type { ProductClass } from '../../core/frame/index.ts'

/** A product class by the words of the job's fields. */
export const productInput: z.ZodType<ProductClass> = z.strictObject({
  size: z.enum(lumberSizes),
  species: z.enum(lumberSpecies),
  grade: z.enum(lumberGrades),
  treatment: z.enum(lumberTreatments),
})
