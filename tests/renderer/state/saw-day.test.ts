import { describe, expect, test } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { cents, feet, ticks } from '../../../core/units/index.ts'
import { culledByLine } from '../../../renderer/state/culled-boards.ts'
import {
  atYard,
  boardsOf,
  cull,
  forgive,
  hasBegun,
  isSawn,
  marked,
  markSawn,
  newDay,
  recalled,
  spoil,
  takenBack,
} from '../../../renderer/state/saw-day.ts'
import { rangesOf } from '../../../renderer/views/boards/day/ranges.ts'
import {
  readLeft,
  readPlace,
  readPrice,
  readRefund,
} from '../../../renderer/views/boards/day/read-entries.ts'
import { troublesOf } from '../../../renderer/views/boards/day/troubles.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const { plans: planned } = estimateOf(smallJob(), SAMPLE_BOOK)
const plans = planned.map(({ plan }) => plan)
const plan = plans.find((each) => each.boards.some((board) => board.cuts.length > 1)) ?? plans[0]
if (plan === undefined) throw new Error('the small job has no plan')
const begun = newDay(plan, [])
const board = plan.boards.find((each) => each.cuts.length > 1) ?? plan.boards[0]
const cut = board?.cuts[0]
if (board === undefined || cut === undefined) throw new Error('the plan has no board')
const { number } = board

describe('a day at the saw', () => {
  test('begins with the whole order there and nothing sawn', () => {
    expect(begun.day.bought).toBe('all')
    expect(hasBegun(begun)).toBe(false)
    expect(isSawn(begun.day, number)).toBe(false)
  })

  test('takes a board as sawn once, and back with what was said of its pieces', () => {
    const sawn = markSawn(markSawn(begun.day, number, true), number, true)
    expect(sawn.sawn).toEqual([{ board: number, pieces: 'all' }])
    expect(hasBegun({ ...begun, day: sawn })).toBe(true)
    const short = spoil(sawn, number, cut.pieceId, ticks(cut.length - 32))
    expect(markSawn(short, number, false)).toEqual(begun.day)
  })

  test('a piece that came out wrong makes its board sawn; of two words on it the later holds', () => {
    const first = spoil(begun.day, number, cut.pieceId, feet(1))
    const lost = spoil(first, number, cut.pieceId, null)
    expect(isSawn(lost, number)).toBe(true)
    expect(lost.miscuts).toEqual([{ board: number, pieceId: cut.pieceId, length: null }])
    expect(troublesOf(board, first)).toEqual([`${cut.mark} came out 1'-0"`])
    expect(troublesOf(board, lost)).toEqual([`${cut.mark} is lost`])
  })

  test('tells a culled board from a bad stretch, and forgives both', () => {
    const bad = cull(cull(begun.day, number, feet(1), feet(2)), number, ticks(0), board.length)
    expect(troublesOf(board, bad)).toEqual([`bad from 1'-0" to 2'-0"`, 'culled'])
    expect(forgive(bad, number)).toEqual(begun.day)
  })

  test('keeps one word per length of the yard, and none that says nothing', () => {
    const [line] = plan.order
    const stockId = line?.stockId ?? ''
    const out = atYard(begun.day, { stockId, left: 0, price: null })
    const dearer = atYard(out, { stockId, left: 0, price: cents(1234) })
    expect(dearer.yard).toEqual([{ stockId, left: 0, price: 1234 }])
    expect(atYard(dearer, { stockId, left: null, price: null })).toEqual(begun.day)
  })

  test('takes marks back one by one, to the very state before each', () => {
    const one = marked(begun, markSawn(begun.day, number, true))
    const two = marked(one, cull(one.day, number, feet(1), feet(2)))
    expect(takenBack(two).day).toBe(one.day)
    expect(takenBack(takenBack(two))).toEqual(begun)
    expect(takenBack(begun)).toBe(begun)
  })

  test('is recalled with what can be taken back, and without a plan of the rest', () => {
    const one = marked(begun, markSawn(begun.day, number, true))
    expect(takenBack(recalled({ ...one, failure: 'x' } as typeof one))).toEqual(begun)
  })

  test('is not the day of other boards', () => {
    const others = { ...plan, boards: plan.boards.slice(1) }
    expect(boardsOf(others)).not.toBe(begun.boards)
    expect(boardsOf({ ...plan, gap: cents(7) })).toBe(begun.boards)
  })
})

test.each([
  [[], ''],
  [[4], '4'],
  [[1, 2], '1, 2'],
  [[9, 1, 2, 3, 7, 8], '1–3, 7–9'],
  [[1, 3, 4, 6], '1, 3, 4, 6'],
])('board numbers %j are told as %s', (numbers, text) => {
  expect(rangesOf(numbers)).toBe(text)
})

describe('what is typed at the saw', () => {
  test('is read as lengths, counts, dollars and shares; nothing written says nothing', () => {
    expect(readPlace('3 ft 6 in', feet(8))).toEqual({ ok: true, value: 42 * 32 })
    expect(readLeft(' ')).toEqual({ ok: true, value: null })
    expect(readLeft('0')).toEqual({ ok: true, value: 0 })
    expect(readPrice('')).toEqual({ ok: true, value: null })
    expect(readPrice('$12.50')).toEqual({ ok: true, value: 1250 })
    expect(readRefund('80 %')).toEqual({ ok: true, value: 8000 })
    expect(readRefund('')).toEqual({ ok: true, value: 0 })
  })

  test.each([
    [readPlace('9 ft', feet(8)), /9 ft.*8'-0" long\.$/],
    [readPlace('', feet(8)), /no length here/],
    [readLeft('1.5'), /"1\.5" is no number of boards/],
    [readLeft('-1'), /whole number, 0 for none/],
    [readPrice('-3'), /not cost less than nothing/],
    [readPrice('ten'), /ten/],
    [readRefund('120 %'), /between 0 and 100 %/],
  ])('is refused with a sentence: %j', (read, sentence) => {
    expect(read.ok).toBe(false)
    expect(read.ok ? '' : read.error).toMatch(sentence)
  })
})

describe('boards culled at the saw, for job costing', () => {
  const culledOf = (from: number, to: number) =>
    culledByLine(planned, {
      [plan.jobId]: marked(begun, cull(begun.day, number, ticks(from), ticks(to))),
    })

  test('are counted at the line that bought them, one a board however often it was marked', () => {
    const twice = cull(cull(begun.day, number, ticks(0), ticks(64)), number, ticks(0), board.length)
    expect([...culledByLine(planned, { [plan.jobId]: marked(begun, twice) })]).toEqual([
      [`lumber-${board.stockId}`, 1],
    ])
  })

  test('are not those whose offcut alone is bad, nor those of a plan that is no longer this one', () => {
    const last = board.cuts.at(-1)?.to ?? 0
    expect(culledOf(last, board.length).size).toBe(0)
    expect(culledOf(last - 1, board.length).size).toBe(1)
    const other = { ...marked(begun, cull(begun.day, number, ticks(0), board.length)), boards: 'others' }
    expect(culledByLine(planned, { [plan.jobId]: other }).size).toBe(0)
  })
})
