import type { LpEngine } from '../cutting/index.ts'
import { design } from '../design.ts'
import { costDesign } from '../estimate.ts'
import type { Design } from '../estimate-types.ts'
import {
  clearField,
  type FieldPath,
  fieldAt,
  type Job,
  type JobStatement,
  printFieldValue,
  readJob,
  setField,
  valueAt,
} from '../job/index.ts'
import { leastPrices, type PriceBook } from '../pricing/index.ts'
import type { Cents } from '../units/index.ts'
import { failingIn, holdingByCalculation } from './by-calculation.ts'
import { catalogueOf, waysOf } from './catalogue.ts'
import { choiceOf, fieldsOf } from './choice.ts'
import type { Plans } from './class-bounds.ts'
import { Effort } from './effort.ts'
import { isSizable } from './known-failures.ts'
import { Places } from './places.ts'
import { reasonsFor } from './reasons.ts'
import { type Found, type SearchResult, searchSizes } from './search.ts'
import type { SizingBasis, SizingChange, SizingLimits, SizingOptions, SizingResult } from './types.ts'
import { WayCosts } from './way-costs.ts'

const LIMITS: SizingLimits = { effort: 120_000 }
/** Work for what the job costs as it stands: what is left of all that a deck may take, within these. */
const COMPARING = { least: 15_000, most: 45_000, all: 165_000 }

/**
 * The cheapest joists, beams, posts and footings that pass every check that a size can mend, by a price book's prices
 * with joints, concrete and hours counted: the whole estimate of each way that could still be the cheapest. Of several
 * suppliers each thing counts at its least price, and the costs that are told have the deliveries in them. The same
 * inputs give the same answer; limits of work, not the clock, end the search.
 */
export function sizeIt(
  statement: JobStatement,
  book: PriceBook,
  engine: LpEngine,
  options: SizingOptions = {},
): SizingResult {
  // a quantity stated by hand is of the sizes as they are: other sizes are weighed by what is counted for them
  const counted = clearField(statement, 'pricing.lines')
  const read = readJob(counted)
  if (!read.ok) return refusal('The job has faults.', { faults: read.error })
  const { job } = read.value
  const held = [...(options.held ?? []), ...heldByNumbers(job)]
  const least = leastPrices(book)
  const whole = catalogueOf(job, least, held)
  const catalogue = options.narrow?.(whole, job) ?? whole
  if (waysOf(catalogue) === 0 || !sells(least, job))
    return refusal(`The price book "${book.name}" sells nothing that this deck could be framed with.`)
  const plans: Plans = new Map()
  const effort = new Effort(options.limits?.effort ?? LIMITS.effort)
  const costs = new WayCosts(job, least, engine, plans, effort, options.stop)
  const places = new Places(job, least, catalogue, effort)
  const search = (basis: SizingBasis) =>
    searchSizes({ basis, places, job, catalogue, costs, effort, watch: options })
  const byTables = search('tables')
  // where no table covers the frame in any size, a calculation is better than no size at all, and is told
  const byCalculation = lacksTables(byTables) ? search('calculation') : byTables
  const found = byCalculation.best === null ? byTables : byCalculation
  const { best, nearest, work } = found
  if (best === null) {
    if (nearest !== null)
      return refusal(nothingPasses(job, work.proven, options.stop?.() === true, held), {
        checks: nearest.checks,
      })
    const now = design(counted)
    if (!now.ok) return refusal('It cannot be framed in any size.', { faults: now.error })
    const { priceFaults, infeasible } = costDesign(now.value, book, engine, { known: plans })
    const cause = infeasible[0]?.message ?? 'What it takes has no price.'
    return refusal(`No size that passes can be priced. ${cause}`, { priceFaults })
  }
  return { ok: true, sized: sizedOf(job, best) }

  function sizedOf(now: Job, { choice, design: made, cost, atMost, way }: Found) {
    const before = design(counted)
    // a bound that nothing rests on need not be shown to hold
    if (work.proven || !atMost) costs.audit(way)
    const costBefore = before.ok ? costNow(before.value, now) : null
    const { basis } = work
    const changes = changesTo(now, made.job, fieldsOf(choice))
    return {
      changes,
      statement: changes.reduce((sum, { field, value }) => setField(sum, field, value), statement),
      costBefore: costBefore?.cost ?? null,
      beforeAtMost: costBefore?.atMost ?? false,
      costAfter: wholeCost(made) ?? cost,
      atMost,
      failingBefore: before.ok ? failingIn(basis, before.value) : [],
      reasons: reasonsFor(now, choice, made, catalogue, basis),
      byCalculation: holdingByCalculation(basis, made),
      remaining: made.checks.filter(
        (check) => !isSizable(check) && check.status !== 'passes' && check.status !== 'near',
      ),
      work,
    }
  }

  /** At the suppliers at whom it is cheapest, deliveries counted; null where the book says nothing of either, or it has no price. */
  function wholeCost(of: Design): Cents | null {
    if (least === book) return null
    return (
      costDesign(of, book, engine, { known: plans, quick: options.stop?.() === true }).pricing?.totals.cost ??
      null
    )
  }

  /** Of the job as it stands, by plans that are looked for no longer than those of its rivals. */
  function costNow(made: Design, now: Job): { readonly cost: Cents; readonly atMost: boolean } | null {
    if (least !== book) {
      const cost = wholeCost(made)
      return cost === null ? null : { cost, atMost: false }
    }
    effort.grant(Math.min(COMPARING.most, Math.max(COMPARING.least, COMPARING.all - effort.spent)))
    const way = costs.counted({ choice: choiceOf(now), skeleton: null }, made)
    const cost = way === null ? null : costs.planned(way, Number.POSITIVE_INFINITY)
    return way === null || cost === null ? null : { cost, atMost: costs.isOpen(way) }
  }
}

