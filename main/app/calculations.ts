import { type CompareRow, compareWidths, type WidthRange } from '../../core/compare/index.ts'
import { type CutListAnswer, type CutListRequest, runCutList } from '../../core/cut-list/index.ts'
import type { JointReason } from '../../core/cutting/index.ts'
import { estimate } from '../../core/estimate.ts'
import type { Estimate, EstimateResult } from '../../core/estimate-types.ts'
import { type GroundAsked, groundReport, type TubePlan, tubePlan } from '../../core/ground/index.ts'
import {
  type Fault,
  type FieldPath,
  type JobStatement,
  type JsonValue,
  type Wish,
  wishesOf,
  withoutWish,
} from '../../core/job/index.ts'
import { type ProductRest, planTheDay } from '../../core/plan-the-rest.ts'
import { bookAsBought, type PriceBook } from '../../core/pricing/index.ts'
import { type SizingResult, sizeIt } from '../../core/sizing/index.ts'
import type { Result } from '../../core/units/index.ts'
import { framingJoints } from '../../core/why-joints.ts'
import { type WishPrice, wishPrice } from '../../core/wish-price.ts'
import { loadEngine } from '../workers/lp/index.ts'

/** The core with its engine inside, for a door that waits for one answer and ends. */
export interface Calculations {
  ground(statement: JobStatement, book: PriceBook, asked: GroundAsked): ReturnType<typeof groundReport>
  estimate(statement: JobStatement, book: PriceBook): EstimateResult
  /** which bought piece each form tube is cut from; null where the book does not sell it */
  tubes(estimate: Estimate, book: PriceBook): TubePlan | null
  /** what the joints of its framing save */
  framingJoints(estimate: Estimate, book: PriceBook): readonly JointReason[]
  /** what each wish on the cutting costs, by its key */
  wishPrices(statement: JobStatement, estimate: Estimate, book: PriceBook): ReadonlyMap<Wish, WishPrice>
  compareWidths(statement: JobStatement, book: PriceBook, range: WidthRange): Iterable<CompareRow>
  cutList(request: CutListRequest, book: PriceBook): CutListAnswer
  sizeIt(statement: JobStatement, book: PriceBook, held: readonly FieldPath[]): SizingResult
  planTheDay(
    statement: JobStatement,
    book: PriceBook,
    day: JsonValue,
  ): Result<readonly ProductRest[], readonly Fault[]>
}

export async function loadCalculations(): Promise<Calculations> {
  const engine = await loadEngine()
  return {
    ground: (statement, book, asked) => groundReport(statement, book, engine, asked),
    estimate: (statement, book) => estimate(statement, book, engine),
    tubes: (made, book) => {
      const planned = tubePlan(made, bookAsBought(book, made.split?.from ?? null), engine)
      return planned?.ok === true ? planned.value : null
    },
    framingJoints: (made, book) => framingJoints(made, book, engine),
    wishPrices: (statement, made, book) =>
      new Map(
        wishesOf(made.job, made.takeoff.runs).map((wish) => [
          wish,
          wishPrice(withoutWish(statement, wish), statement, book, engine),
        ]),
      ),
    compareWidths: (statement, book, range) => compareWidths(statement, book, engine, range),
    cutList: (request, book) => runCutList(request, book, engine),
    sizeIt: (statement, book, held) => sizeIt(statement, book, engine, { held }),
    planTheDay: (statement, book, day) => planTheDay(statement, book, engine, day),
  }
}
