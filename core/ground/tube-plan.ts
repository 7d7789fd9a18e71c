import { type CutPlan, type Infeasible, type LpEngine, planCuts } from '../cutting/index.ts'
import type { Design } from '../estimate-types.ts'
import type { PriceBook } from '../pricing/index.ts'
import { cents, fail, feet, type Result, type Ticks, ticks, toInches } from '../units/index.ts'
import { allHoles } from './holes.ts'

export interface TubePlan {
  readonly sku: string
  readonly label: string
  /** length of a piece as it is sold */
  readonly sold: Ticks
  /** tubes longer than a piece are butted from whole pieces and one that is cut */
  readonly butted: boolean
  readonly plan: CutPlan
}

/**
 * Which bought piece each form tube is cut from. A knife takes no kerf; the pieces are as long as the price book sells
 * them. Null where the book does not sell the tube.
 */
export function tubePlan(
  design: Design,
  book: PriceBook,
  engine: LpEngine,
): Result<TubePlan, Infeasible> | null {
  const holes = allHoles(design)
  const [first] = holes
  if (first === undefined) throw new Error('a deck stands on footings')
  const sku = `form-tube-${toInches(first.tube)}in`
  const listed = book.goods.find((good) => good.sku === sku && good.unit === 'foot')
  if (listed === undefined) return null
  const sold = feet(listed.pack / 1000)
  const pieces = holes.flatMap(({ id, number, tubeLength }) =>
    partsOf(tubeLength, sold).map((length, i) => ({
      id: `tube-${id}-${i + 1}`,
      mark: i === 0 ? `F${number}` : `F${number} part ${i + 1}`,
      length,
    })),
  )
  const planned = planCuts(
    {
      id: sku,
      label: listed.label,
      kerf: ticks(0),
      endTrim: ticks(0),
      stock: [
        {
          id: listed.code,
          length: sold,
          price: cents(Math.round((listed.price * listed.pack) / 100_000)),
          supply: null,
          offcut: false,
        },
      ],
      pieces,
      runs: [],
      handling: cents(0),
      perCut: cents(0),
      keep: null,
      objectives: ['least cost'],
    },
    engine,
  )
  if (!planned.ok) return fail(planned.error)
  const butted = holes.some(({ tubeLength }) => tubeLength > sold)
  return { ok: true, value: { sku, label: listed.label, sold, butted, plan: planned.value } }
}

/** Whole pieces, and what is left of the length. */
function partsOf(length: Ticks, sold: Ticks): readonly Ticks[] {
  const whole = Math.floor(length / sold)
  const over = ticks(length - whole * sold)
  return [...Array.from({ length: whole }, () => sold), ...(over > 0 ? [over] : [])]
}
