import { expect, test } from 'vitest'
import { sizeIt } from '../../../core/sizing/index.ts'
import { engine, estimateOf } from '../../fixtures/engine.ts'
import { bookOfSeveral, HILL, YARD } from '../../fixtures/two-suppliers.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

test('sizes are weighed at the least prices, and their costs told with the deliveries', () => {
  const book = bookOfSeveral({ [YARD]: [4000], [HILL]: [6000] }, [
    { supplier: HILL, goods: { 'post-base-6x6': 2000, 'concrete-bag-80lb': 500 } },
  ])
  const sized = sizeIt(smallJob(), book, engine)
  if (!sized.ok) throw new Error(sized.message)
  const costOf = (statement: unknown) => estimateOf(statement, book).pricing?.totals.cost
  expect(sized.sized.costBefore).toBe(costOf(smallJob()))
  expect(sized.sized.costAfter).toBe(costOf(sized.sized.statement))
  expect(sized.sized.costAfter).toBeLessThan(sized.sized.costBefore ?? 0)
})
