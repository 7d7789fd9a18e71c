import { join } from 'node:path'
import type { z } from 'zod'
import type { MethodName } from '../../shared/contract/index.ts'
import { openStore } from '../store/index.ts'
import { createPool, Stopped } from '../workers/index.ts'
import { everythingService } from './everything.ts'
import { INPUTS } from './inputs.ts'
import { jobService } from './job-service.ts'
import { keptCutList } from './kept-cut-list.ts'
import { keptDays } from './kept-days.ts'
import { keptWindow } from './kept-window.ts'
import { type MethodTable, methodTable } from './methods.ts'
import { paperService } from './paper-service.ts'
import { pdfThread } from './pdf-thread.ts'
import { priceService } from './prices.ts'
import { rackService } from './rack.ts'
import { rateService } from './rate-service.ts'
import { ServiceError, type ServiceOptions, type Services } from './service-types.ts'

/** The two things that differ from run to run, named so that a test can fix them. */
export interface Ambient {
  readonly now: () => Date
  readonly newId: () => string
}

const AMBIENT: Ambient = { now: () => new Date(), newId: () => crypto.randomUUID() }

/** Puts the program together behind its contract. Rejects with `store-unusable` where the store is refused. */
export async function createServices(options: ServiceOptions, ambient: Ambient = AMBIENT): Promise<Services> {
  const opened = openStore({ file: join(options.storeFolder, 'jobs.db'), ...ambient })
  if (!opened.ok) throw new ServiceError('store-unusable', opened.error.message)
  const store = opened.value
  let copiedOn = ''
  const backUp = () => {
    const day = ambient.now().toISOString().slice(0, 10)
    if (day === copiedOn) return
    copiedOn = day
    const made = store.backUp(day)
    if (!made.ok) options.trouble?.(made.error)
  }
  backUp()
  const pool = options.pool ?? createPool({ workerPath: options.workerPath })
  const rack = rackService(store, ambient.now, ambient.newId, options.emit)
  const prices = priceService(store, ambient.now, options.emit)
  const table = methodTable({
    info: { version: options.version, door: options.door },
    jobs: jobService(store, ambient.now, ambient.newId, options.emit),
    rack,
    everything: everythingService(store, prices, ambient.now, options.emit),
    cutList: keptCutList(store),
    days: keptDays(store),
    window: keptWindow(store),
    pool,
    prices,
    rates: rateService(store, prices),
    papers: paperService({
      store,
      pool,
      prices,
      rack,
      now: ambient.now,
      makePdf: pdfThread(options.paperWorkerPath),
    }),
    emit: options.emit,
  })
  let closing: Promise<void> | null = null
  return {
    call: async (method, input) => {
      if (closing !== null) throw new ServiceError('stopped', 'The program is closing.')
      if (!isMethod(method, table)) {
        throw new ServiceError('unknown-method', `There is no method "${method.slice(0, 80)}".`)
      }
      if (table[method].mutating) backUp()
      try {
        return await callMethod(table, method, input)
      } catch (error) {
        if (error instanceof Stopped) throw new ServiceError('stopped', error.message)
        throw error
      }
    },
    close: () => {
      closing ??= (options.pool === undefined ? pool.close() : Promise.resolve()).then(() => store.close())
      return closing
    },
  }
}

/** Characters of a fault that are told of an input. */
const LONGEST_TOLD = 300

function isMethod(name: string, table: MethodTable): name is MethodName {
  return Object.hasOwn(table, name)
}

function callMethod<M extends MethodName>(table: MethodTable, method: M, input: unknown): unknown {
  const parsed = INPUTS[method].safeParse(input)
  if (!parsed.success) throw new ServiceError('bad-input', sentenceOf(method, parsed.error))
  return table[method].run(parsed.data)
}

function sentenceOf(method: string, error: z.ZodError): string {
  const [first] = error.issues
  const where = first === undefined || first.path.length === 0 ? 'the input' : first.path.join('.')
  return `${method}: ${where}: ${first === undefined ? 'not what the method takes' : inWords(first)}.`
}

function inWords({ message }: z.core.$ZodIssue): string {
  const [, wanted, got] = /^Invalid input: expected (\w+), received (\w+)$/.exec(message) ?? []
  if (got === 'undefined') return `missing; it must be of the kind "${wanted}"`
  if (wanted !== undefined) return `of the kind "${got}"; it must be of the kind "${wanted}"`
  // the validator repeats names it was sent, however long
  const told = message.length > LONGEST_TOLD ? `${message.slice(0, LONGEST_TOLD)}…` : message
  return told.replace(/[.\s]+$/, '')
}
