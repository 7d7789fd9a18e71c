import { describe, expect, it } from 'vitest'
import { makeSheets, orderTable } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { printMoney } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { workedJob } from '../../fixtures/worked-job.ts'

// Blocks stand behind every joint of a rim, one for each end; the sawyer has to know of it, though no board's pieces hold it.

function told(width: string) {
  const source = paperSource(workedJob(width))
  const { plans, pricing } = source.estimate
  const words = makeSheets(source, ['cutting'])
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.kind === 'text' ? [block.text] : []))
    .filter((text) => /jointed/.test(text))
  return {
    words,
    plans,
    priced: pricing.lines.find(({ id }) => id === 'joint-rim-material')?.thousandths ?? 0,
  }
}

describe('the cutting sheet', () => {
  it('tells of the blocks behind each joint of a rim, as many as are priced, and where it is cut from', () => {
    // the longest 2x10 of the sample book is 20 ft: a rim of 23 ft 6 in has one joint
    const { words, plans, priced } = told('23 ft 6 in')
    expect(priced).toBe(1000)
    expect(words).toHaveLength(1)
    expect(words[0]).toContain(
      'One rim is jointed: behind each joint a block of this size, 1\'-0" long, is nailed along either side of the joist',
    )
    const boards = plans.find(({ product }) => product.size === '2x10')?.plan.boards ?? []
    // the saw takes 1/8 in of each
    const feet = boards.reduce((sum, { offcut }) => sum + Math.floor(offcut / (12.125 * 32)), 0)
    expect(words[0]?.includes('cut them off offcuts')).toBe(feet >= 2)
  })

  it('and the order has a board for those that no offcut gives, priced with the others, named on both', () => {
    const made = CATALOGUE.filter(({ file }) => ['wrap-hip.json', 'l-shape-free.json'].includes(file))
    for (const { file, job } of made) {
      const source = paperSource(job, SAMPLE_BOOK, { quick: file === 'wrap-hip.json' })
      const { estimate } = source
      const rims = new Set(estimate.takeoff.runs.filter(({ kind }) => kind === 'rim').map(({ id }) => id))
      const [planned] = estimate.plans.filter(({ plan }) => plan.joints.some(({ runId }) => rims.has(runId)))
      const joints = planned?.plan.joints.filter(({ runId }) => rims.has(runId)).length ?? 0
      const left = planned?.plan.boards.reduce((sum, { offcut }) => sum + Math.floor(offcut / 388), 0) ?? 0
      expect(left, file).toBeLessThan(2 * joints)
      const bought = estimate.pricing.lines.filter(({ id }) => id.startsWith('blocks-'))
      expect(bought, file).toHaveLength(1)
      // a foot and a saw's cut each: so many feet of board as blocks are missing hold them, but for 1/8 in each
      const [line] = bought
      const long = planned?.plan.order.find(({ stockId }) => line?.id === `blocks-${stockId}`)?.length ?? 0
      expect(((line?.thousandths ?? 0) / 1000) * Math.floor(long / 388)).toBeGreaterThanOrEqual(
        2 * joints - left,
      )
      const rows = orderTable(estimate).rows.filter(({ product }) =>
        product?.includes('for blocks behind rim'),
      )
      expect(rows.map(({ amount }) => amount)).toEqual(bought.map(({ amount }) => printMoney(amount)))
      const words = makeSheets(source, ['cutting'])
        .flatMap(({ blocks }) => blocks)
        .flatMap((block) => (block.kind === 'text' ? [block.text] : []))
      expect(
        words.some((text) =>
          text.includes(`${(line?.thousandths ?? 0) / 1000} × ${long / 384} ft in the order`),
        ),
      ).toBe(true)
    }
  })

  it('tells of none where every rim comes whole', () => {
    const { words, priced } = told('19 ft 10 in')
    expect(priced).toBe(0)
    expect(words).toEqual([])
  })
})
