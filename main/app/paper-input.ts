import { z } from 'zod'
import { PAPERS, SHEET_IDS } from '../../core/papers/index.ts'
import { statementInput } from './statement-input.ts'

const date = z.union([z.literal(''), z.iso.date()])

/** Which sheets, on what paper. */
export const paperInput = z.strictObject({
  statement: statementInput,
  jobId: z.string().min(1).max(100).optional(),
  only: z.array(z.enum(SHEET_IDS)).min(1).max(SHEET_IDS.length),
  page: z.strictObject({ paper: z.enum(PAPERS), scale: z.int().min(1).max(1000).nullable() }),
  date,
  revision: z.string().max(40),
})
