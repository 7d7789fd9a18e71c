import { describe, expect, test } from 'vitest'
import { changeLines, changeSteps, DEPOSIT_LIMITS, makeSheets } from '../../../core/papers/index.ts'
import { cents } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

describe('what a quote says of the structure', () => {
  const said = (file: string) =>
    makeSheets(paperSource(CATALOGUE.find((one) => one.file === file)?.job ?? {}), ['quote'])
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === 'text' ? [block.text] : []))
      .filter((text) => text.startsWith('To be settled'))

  test('names what no table passes, and that a designer is not in the price', () => {
    // its hip and its beams under it are in no table of the code
    const [text = ''] = said('wrap-hip.json')
    for (const words of ['hip', 'beam span', 'designer’s fee']) expect(text.toLowerCase()).toContain(words)
  })

  test('says nothing of it where everything passes by tables', () => {
    expect(said('rectangle-16-by-10.json')).toEqual([])
  })
})

describe('a quote without a date or stages of payment', () => {
  const stated = paperSource(CATALOGUE.find(({ file }) => file === 'rectangle-16-by-10.json')?.job ?? {})
  const bare = { ...stated, date: '', firm: { ...stated.firm, stages: [], terms: [] } }
  const saidBy = (source: typeof stated) =>
    makeSheets(source, ['contents', 'quote'])
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) =>
        block.kind === 'facts'
          ? block.rows.map((row) => row.join(': '))
          : block.kind === 'text'
            ? [block.text]
            : block.kind === 'contents'
              ? block.rows.map(({ title, use }) => `${title}: ${use}`)
              : [],
      )

  test('has a line for the date from which its days run', () => {
    expect(saidBy(bare).find((text) => text.startsWith('Date: '))).toMatch(/^Date: _{20,}$/)
    expect(saidBy(bare)).toContain('Holds: 30 days from the date to be filled in above')
    // 30 days after the last of January
    expect(saidBy(stated)).toContain('Holds: until 2026-03-02')
  })

  test('is not promised by the index to say when it is paid, and says itself that it does not', () => {
    expect(saidBy(bare)).toContain('Quote: what is built, and for how much')
    expect(saidBy(bare).join('\n')).toContain('When it is paid is not stated here')
    expect(saidBy(stated)).toContain('Quote: what is built, for how much, paid when')
    expect(saidBy(stated).join('\n')).not.toContain('is not stated here')
  })
})

describe('limits on deposits', () => {
  const limitOf = (state: string, price: number): number | undefined =>
    DEPOSIT_LIMITS.find((one) => one.state === state)?.limit(cents(price))

  // hand sums by the rules in words: California the lesser of $1,000 or 10 %, the others a third, rounded down
  test.each([
    ['CA', 20_000_00, 1_000_00],
    ['CA', 10_000_00, 1_000_00],
    ['CA', 9_999_99, 999_99],
    ['MD', 10_000_00, 3_333_33],
    ['MA', 30_000_00, 10_000_00],
    ['ME', 1_00, 33],
    ['PA', 9_000_01, 3_000_00],
  ])('of %s at %i cents is %i', (state, price, most) => {
    expect(limitOf(state, price)).toBe(most)
  })
})

describe('the steps from one state of a job to another', () => {
  const before = { name: 'A', size: { width: '12 ft' }, frame: { joists: { size: '2x8' } } }

  test('are its fields one after the other, and end in the second state', () => {
    const after = { name: 'B', size: { width: '14 ft', depth: '9 ft' }, frame: { joists: { size: '2x8' } } }
    const steps = changeSteps(before, after)
    expect(steps.map(({ what }) => what)).toEqual([
      'Width: 14\'-0", formerly 12\'-0"',
      expect.stringMatching(/^Depth: 9'-0", formerly /),
    ])
    expect(steps.at(-1)?.statement).toMatchObject({ size: after.size })
  })

  test('show nothing of margin, overhead or wages to a customer, and still end in the second state', () => {
    const after = { ...before, pricing: { margin: '31 %' }, cutting: { kerf: '3/32 in' } }
    const steps = changeSteps(before, after)
    expect(steps).toEqual([{ what: 'Conditions of the work and of the price', statement: after }])
  })

  test('are none where only the name, the notes or the options differ', () => {
    expect(
      changeSteps(before, { ...before, name: 'C', pricing: { options: 'Up: size.height = 4 ft' } }),
    ).toEqual([])
  })

  test('are few enough to be read: the rest stands together', () => {
    const many = {
      ...before,
      size: { width: '9 ft', depth: '9 ft', height: '3 ft' },
      frame: {
        species: 'HF',
        joists: { size: '2x10', spacing: '12 in', layoutFrom: 'right' },
        rimPlies: 2,
        postSize: '4x4',
        stagger: 'none',
      },
      ground: { tube: '10 in', base: '22 in', projection: '6 in' },
      decking: { size: '2x6', overhang: '2 in', gap: 0 },
    }
    const steps = changeSteps(before, many)
    expect(steps).toHaveLength(12)
    expect(steps.at(-1)?.what).toMatch(/^\d more changes of the deck$/)
    expect(steps.at(-1)?.statement).toEqual(many)
  })
})

describe('the lines of a change', () => {
  test('sum to the difference of the prices; a step without a price stands with the next', () => {
    const steps = ['a', 'b', 'c'].map((what) => ({ what }))
    const lines = changeLines(cents(1000), steps, [cents(1300), null, cents(900)])
    expect(lines).toEqual([
      { what: 'a', amount: 300 },
      { what: 'b; c', amount: -400 },
    ])
  })

  test('cannot end without a price: that is a bug', () => {
    expect(() => changeLines(cents(1), [{ what: 'a' }], [null])).toThrow('last step')
  })
})
