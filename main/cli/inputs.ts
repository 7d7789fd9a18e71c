import { type JobStatement, readJobText } from '../../core/job/index.ts'
import { type PriceBook, SAMPLE_BOOK } from '../../core/pricing/index.ts'
import { readTextFile } from '../app/files.ts'
import { faultLines, type Output } from './output.ts'

/** A job file's statement, or null after its faults were told. */
export function readJobFile(file: string, output: Output): JobStatement | null {
  const text = readTextFile(file)
  if (!text.ok) {
    output.warn(`${text.error}\n`)
    return null
  }
  const read = readJobText(text.value)
  if (read.ok) return read.value.statement
  output.warn(faultLines(file, read.error))
  return null
}

/** The price book of a file, or the sample; null after its faults were told. */
export async function readPriceFile(file: string | null, output: Output): Promise<PriceBook | null> {
  if (file === null) return SAMPLE_BOOK
  const text = readTextFile(file)
  if (!text.ok) {
    output.warn(`${text.error}\n`)
    return null
  }
  const { readPriceText } = await import('../app/price-file.ts')
  const read = readPriceText(text.value)
  if (read.ok) return read.value
  output.warn(faultLines(file, read.error))
  return null
}

/** Which price book an answer rests on, for readers of its JSON. */
export function pricesUsed({ name, date, supplier, invented }: PriceBook) {
  return { name, date, supplier, invented }
}
