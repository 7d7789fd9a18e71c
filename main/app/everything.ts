import { z } from 'zod'
import type { Methods } from '../../shared/contract/index.ts'
import type { Arrival, Store } from '../store/index.ts'
import { lengthInput } from './length-input.ts'
import { readPriceText } from './price-file.ts'
import type { Prices } from './prices.ts'
import { productInput } from './product-input.ts'
import { type Emit, ServiceError } from './service-types.ts'
import { statementInput } from './statement-input.ts'

/** The largest file of everything: some thousands of jobs. */
export const LONGEST_EVERYTHING = 3_500_000
const KIND = 'kerfwright everything'
const VERSION = 1

const id = z.string().min(1).max(100)
const time = z.iso.datetime()

const file = z.strictObject({
  kind: z.literal(KIND),
  version: z.literal(VERSION),
  madeAt: time,
  jobs: z
    .array(z.strictObject({ id, name: z.string().max(500), savedAt: time, statement: statementInput }))
    .max(20_000),
  offcuts: z
    .array(
      z.strictObject({
        id,
        product: productInput,
        length: lengthInput,
        fromJob: z.string().max(500),
        addedAt: time,
      }),
    )
    .max(20_000),
  /** text of the user's own price book; null: the sample was in use */
  prices: z.string().nullable(),
})

/** Everything the user has made, out to one file and in from it. */
export interface Everything {
  readonly file: () => Methods['everything.export'][1]
  /** All of it or nothing; what is here is never overwritten. */
  readonly take: (input: Methods['everything.import'][0]) => Methods['everything.import'][1]
}

export function everythingService(store: Store, prices: Prices, now: () => Date, emit: Emit): Everything {
  return {
    file: () => {
      const madeAt = now().toISOString()
      const jobs = store.jobs.list().flatMap(({ id }) => {
        const job = store.jobs.read(id)
        return job === null ? [] : [{ id, name: job.name, savedAt: job.savedAt, statement: job.statement }]
      })
      const all = {
        kind: KIND,
        version: VERSION,
        madeAt,
        jobs,
        offcuts: store.offcuts.list(),
        prices: store.priceBook.read()?.text ?? null,
      }
      return {
        fileName: `kerfwright everything ${madeAt.slice(0, 10)}.json`,
        text: `${JSON.stringify(all, null, 1)}\n`,
      }
    },
    take: ({ text }) => {
      const read = readFile(text)
      if (read.prices !== null) mustRead(read.prices)
      const arrived = store.takeEverything(read)
      const takesPrices = read.prices !== null && store.priceBook.read() === null
      if (takesPrices && read.prices !== null) prices.take({ text: read.prices })
      if (arrived.offcuts > 0) emit('offcuts.changed', { count: store.offcuts.list().length })
      return {
        ...arrived,
        prices: read.prices === null ? 'none in the file' : takesPrices ? 'taken' : 'own kept',
      }
    },
  }
}

function readFile(text: string): Arrival & { readonly prices: string | null } {
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch (error) {
    throw refused(`it is not JSON: ${error instanceof Error ? error.message : ''}`)
  }
  const version = (data as { version?: unknown } | null)?.version
  if (typeof version === 'number' && version > VERSION)
    throw refused(
      `a newer program made it (version ${version}; this one reads ${VERSION}). Update the program`,
    )
  const read = file.safeParse(data)
  if (read.success) return read.data
  const [issue] = read.error.issues
  throw refused(`${issue?.path.join('.') || 'the file'}: ${issue?.message ?? 'is not what it holds'}`)
}

function mustRead(text: string): void {
  const book = readPriceText(text)
  if (book.ok) return
  const [first] = book.error
  throw refused(`its price book: ${first?.path ?? ''} ${first?.message ?? ''}`)
}

function refused(why: string): ServiceError {
  return new ServiceError('bad-input', `Nothing was taken from the file: ${why}.`)
}
