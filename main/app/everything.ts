import { z } from 'zod'
import type { Firm } from '../../core/papers/index.ts'
import type { Methods } from '../../shared/contract/index.ts'
import type { Arrival, KeptQuote, Store } from '../store/index.ts'
import { firmInput } from './firm-file.ts'
import { keptDay, keptDays } from './kept-days.ts'
import { lengthInput } from './length-input.ts'
import { readPriceText } from './price-file.ts'
import type { Prices } from './prices.ts'
import { productInput } from './product-input.ts'
import { type Emit, ServiceError } from './service-types.ts'
import { statementInput } from './statement-input.ts'
import { packQuote, travellingQuote, unpackQuote } from './travelling-quote.ts'

/** The largest file of everything, characters: some thousands of jobs, and some hundred quotes with their papers. */
export const LONGEST_EVERYTHING = 50_000_000
const KIND = 'kerfwright everything'
const VERSION = 2

const id = z.string().min(1).max(100)
const time = z.iso.datetime()

/** What files of the first version hold: they had no quotes, no marks at the saw and no firm. */
const first = {
  kind: z.literal(KIND),
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
}

const file = z.discriminatedUnion('version', [
  z.strictObject({ ...first, version: z.literal(1) }),
  z.strictObject({
    ...first,
    version: z.literal(VERSION),
    quotes: z.array(travellingQuote).max(5_000),
    /** which boards of a job are sawn, by the plan of a product */
    days: z
      .array(z.strictObject({ jobId: id, planId: z.string().min(1).max(200), kept: keptDay }))
      .max(20_000),
    firm: firmInput.nullable(),
  }),
])

/** Everything the user has made, out to one file and in from it. */
export interface Everything {
  readonly file: () => Methods['everything.export'][1]
  /** All of it or nothing; what is here is never overwritten. */
  readonly take: (input: Methods['everything.import'][0]) => Methods['everything.import'][1]
}

export function everythingService(store: Store, prices: Prices, now: () => Date, emit: Emit): Everything {
  const days = keptDays(store)
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
        quotes: jobs.flatMap((job) =>
          store.quotes.list(job.id).flatMap(({ revision }) => {
            const kept = store.quotes.read(job.id, revision)
            return kept === null ? [] : [packQuote(kept)]
          }),
        ),
        days: jobs.flatMap((job) =>
          days.read({ jobId: job.id }).map(({ planId, ...kept }) => ({ jobId: job.id, planId, kept })),
        ),
        firm: firmOf(store),
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
      if (read.firm !== null && store.settings.read('firm') === null)
        store.settings.write('firm', JSON.stringify(read.firm))
      if (arrived.offcuts > 0) emit('offcuts.changed', { count: store.offcuts.list().length })
      return {
        ...arrived,
        prices: read.prices === null ? 'none in the file' : takesPrices ? 'taken' : 'own kept',
      }
    },
  }
}

/** The firm as it was saved; null where none was, or where another version saved it so that this one cannot read it. */
function firmOf(store: Store): Firm | null {
  const text = store.settings.read('firm')
  const read = text === null ? null : firmInput.safeParse(JSON.parse(text))
  return read?.success ? read.data : null
}

function readFile(text: string): Arrival & { readonly prices: string | null; readonly firm: Firm | null } {
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch (error) {
    throw refused(`it is not JSON: ${error instanceof Error ? error.message : ''}`)
  }
  const { kind, version } = (data ?? {}) as { readonly kind?: unknown; readonly version?: unknown }
  if (kind !== KIND) throw refused('kind: it is no file of everything')
  if (typeof version === 'number' && version > VERSION)
    throw refused(
      `a newer program made it (version ${version}; this one reads ${VERSION}). Update the program`,
    )
  const read = file.safeParse(data)
  if (read.success) return arrivalOf(read.data)
  const [issue] = read.error.issues
  throw refused(`${issue?.path.join('.') || 'the file'}: ${issue?.message ?? 'is not what it holds'}`)
}

function arrivalOf(read: z.infer<typeof file>): ReturnType<typeof readFile> {
  if (read.version === 1) return { ...read, quotes: [], days: [], firm: null }
  const quotes = read.quotes.map((quote): KeptQuote => {
    const kept = unpackQuote(quote)
    if (kept === null) throw refused(`the price book of quote ${quote.number} cannot be read`)
    return kept
  })
  const days = read.days.map(({ jobId, planId, kept }) => ({ jobId, planId, text: JSON.stringify(kept) }))
  const ids = new Set(read.jobs.map((job) => job.id))
  const stray = [...quotes, ...days].find(({ jobId }) => !ids.has(jobId))
  if (stray !== undefined) throw refused(`it speaks of a job ${stray.jobId} that it does not hold`)
  return { ...read, quotes, days }
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
