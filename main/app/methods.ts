import { fileNameFor } from '../../core/job/index.ts'
import type { AppInfo, MethodName, Methods } from '../../shared/contract/index.ts'
import type { Pool, Task } from '../workers/index.ts'
import type { Everything } from './everything.ts'
import type { JobService } from './job-service.ts'
import type { KeptCutList } from './kept-cut-list.ts'
import type { KeptDays } from './kept-days.ts'
import type { KeptWindow } from './kept-window.ts'
import { listPlanning } from './list-planning.ts'
import type { PaperService } from './paper-service.ts'
import { mustBePriced } from './priced.ts'
import type { Prices } from './prices.ts'
import type { Rack } from './rack.ts'
import type { Rates } from './rate-service.ts'
import type { Emit } from './service-types.ts'

/** One line of the program's surface: what runs, and whether it changes what is stored. */
export interface Method<M extends MethodName> {
  readonly run: (input: Methods[M][0]) => Promise<Methods[M][1]> | Methods[M][1]
  readonly mutating: boolean
}

export type MethodTable = { readonly [M in MethodName]: Method<M> }

export interface Parts {
  readonly info: Omit<AppInfo, 'bookName' | 'bookDate'>
  readonly jobs: JobService
  readonly rack: Rack
  readonly everything: Everything
  readonly cutList: KeptCutList
  readonly days: KeptDays
  readonly window: KeptWindow
  readonly pool: Pool
  readonly prices: Prices
  readonly rates: Rates
  readonly papers: PaperService
  readonly emit: Emit
}

