import { z } from 'zod'
import { LONGEST_LIST, MEANINGS } from '../../core/cut-list/index.ts'
import { SIZED_FIELDS } from '../../core/job/index.ts'
import { LONGEST_PRICE_LIST, PRICE_MEANINGS } from '../../core/price-list/index.ts'
import { MAX_TICKS, TICKS_PER_FOOT, TICKS_PER_INCH, ticks } from '../../core/units/index.ts'
import type { MethodName, Methods } from '../../shared/contract/index.ts'
import { STEPS_KEPT } from '../store/index.ts'
import { bookEditInput, MOST_EDITS } from './book-edit-input.ts'
import { dayInput } from './day-input.ts'
import { LONGEST_EVERYTHING } from './everything.ts'
import { firmInput } from './firm-file.ts'
import { keptDay } from './kept-days.ts'
import { windowMemory } from './kept-window.ts'
import { lengthInput as length } from './length-input.ts'
import { orderInput, paperInput, quoteInputs } from './paper-input.ts'
import { LONGEST_PRICES } from './price-file.ts'
import { productInput } from './product-input.ts'
import { statementInput } from './statement-input.ts'

/** Most widths in one comparison: one per half inch over twenty feet. */
export const MOST_WIDTHS = 481

/** Most sizes of one grid. */
const MOST_SIZES = 400

/** Most joints of a run explained at once. */
const MOST_POINTS = 60

const nothing = z.strictObject({})
const id = z.string().min(1).max(100)
const edit = z.int().nonnegative()
const task = z.string().min(1).max(60).optional()
const revision = z.int().positive()

const widths = z
  .strictObject({
    edit,
    statement: statementInput,
    jobId: id.optional(),
    task,
    from: length,
    to: length,
    step: length,
    exactFits: z.boolean().optional(),
  })
  .refine((range) => range.from <= range.to, { message: 'must not be greater than to', path: ['from'] })
  .refine((range) => range.step >= TICKS_PER_INCH / 2, { message: 'must be at least 1/2 in', path: ['step'] })
  .refine((range) => (range.to - range.from) / range.step < MOST_WIDTHS, {
    message: `makes more than ${MOST_WIDTHS} widths; choose a larger step`,
    path: ['step'],
  })

const steps = z
  .strictObject({ from: length, to: length, step: length })
  .refine((side) => side.from <= side.to, { message: 'must not be greater than to', path: ['from'] })
  .refine((side) => side.step >= TICKS_PER_INCH, { message: 'must be at least 1 in', path: ['step'] })

const sizes = z
  .strictObject({
    edit,
    statement: statementInput,
    jobId: id.optional(),
    task,
    width: steps,
    depth: steps,
  })
  .refine(({ width, depth }) => countOf(width) * countOf(depth) <= MOST_SIZES, {
    message: `makes more than ${MOST_SIZES} sizes; choose larger steps`,
    path: ['width'],
  })

function countOf({ from, to, step }: z.infer<typeof steps>): number {
  return Math.floor((to - from) / step) + 1
}

const label = z.string().max(200)
const timelinePlace = z.int().nonnegative()
const timeline = z
  .strictObject({
    keep: timelinePlace,
    add: z.array(z.strictObject({ label, statement: statementInput })).max(STEPS_KEPT + 1),
    at: timelinePlace,
  })
  .refine(({ keep, add, at }) => at < keep + add.length, {
    message: 'lies beyond the last state',
    path: ['at'],
  })

/** How far a hole is off its place, in ticks either way. */
const off = z.int().min(-MAX_TICKS).max(MAX_TICKS).transform(ticks)

const listText = z.string().max(LONGEST_LIST)
const columns = z.array(z.enum(MEANINGS)).max(1000)
const sawLength = z.int().min(0).max(TICKS_PER_FOOT).transform(ticks)

const listInput = {
  text: listText,
  stockText: listText.optional(),
  columns: columns.optional(),
  stockColumns: columns.optional(),
  kerf: sawLength,
  endTrim: sawLength,
}

/** A list as it is typed; the same judges what the store gives back. */
export const keptList = z.strictObject({
  text: listText,
  stockText: listText,
  columns: columns.nullable(),
  stockColumns: columns.nullable(),
  kerf: z.string().max(100),
  endTrim: z.string().max(100),
})

