import { describe, expect, it } from 'vitest'
import { compareWidths } from '../../../core/compare/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { feet, inches } from '../../../core/units/index.ts'
import { wasteOf } from '../../../core/waste.ts'
import { figuresOf } from '../../../renderer/state/figures.ts'
import { engine, estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const job = (unusableShare: string) => smallJob('12 ft', { cutting: { unusableShare } })
const without = estimateOf(job('0 %'), SAMPLE_BOOK)
const made = estimateOf(job('4 %'), SAMPLE_BOOK)

describe('waste of an order', () => {
  it('is what the boards hold and no piece does, by its cause', () => {
    const waste = wasteOf(without)
    const boards = without.plans.flatMap(({ plan }) => plan.boards)
    const pieces = boards.flatMap((board) => board.cuts)
    expect(waste.bought).toBe(boards.reduce((sum, board) => sum + board.length, 0))
    expect(waste.used).toBe(pieces.reduce((sum, cut) => sum + cut.length, 0))
    expect(waste.spares).toBe(0)
  })

  it('counts spare boards in full, and nothing else changes by them', () => {
    const waste = wasteOf(made)
    const spares = (made.spares?.lines ?? []).flatMap(({ length, count }) => Array(count).fill(length))
    expect(spares.length).toBeGreaterThan(0)
    expect(waste.spares).toBe(spares.reduce((sum, length) => sum + length, 0))
    const { bought, share, spares: none, ...causes } = wasteOf(without)
    expect(waste).toMatchObject(causes)
    expect(waste.bought).toBe(bought + none + waste.spares)
    expect(waste.share).toBeGreaterThan(share)
  })

  it('is the same in the sill and in the row of that width', () => {
    const range = { from: feet(12), to: feet(12), step: inches(6) }
    const [row] = [...compareWidths(job('4 %'), SAMPLE_BOOK, engine, range)]
    expect(row?.waste).toBe(wasteOf(made).share)
    expect(figuresOf(made)?.waste).toBe(wasteOf(made).share)
  })
})
