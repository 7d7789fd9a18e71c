import { dirname, resolve } from 'node:path'
import { faultWords, type RowFault, type Source } from '../../core/cut-list/index.ts'
import {
  type Fault,
  type JobStatement,
  type PlacedJson,
  readJobText,
  readPlacedJson,
} from '../../core/job/index.ts'
import { type PriceBook, SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { readTextFile } from '../app/files.ts'
import { faultLines, type Output } from './output.ts'
import { printable } from './text-table.ts'

/** A job file as read: its statement, and the price book file that it names, '' for none. */
export interface JobFile {
  readonly path: string
  readonly text: string
  readonly statement: JobStatement
  readonly book: string
}

/** A price book, and where it came from. */
export interface PricesFile {
  readonly book: PriceBook
  readonly source: 'the command line' | 'the job' | 'the sample'
  /** as it was named; null for the sample */
  readonly path: string | null
}

/** A job file, or null after its faults were told. */
export function readJobFile(path: string, output: Output): JobFile | null {
  const text = readTextFile(path)
  if (!text.ok) {
    output.warn(`${text.error}\n`)
    return null
  }
  const read = readJobText(text.value)
  if (read.ok) {
    const { statement, read: job } = read.value
    return { path, text: text.value, statement, book: job.job.pricing.book.trim() }
  }
  output.warn(faultLines(path, read.error))
  return null
}

/** The price book of the command line, else that named by the job, else the sample; null after its faults were told. */
export async function readPrices(
  option: string | null,
  job: JobFile | null,
  output: Output,
): Promise<PricesFile | null> {
  const named = option ?? job?.book ?? ''
  if (named === '') return { book: SAMPLE_BOOK, source: 'the sample', path: null }
  if (option !== null || job === null) {
    const read = await readBook(named)
    if (read.book !== null) return { book: read.book, source: 'the command line', path: named }
    output.warn(read.faults)
    return null
  }
  const path = resolve(dirname(job.path), named)
  const read = await readBook(path)
  if (read.book !== null) return { book: read.book, source: 'the job', path: named }
  output.warn(faultLines(job.path, [bookFault(job, path)]) + read.faults)
  return null
}

/** Faults of a list, file:line first, then the row and column as a spreadsheet counts them. */
export function listFaultLines(
  files: { readonly [source in Source]: string },
  faults: readonly RowFault[],
): string {
  return faults
    .map((fault) => `${printable(`${files[fault.source]}:${fault.line}: ${faultWords(fault)}`)}\n`)
    .join('')
}

/** Which price book an answer rests on, for readers of its JSON. */
export function pricesUsed({ book: { name, date, supplier, invented }, source, path }: PricesFile) {
  return { name, date, supplier, invented, source, path }
}

async function readBook(
  path: string,
): Promise<
  { readonly book: PriceBook; readonly faults: '' } | { readonly book: null; readonly faults: string }
> {
  const text = readTextFile(path)
  if (!text.ok) return { book: null, faults: `${text.error}\n` }
  const { readPriceText } = await import('../app/price-file.ts')
  const read = readPriceText(text.value)
  return read.ok ? { book: read.value, faults: '' } : { book: null, faults: faultLines(path, read.error) }
}

/** The fault of the field that names a price book which cannot be used, at its place in the job file. */
function bookFault({ text }: JobFile, path: string): Fault {
  const fault = {
    path: 'pricing.book',
    message: `the price book ${path} cannot be used, as said below`,
    fix: 'name another file, seen from the job file’s folder, or leave the field out for the sample prices',
  }
  const json = readPlacedJson(text, { name: 'job', sample: '{}', longest: text.length })
  return json.ok ? { ...fault, ...json.value.placeOf(fault.path) } : fault
}

/** The file that says how a day at the saw went, or null after its faults were told. */
export function readDayFile(path: string, output: Output): PlacedJson | null {
  const text = readTextFile(path)
  if (!text.ok) {
    output.warn(`${text.error}\n`)
    return null
  }
  const read = readPlacedJson(text.value, {
    name: 'day',
    sample: '{ "2x10": { "sawn": [1] } }',
    longest: 1_000_000,
  })
  if (read.ok) return read.value
  output.warn(faultLines(path, read.error))
  return null
}
