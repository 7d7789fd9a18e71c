import { z } from 'zod'
import { readPlacedJson } from '../../core/job/index.ts'
import { DEPOSIT_LIMITS, type Firm, NO_FIRM } from '../../core/papers/index.ts'
import { fail, ok, type Result } from '../../core/units/index.ts'
import { logoInput } from './logo-input.ts'

const line = z.string().max(500)

/** Who makes the papers, as a file or the window states it; what is absent is empty. */
export const firmInput = z
  .strictObject({
    name: z.string().max(200),
    lines: z.array(line).max(8),
    logo: logoInput,
    state: z.union([z.literal(''), z.enum(DEPOSIT_LIMITS.map(({ state }) => state))]),
    terms: z.array(z.string().max(2000)).max(40),
    validDays: z.int().min(1).max(365),
    stages: z
      .array(z.strictObject({ label: line, share: z.int().min(0).max(10_000) }))
      .max(12)
      .refine(
        (stages) => stages.length === 0 || stages.reduce((sum, { share }) => sum + share, 0) === 10_000,
        'the shares of the stages must come to 10000, which is 100 %',
      ),
  })
  .partial()
  .transform((stated): Firm => {
    const given = Object.fromEntries(Object.entries(stated).filter(([, value]) => value !== undefined))
    return { ...NO_FIRM, ...given }
  })

/** Reads a firm's file: JSON, comments allowed; a fault is a sentence with its place. */
export function readFirmText(text: string, path: string): Result<Firm, string> {
  const json = readPlacedJson(text, { name: 'firm', sample: '{ "name": "Your firm" }', longest: 1_000_000 })
  if (!json.ok) {
    const [first] = json.error
    return fail(
      `${path}:${first?.line ?? 1}:${first?.column ?? 1}: ${first?.message ?? 'it is not JSON'}; ${first?.fix ?? ''}`,
    )
  }
  const read = firmInput.safeParse(json.value.value)
  if (read.success) return ok(read.data)
  const [issue] = read.error.issues
  const field = issue?.path.join('.') ?? ''
  const place = json.value.placeOf(field)
  return fail(
    `${path}:${place.line}:${place.column}: ${field === '' ? 'the firm' : field}: ${issue?.message ?? 'is not usable'}; a firm has name, lines, logo, state, terms, validDays and stages, each with label and share.`,
  )
}