/** Whether a book has any lumber of the job's species, grade and treatment. */
function sells({ lumber }: PriceBook, { frame }: Job): boolean {
  return lumber.some(
    ({ stock, product: { species, grade, treatment } }) =>
      stock.length > 0 && species === frame.species && grade === frame.grade && treatment === frame.treatment,
  )
}

/** Whether no size passes, and what keeps the nearest from it is also that no table covers it. */
function lacksTables({ best, nearest, work }: SearchResult): boolean {
  const open = nearest?.checks.some(({ status }) => status === 'calculated only') === true
  return best === null && work.proven && open
}

/** Where posts are named by their numbers, their count and their line are not for sizing to change. */
function heldByNumbers({ ground }: Job): readonly FieldPath[] {
  const named = [ground.moved, ground.measured, ground.found].some((text) => text.trim() !== '')
  return named
    ? (['front', 'rear'] as const).flatMap((side) => [
        `frame.beams.${side}.posts`,
        `frame.beams.${side}.setback`,
      ])
    : []
}

function changesTo(now: Job, then: Job, paths: readonly FieldPath[]): readonly SizingChange[] {
  return paths.flatMap((path) => {
    const field = fieldAt(path)
    const [from, to] = [valueAt(now, path), valueAt(then, path)]
    if (from === to || (typeof to !== 'string' && typeof to !== 'number')) return []
    const text = printFieldValue(field, to)
    const value = field.kind === 'length' ? text : to
    return [{ field: path, label: field.label, from: printFieldValue(field, from), to: text, value }]
  })
}

function nothingPasses(job: Job, proven: boolean, stopped: boolean, held: readonly FieldPath[]): string {
  if (stopped) return 'Stopped before a size was found that passes every check.'
  const all = proven
    ? 'No size of the catalogue passes every check.'
    : 'The work allowed is done, and no size that was tried passes every check.'
  const { snowStated, snowLoad } = job.site
  if (!snowStated)
    return `${all} The ground snow load is not stated, and ${snowLoad} psf count until it is: ask for it, state it, and size again.`
  return held.length === 0 ? all : `${all} Let go of a held field, or change the deck.`
}

function refusal(
  message: string,
  more: Partial<Omit<Extract<SizingResult, { ok: false }>, 'ok' | 'message'>> = {},
): SizingResult {
  return { ok: false, faults: [], priceFaults: [], checks: [], ...more, message }
}
