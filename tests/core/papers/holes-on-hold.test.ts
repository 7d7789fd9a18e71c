import { describe, expect, test } from 'vitest'
import { footingLayout, makeSheets, orderMessages } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const sourceOf = (name: string) =>
  paperSource(CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {}, SAMPLE_BOOK, { quick: true })

// the hip bears on post 1, whose base the order holds with it until the building official has accepted the calculation
describe('the hole under a base that is on hold', () => {
  const source = sourceOf('wrap-hip')
  const words = /Hole 1 waits \(H2, Hip.*neither dug nor poured before the building official has accepted/

  test('waits in the order’s part on hold, and in the message to the yard nothing of it is said', () => {
    const [order] = makeSheets(source, ['order'])
    const blocks = order?.blocks ?? []
    const cut = blocks.findIndex((block) => block.kind === 'page break')
    expect(JSON.stringify(blocks.slice(cut))).toMatch(words)
    expect(
      orderMessages(source)
        .map(({ text }) => text)
        .join('\n'),
    ).not.toContain('neither dug')
  })

  test('is marked in the schedule, and no other is', () => {
    const [sheet] = makeSheets(source, ['footings'])
    const table = (sheet?.blocks ?? []).flatMap((block) =>
      block.kind === 'table' && block.table.id === 'footings' ? [block.table] : [],
    )[0]
    expect(table?.columns.map(({ label }) => label)).toContain('Waits for')
    expect(table?.rows.map(({ number, hold }) => [number, hold])).toEqual(
      (table?.rows ?? []).map(({ number }) => [number, number === '1' ? 'H2' : '']),
    )
  })

  test('is told where it is laid out and where it is dug, and carries it on the drawing', () => {
    expect(JSON.stringify(makeSheets(source, ['footings']))).toMatch(words)
    expect(JSON.stringify(makeSheets(source, ['steps']))).toMatch(words)
    const texts = footingLayout(source.estimate).primitives.flatMap((p) =>
      p.kind === 'text' ? [p.text] : [],
    )
    expect(texts.filter((text) => text.includes('waits'))).toEqual(['1, waits'])
  })
})

test('where nothing under a post is open no hole waits', () => {
  const source = sourceOf('l-shape')
  expect(JSON.stringify(makeSheets(source, ['footings', 'steps', 'order']))).not.toContain('neither dug')
})
