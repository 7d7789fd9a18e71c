import {
  type FieldSpec,
  type FieldValue,
  type Job,
  type JsonValue,
  printFieldValue,
  readValue,
  type Spot,
} from '../../core/job/index.ts'
import { fail, feet, inches, ok, printInches, type Result, ticks } from '../../core/units/index.ts'

/** Value of a field in its own unit, out of a complete job. */
export function valueAt(job: Job, path: string): FieldValue | undefined {
  let value: unknown = job
  for (const key of path.split('.')) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined
    value = (value as { readonly [key: string]: unknown })[key]
  }
  return value as FieldValue | undefined
}

/** A value as it stands in its field; what a choice is called belongs to the list of choices. */
export function fieldText(spec: FieldSpec, value: FieldValue | undefined): string {
  if (value === undefined) return ''
  if (spec.kind === 'choice' || spec.kind === 'flag') return String(value)
  return printQuantity(spec, value)
}

const IN_INCHES: readonly FieldSpec['section'][] = ['ground', 'decking', 'stairs', 'guard', 'cutting']

/** A value in words, lengths that the trade says in inches (spacing, tube, kerf, frost) in inches. */
export function printQuantity(spec: FieldSpec, value: FieldValue): string {
  const told =
    IN_INCHES.includes(spec.section) || (spec.max ?? 0) <= feet(5) || spec.path === 'site.frostDepth'
  const short = told && spec.kind === 'length' && typeof value === 'number'
  return short ? printInches(ticks(value)) : printFieldValue(spec, value)
}

/** A stated value that may be anything, as text for its field. */
export function statedText(value: JsonValue): string {
  return typeof value === 'string' ? value : JSON.stringify(value)
}

/** A typed text as its value in the field's own unit; else one sentence on what is wrong and what would be right. */
export function readText(spec: FieldSpec, text: string): Result<FieldValue, string> {
  const read = readValue(spec, bareFeet(spec, text) ?? text)
  if (read.ok) return ok(read.value)
  const [first] = read.error
  return fail(first ? faultSentence(first) : `${spec.label} cannot be read.`)
}

/** Fields whose sizes the trade says in feet, and the largest bare number that is taken for feet: above it are inches. */
const SAID_IN_FEET: ReadonlySet<string> = new Set(['size.width', 'size.depth'])
const MOST_BARE_FEET = 60

/** A bare number in a deck's width or depth as feet, `16` as `16 ft`; null where the text says its unit or is no such field. */
function bareFeet(spec: FieldSpec, text: string): string | null {
  const number = /^\s*(\d{1,2}(?:\.\d+)?)\s*$/.exec(text)?.[1]
  return number !== undefined && SAID_IN_FEET.has(spec.path) && Number(number) <= MOST_BARE_FEET
    ? `${number} ft`
    : null
}

/** Says how a bare number is read while it stands in its field; '' where the text says so itself. */
export function feetNote(spec: FieldSpec, text: string): string {
  const feetText = bareFeet(spec, text)
  const read = feetText === null ? null : readValue(spec, feetText)
  return read?.ok === true ? `read as feet: ${printQuantity(spec, read.value)}` : ''
}

/** A value as it is written into the statement: quantities as a person writes them, counts as numbers. */
export function statedForm(spec: FieldSpec, value: FieldValue): JsonValue {
  if (typeof value === 'number' && spec.kind !== 'count' && spec.kind !== 'psf')
    return printQuantity(spec, value)
  if (typeof value !== 'object') return value
  // entries are stated by the part that lists them
  if (spec.entries !== undefined) throw new Error(`${spec.path} has no field`)
  return (value as readonly Spot[]).map(({ x, y, z }) => ({ x, y, z }))
}

/** One sentence for a fault, ending in what would be right. */
export function faultSentence(fault: { readonly message: string; readonly fix: string }): string {
  const bare = (text: string) => text.replace(/[.\s]+$/, '')
  const message = fault.message.charAt(0).toUpperCase() + bare(fault.message).slice(1)
  return fault.fix === '' ? `${message}.` : `${message}: ${bare(fault.fix)}.`
}

/** What one press of an arrow key adds: a step of the trade for a field of this reach, in the field's own unit. */
export function nudgeStep(spec: FieldSpec): number {
  switch (spec.kind) {
    case 'count':
      return 1
    case 'psf':
      return (spec.max ?? 0) > 500 ? 250 : 5
    case 'share':
      return 100
    case 'money':
      return (spec.max ?? 0) > 1_000_000 ? 1_000 : 100
    default:
      return lengthStep(spec)
  }
}

function lengthStep(spec: FieldSpec): number {
  const most = spec.max ?? inches(12)
  if (spec.section === 'size') return inches(spec.path === 'size.height' ? 1 : 6)
  if (most <= inches(3)) return inches(1 / 16)
  return most <= inches(13) ? inches(1 / 2) : inches(1)
}

/** The value one or more steps on, on the step's own grid and within bounds. */
export function nudged(spec: FieldSpec, value: number, steps: number): number {
  const step = nudgeStep(spec)
  const grid = steps > 0 ? Math.floor(value / step) : Math.ceil(value / step)
  const next = (grid + steps) * step
  return Math.min(spec.max ?? next, Math.max(spec.min ?? next, next))
}
