import { describe, expect, test } from 'vitest'
import { readJob, readJobText, statedEntries } from '../../../core/job/index.ts'

function faultsOf(costing: unknown) {
  const read = readJob({ costing })
  return read.ok ? [] : read.error.map(({ path, message, fix }) => [path, `${message}: ${fix}`])
}

describe('what a job took, as its file states it', () => {
  test('is read with what is left out as nothing', () => {
    const read = readJob({
      costing: {
        begun: '2026-04-01',
        bought: [{ what: 'Tarp', amount: '$19.99' }],
        worked: [{ line: 'labour-task-joist', hours: '6.5' }],
        lines: [{ line: 'lumber-a', unusable: 2 }],
      },
    })
    expect(read.ok && read.value.job.costing).toEqual({
      begun: '2026-04-01',
      finished: '',
      estimate: [],
      price: 0,
      hourly: 0,
      bought: [
        { date: '', supplier: '', line: '', what: 'Tarp', thousandths: null, amount: 1999, receipt: '' },
      ],
      worked: [{ date: '', line: 'labour-task-joist', what: '', who: '', thousandths: 6500 }],
      lines: [{ line: 'lumber-a', unusable: 2, left: 0, done: false }],
    })
  })

  test('takes back what went back: quantity and sum below zero', () => {
    const read = readJob({ costing: { bought: [{ what: 'Boards', quantity: '-2', amount: '-$46.98' }] } })
    expect(read.ok && read.value.job.costing.bought[0]).toMatchObject({ thousandths: -2000, amount: -4698 })
  })

  test.each([
    [{ begun: 'April' }, 'costing.begun', '"April" is no day: write it as 2026-04-02'],
    [{ begun: '2026-02-30' }, 'costing.begun', '"2026-02-30" is no day: write it as 2026-04-02'],
    [{ bought: [{ what: 'Tarp', amount: 'ten' }] }, 'costing.bought.0.amount', /^"ten": .*: (write|give) /],
    [
      { bought: [{ what: 'Tarp' }] },
      'costing.bought.0',
      /^this entry has no amount: write it as \{ "date": "2026-04-02"/,
    ],
    [
      { bought: [{ amount: 5 }] },
      'costing.bought.0',
      /^this entry does not say what was bought: give "what" in words/,
    ],
    [
      { bought: [{ what: 'Tarp', amount: 5, reciept: '1' }] },
      'costing.bought.0.reciept',
      'an entry has no "reciept": the nearest known name is "receipt"',
    ],
    [{ bought: 'Tarp' }, 'costing.bought', /^this is text: give a list of entries such as \[/],
    [
      { worked: [{ line: 'a', hours: -1 }] },
      'costing.worked.0.hours',
      /a quantity is not below zero: write a number/,
    ],
    [
      { worked: [{ line: 'a', hours: 20_001 }] },
      'costing.worked.0',
      '20001 hours is too many: give 20,000 at most',
    ],
    [
      { lines: [{ line: 'a', unusable: 1.5 }] },
      'costing.lines.0.unusable',
      /is no count of boards: give a whole number/,
    ],
    [{ lines: [{ line: 'a', done: 'yes' }] }, 'costing.lines.0.done', /^this is text: give true or false/],
    [
      { estimate: [{ line: 'a', what: 'a', part: 'wood', quantity: 1, price: 1 }] },
      'costing.estimate.0.part',
      /^part cannot be "wood": write "material"/,
    ],
    [
      { estimate: [{ line: 'a', what: 'a', part: 'labour', quantity: 1, price: 1, factor: 0 }] },
      'costing.estimate.0.factor',
      /is no factor: give a number from 0\.1 to 20/,
    ],
  ])('%j is told at its place', (costing, path, sentence) => {
    const [fault] = faultsOf(costing)
    expect(fault?.[0]).toBe(path)
    expect(fault?.[1]).toEqual(typeof sentence === 'string' ? sentence : expect.stringMatching(sentence))
  })

  test('tells line and column in a job file', () => {
    const read = readJobText('{\n "costing": { "bought": [\n  { "what": "Tarp", "amount": "ten" }\n ] }\n}')
    expect(read.ok ? [] : read.error).toMatchObject([{ line: 3, column: 21 }])
  })

  test('is bounded: a list too long for any deck is refused as a whole', () => {
    const bought = Array.from({ length: 2001 }, () => ({ what: 'Tarp', amount: 1 }))
    expect(faultsOf({ bought })).toEqual([['costing.bought', 'there are 2001 entries: give at most 2000']])
  })

  test('keeps foreign text as it is, and is read again as it was written', () => {
    const what = '=SUM(A1) <b>"; DROP TABLE jobs; --\u202e'
    const read = readJob({ costing: { bought: [{ what, quantity: 1.125, amount: '$1,234.05' }] } })
    if (!read.ok) throw new Error('not read')
    const { bought } = read.value.job.costing
    expect(bought[0]?.what).toBe(what)
    const again = readJob({ costing: { bought: statedEntries('purchases', bought) } })
    expect(again.ok && again.value.job.costing.bought).toEqual(bought)
  })
})
