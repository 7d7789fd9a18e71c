import { describe, expect, it } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
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

  it('tells of none where every rim comes whole', () => {
    const { words, priced } = told('19 ft 10 in')
    expect(priced).toBe(0)
    expect(words).toEqual([])
  })
})