/** Columns of a price list that are looked at. */
const MOST_COLUMNS = 200
const priceListInput = z.strictObject({
  text: z.string().max(LONGEST_PRICE_LIST),
  columns: z.array(z.enum(PRICE_MEANINGS)).max(MOST_COLUMNS).nullable(),
  date: z.string().max(10),
  supplier: z.string().max(200),
  leaveOutUnknown: z.boolean(),
  beside: z.boolean(),
})

/** What each method takes. Everything that comes through a door is judged by this before a handler sees it. */
export const INPUTS: { readonly [M in MethodName]: z.ZodType<Methods[M][0]> } = {
  'app.info': nothing,
  'jobs.list': nothing,
  'jobs.last': nothing,
  'jobs.open': z.strictObject({ id }),
  'jobs.create': z.strictObject({ statement: statementInput }),
  'jobs.save': z.strictObject({
    id,
    revision,
    statement: statementInput,
    label,
    timeline: timeline.optional(),
  }),
  'jobs.versions': z.strictObject({ id }),
  'jobs.version': z.strictObject({ id, revision }),
  'jobs.remove': z.strictObject({ id }),
  'jobs.bringBack': z.strictObject({ id }),
  'jobs.removed': nothing,
  'everything.export': nothing,
  'everything.import': z.strictObject({ text: z.string().max(LONGEST_EVERYTHING) }),
  'prices.current': nothing,
  'prices.import': z.strictObject({ text: z.string().max(LONGEST_PRICES) }),
  'prices.readList': priceListInput,
  'prices.takeList': priceListInput,
  'prices.takeBack': nothing,
  'prices.makeAgain': nothing,
  'prices.edit': z.strictObject({ edits: z.array(bookEditInput).min(1).max(MOST_EDITS) }),
  'prices.useSample': nothing,
  'prices.export': nothing,
  'rates.proposed': nothing,
  'rates.take': z.strictObject({
    rate: z.string().min(1).max(200),
    crewHours: z.int().nonnegative().max(100_000_000),
  }),
  'estimate.run': z.strictObject({ edit, statement: statementInput, jobId: id.optional(), task }),
  'estimate.first': z.strictObject({ edit, statement: statementInput, jobId: id.optional() }),
  'compare.run': widths,
  'sizes.run': sizes,
  'sizing.run': z.strictObject({
    edit,
    task,
    statement: statementInput,
    held: z.array(z.string().refine((path) => SIZED_FIELDS.has(path), 'is no field that is sized')).max(20),
  }),
  'ground.run': z.strictObject({
    statement: statementInput,
    jobId: id.optional(),
    found: z
      .strictObject({ post: z.int().min(1).max(999), dx: off, dy: off, barred: z.boolean() })
      .optional(),
  }),
  'cutlist.run': z.strictObject({ ...listInput, task }),
  'cutlist.workbook': z.strictObject(listInput),
  'cutlist.kept': nothing,
  'cutlist.keep': keptList,
  'day.replan': z.strictObject({
    statement: statementInput,
    jobId: id.optional(),
    planId: z.string().max(200),
    day: dayInput,
    task,
  }),
  'day.kept': z.strictObject({ jobId: id }),
  'day.keep': z.strictObject({ jobId: id, planId: z.string().min(1).max(200), kept: keptDay.nullable() }),
  'wish.price': z.strictObject({
    statement: statementInput,
    wished: statementInput,
    jobId: id.optional(),
    task,
  }),
  'joints.explain': z.strictObject({
    statement: statementInput,
    jobId: id.optional(),
    runId: z.string().max(200),
    at: z.array(length).max(MOST_POINTS),
    task,
  }),
  'work.stop': z.strictObject({ task: z.string().min(1).max(60) }),
  'offcuts.list': nothing,
  'offcuts.add': z.strictObject({
    product: productInput,
    length,
    count: z.int().min(1).max(500),
    fromJob: z.string().max(200),
  }),
  'offcuts.remove': z.strictObject({ ids: z.array(id).max(5000) }),
  'offcuts.takeFromPlan': z.strictObject({ jobId: id }),
  'workbook.make': z.strictObject({ statement: statementInput, jobId: id.optional() }),
  'papers.preview': paperInput,
  'papers.make': paperInput,
  'papers.order': orderInput,
  'quotes.read': quoteInputs.read,
  'quotes.lines': z.strictObject({ statement: statementInput, jobId: id.optional() }),
  'quotes.send': quoteInputs.send,
  'quotes.paper': quoteInputs.paper,
  'quotes.changeOrder': quoteInputs.changeOrder,
  'firm.read': nothing,
  'firm.save': firmInput,
  'window.kept': nothing,
  'window.keep': windowMemory,
}
