import { describe, expect, it } from 'vitest'
import { tubePieces } from '../../../core/takeoff/ground-goods.ts'
import { skus, taskRates } from '../../../core/takeoff/index.ts'
import { tallyGoods, tallyTasks } from '../../../core/takeoff/tally.ts'
import { bagsOf } from '../../../core/takeoff/volumes.ts'

const cause = { fields: ['size.width'], ids: ['a'], rule: 'first' }

describe('the lists a takeoff names', () => {
  it('name every sku and every rate once', () => {
    expect(new Set(skus.map((one) => one.sku)).size).toBe(skus.length)
    expect(new Set(taskRates.map((one) => one.rateId)).size).toBe(taskRates.length)
  })

  it('let no unlisted good or task through', () => {
    expect(() => tallyGoods([{ sku: 'sky-hook', quantity: 1, cause }])).toThrow('sky-hook')
    expect(() => tallyTasks([{ rateId: 'whistle', quantity: 1, cause }])).toThrow('whistle')
  })
})

describe('a tally', () => {
  it('adds the shares before it rounds up to 1/1000', () => {
    const [good] = tallyGoods([
      { sku: 'nail-10d-box', quantity: 0.0004, cause },
      { sku: 'nail-10d-box', quantity: 0.0004, cause: { ...cause, ids: ['b'], rule: 'second' } },
    ])
    expect(good).toMatchObject({
      thousandths: 1,
      cause: { fields: ['size.width'], ids: ['a', 'b'], rule: 'first; second' },
    })
  })

  it('does not round a whole number up for the noise of floating point', () => {
    expect(tallyGoods([{ sku: 'uplift-tie', quantity: 0.1 + 0.2, cause }])[0]?.thousandths).toBe(300)
  })
})

describe('bags of mix', () => {
  it.each([
    [0.6, 0, 1],
    [0.6001, 0, 2],
    [6, 1000, 11],
    [14.1953, 1000, 27],
  ])('%d cu ft with %i/100 %% waste are %i bags of 0.6 cu ft', (volume, waste, bags) => {
    expect(bagsOf(volume, waste)).toBe(bags)
  })
})

describe('tube pieces of 4 ft', () => {
  it.each([
    [[3, 3, 1], 2],
    [[4, 4], 2],
    [[1, 1, 1, 1, 1], 2],
    [[5, 5, 5], 4],
    [[9], 3],
  ])('tubes of %j ft take %i', (feet, pieces) => {
    expect(tubePieces(feet)).toBe(pieces)
  })
})
