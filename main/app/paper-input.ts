import { z } from 'zod'
import { PAPERS, SHEET_IDS } from '../../core/papers/index.ts'
import { statementInput } from './statement-input.ts'

const date = z.union([z.literal(''), z.iso.date()])

const jobId = z.string().min(1).max(100)
const revision = z.int().min(1).max(10_000)
const page = z.strictObject({
  paper: z.enum(PAPERS),
  scale: z.int().min(1).max(1000).nullable(),
  metric: z.boolean().optional(),
})

/** Quotes: what is asked about them, sent, and read again. */
export const quoteInputs = {
  read: z.strictObject({ statement: statementInput, jobId: jobId.optional(), date }),
  send: z.strictObject({ statement: statementInput, jobId, date: z.iso.date(), page }),
  paper: z.strictObject({ jobId, revision }),
  changeOrder: z.strictObject({ jobId, revision, page }),
}

/** The order, as what. */
export const orderInput = z.strictObject({
  statement: statementInput,
  jobId: jobId.optional(),
  date,
  revision: z.string().max(40),
  as: z.enum(['txt', 'csv']),
})

/** Which sheets, on what paper. */
export const paperInput = z.strictObject({
  statement: statementInput,
  jobId: jobId.optional(),
  only: z.array(z.enum(SHEET_IDS)).min(1).max(SHEET_IDS.length),
  page,
  date,
  revision: z.string().max(40),
})