/** Every method of the contract on one page. */
export function methodTable({
  info,
  jobs,
  rack,
  everything,
  pool,
  prices,
  rates,
  papers,
  emit,
  cutList,
  days,
  window,
}: Parts): MethodTable {
  /** tells every window how far a named task is; only its own takes notice */
  const watching = (task: string | undefined): Task =>
    task === undefined ? {} : { task, onProgress: (progress) => emit('work.progress', { task, progress }) }
  const lists = listPlanning(pool, prices)
  return {
    'app.info': {
      mutating: false,
      run: () => ({ ...info, bookName: prices.book().name, bookDate: prices.book().date }),
    },
    'jobs.list': { mutating: false, run: jobs.list },
    // makes the demo on first start, and remembers which job was opened
    'jobs.last': { mutating: true, run: jobs.last },
    'jobs.open': { mutating: true, run: jobs.open },
    'jobs.create': { mutating: true, run: jobs.create },
    'jobs.save': { mutating: true, run: jobs.save },
    'jobs.versions': { mutating: false, run: jobs.versions },
    'jobs.version': { mutating: false, run: jobs.version },
    'jobs.remove': { mutating: true, run: jobs.remove },
    'jobs.bringBack': { mutating: true, run: jobs.bringBack },
    'jobs.removed': { mutating: false, run: jobs.removed },
    'everything.export': { mutating: false, run: everything.file },
    'everything.import': { mutating: true, run: everything.take },
    'prices.current': { mutating: false, run: prices.inUse },
    'prices.import': { mutating: true, run: prices.take },
    'prices.readList': { mutating: false, run: prices.readList },
    'prices.takeList': { mutating: true, run: prices.takeList },
    'prices.takeBack': { mutating: true, run: prices.takeBack },
    'prices.makeAgain': { mutating: true, run: prices.makeAgain },
    'prices.edit': { mutating: true, run: prices.edit },
    'prices.useSample': { mutating: true, run: prices.useSample },
    'prices.export': { mutating: false, run: prices.file },
    'rates.proposed': { mutating: false, run: rates.proposed },
    'rates.take': { mutating: true, run: rates.take },
    'estimate.run': {
      mutating: false,
      run: async ({ edit, statement, jobId, task }) => ({
        edit,
        result: await pool.estimate({
          statement,
          book: prices.book(),
          rack: rack.onHand(jobId),
          givesWay: true,
          ...watching(task),
        }),
      }),
    },
    'estimate.first': {
      mutating: false,
      run: async ({ edit, statement, jobId }) => ({
        edit,
        result: await pool.firstEstimate({ statement, book: prices.book(), rack: rack.onHand(jobId) }),
      }),
    },
    'compare.run': {
      mutating: false,
      run: async ({ edit, statement, jobId, task, from, to, step, exactFits = false }) => {
        const range = { from, to, step, exactFits }
        const onRow = (row: Parameters<Parameters<Pool['compare']>[0]['onRow']>[0]) =>
          emit('compare.row', { edit, row })
        const wanted = { statement, book: prices.book(), rack: rack.onHand(jobId), range, onRow, task }
        return { edit, ...(await pool.compare(wanted)) }
      },
    },
    'sizes.run': {
      mutating: false,
      run: async ({ edit, statement, jobId, task, width, depth }) => {
        const onRow: Parameters<Pool['compareSizes']>[0]['onRow'] = (row) => emit('sizes.row', { edit, row })
        const end = await pool.compareSizes({
          statement,
          book: prices.book(),
          rack: rack.onHand(jobId),
          grid: { width, depth },
          onRow,
          task,
        })
        return { edit, ...end }
      },
    },
    'sizing.run': {
      mutating: false,
      run: async ({ edit, statement, held, task }) => ({
        edit,
        result: await pool.sizeIt({ statement, book: prices.book(), held }, watching(task)),
      }),
    },
    'ground.run': {
      mutating: false,
      run: ({ statement, jobId, found }) =>
        pool.ground({ statement, book: prices.book(), rack: rack.onHand(jobId), found: found ?? null }),
    },
    'cutlist.run': {
      mutating: false,
      run: ({ task, ...request }) => lists.run(request, watching(task)),
    },
    'cutlist.workbook': { mutating: false, run: lists.workbook },
    'cutlist.kept': { mutating: false, run: cutList.read },
    'cutlist.keep': { mutating: true, run: cutList.keep },
    'day.replan': {
      mutating: false,
      run: ({ statement, jobId, task, ...rest }) =>
        pool.planTheRest({ statement, book: prices.book(), rack: rack.onHand(jobId), rest }, watching(task)),
    },
    'day.kept': { mutating: false, run: days.read },
    'day.keep': { mutating: true, run: days.keep },
    'wish.price': {
      mutating: false,
      run: ({ statement, wished, jobId, task }) =>
        pool.wishPrice({ statement, wished, book: prices.book(), rack: rack.onHand(jobId) }, watching(task)),
    },
    'joints.explain': {
      mutating: false,
      run: ({ statement, jobId, runId, at, task }) =>
        pool.explainJoints(
          { statement, book: prices.book(), rack: rack.onHand(jobId), runId, at },
          watching(task),
        ),
    },
    'work.stop': { mutating: false, run: ({ task }) => ({ stopped: pool.stop(task) }) },
    'offcuts.list': { mutating: false, run: rack.list },
    'offcuts.add': { mutating: true, run: rack.add },
    'offcuts.remove': { mutating: true, run: rack.remove },
    'offcuts.takeFromPlan': {
      mutating: true,
      run: async ({ jobId }) => {
        const job = jobs.read(jobId)
        const onHand = rack.onHand(jobId)
        const result = await pool.estimate({
          statement: job.statement,
          book: prices.book(),
          rack: onHand,
          givesWay: false,
        })
        return rack.takeFrom(job, mustBePriced(result, 'The job cannot be cut yet'))
      },
    },
    'papers.preview': { mutating: false, run: papers.preview },
    'papers.make': { mutating: false, run: papers.make },
    'papers.order': { mutating: false, run: papers.order },
    'quotes.read': { mutating: false, run: papers.quotes },
    'quotes.lines': { mutating: false, run: papers.sinceQuote },
    'quotes.send': { mutating: true, run: papers.send },
    'quotes.paper': { mutating: false, run: papers.sentPaper },
    'quotes.changeOrder': { mutating: false, run: papers.changeOrder },
    'firm.read': { mutating: false, run: papers.firm },
    'firm.save': { mutating: true, run: papers.saveFirm },
    'window.kept': { mutating: false, run: window.read },
    'window.keep': { mutating: true, run: window.keep },
    'workbook.make': {
      mutating: false,
      run: async ({ statement, jobId }) => {
        const book = prices.book()
        const result = await pool.estimate({ statement, book, rack: rack.onHand(jobId), givesWay: false })
        const priced = mustBePriced(result, 'There is no workbook yet')
        const { makeWorkbook } = await import('../exports/workbook/index.ts')
        const ground = await pool.groundSheet({
          statement,
          book,
          rack: rack.onHand(jobId),
          found: null,
        })
        const bytes = await makeWorkbook(priced, book, ground.ok ? ground.ground.tubes : null)
        return { fileName: fileNameFor(statement, 'xlsx'), base64: Buffer.from(bytes).toString('base64') }
      },
    },
  }
}
