import { describe, expect, test } from 'vitest'
import { type Block, makeSheets, type SheetId } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { UNDER_WAY } from '../costing/worked-costing.ts'

const LINE = /^_{20,}$/

function blocksOf(id: SheetId, changes = {}): readonly Block[] {
  const [sheet] = makeSheets(paperSource(smallJob('12 ft', changes)), [id])
  if (sheet === undefined) throw new Error(`no sheet ${id}`)
  return sheet.blocks
}

function factsOf(id: SheetId, changes = {}): ReadonlyMap<string, string> {
  return new Map(blocksOf(id, changes).flatMap((block) => (block.kind === 'facts' ? block.rows : [])))
}

const tableOf = (blocks: readonly Block[], id: string) =>
  blocks.flatMap((block) => (block.kind === 'table' && block.table.id === id ? [block] : []))[0]

describe('the job record', () => {
  const blocks = blocksOf('record', { pricing: UNDER_WAY.pricing, costing: UNDER_WAY.costing })

  test('of a job under way shows estimated and actual, and its sums stand out', () => {
    const block = tableOf(blocks, 'costing')
    const rows = block?.table.rows ?? []
    expect(rows.find(({ what }) => what === 'Set joists')).toEqual({
      what: 'Set joists',
      planned: '11.5',
      took: '13.75',
      unit: 'worker hour',
      estimated: '$517.50',
      actual: '$618.75',
      difference: '+$101.25',
      share: '+19.57 %',
      open: '$0.00',
    })
    expect(rows.find(({ what }) => what === '2x10, 16 ft, done')).toMatchObject({ took: '7', share: '-21 %' })
    const strong = (block?.strong ?? []).map((row) => rows[row]?.what)
    expect(strong).toEqual([
      'Lumber, together',
      'Hardware, together',
      'Labour, together',
      'Other, together',
      'Not in the estimate, together',
      'Sales tax on material',
      'Direct cost',
      'Direct cost as it will likely be, in the last column',
      'Left of the price of $1,620.94 for overhead and profit, likely in the last column',
    ])
  })

  test('lists boards, purchases and hours as they were written down', () => {
    expect(tableOf(blocks, 'boards-taken')?.table.rows).toEqual([
      { what: '2x10, 16 ft', planned: '9', bought: '7', unusable: '1', left: '1' },
    ])
    expect(tableOf(blocks, 'bought')?.table.rows[2]).toEqual({
      date: '2026-04-09',
      supplier: '',
      what: '2x10, 16 ft: two back',
      quantity: '-2',
      amount: '-$46.98',
      receipt: '',
    })
    expect(tableOf(blocks, 'worked')?.table.rows[0]).toEqual({
      date: '2026-04-06',
      what: 'Set joists',
      who: 'Ada',
      hours: '6.25',
    })
  })

  test('of a job not begun is a form to fill in', () => {
    const empty = blocksOf('record')
    expect(tableOf(empty, 'costing')).toBeUndefined()
    expect(tableOf(empty, 'hours-record')?.table.columns.map(({ label }) => label.trim())).toContain(
      'Worker hours really',
    )
  })
})

describe('whom it is built for', () => {
  const customer = { name: 'Ida Berg', address: '7 Heron Lane, Ashbrook', contact: '555 0100' }

  test.each(['quote', 'framing', 'checks'] as const)('stands on the sheet %s', (id) => {
    const facts = factsOf(id, { customer })
    expect(facts.get('Customer')).toBe('Ida Berg')
    expect(facts.get('Address of the site')).toBe('7 Heron Lane, Ashbrook')
  })

  test.each(['quote', 'framing', 'checks'] as const)(
    'is a line to fill on the sheet %s where it is not stated',
    (id) => {
      expect(factsOf(id).get('Customer')).toMatch(LINE)
      expect(factsOf(id).get('Address of the site')).toMatch(LINE)
    },
  )

  test('is reached as the quote says, and the permit office is not told', () => {
    expect(factsOf('quote', { customer }).get('Telephone or e-mail')).toBe('555 0100')
    expect(JSON.stringify(blocksOf('checks', { customer }))).not.toContain('555 0100')
  })

  test('is told as missing for the permit where its address is', () => {
    const cautions = (changes: object) =>
      blocksOf('checks', changes).flatMap((block) => (block.kind === 'caution' ? [block.text] : []))
    const missing = /^Missing: the address of the site/
    expect(cautions({})).toContainEqual(expect.stringMatching(missing))
    expect(cautions({ customer })).not.toContainEqual(expect.stringMatching(missing))
  })
})
