import { describe, expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
const [sheet] = makeSheets(source, ['cutting'])
const blocks = sheet?.blocks ?? []
const slantedRips = source.estimate.frame.members.filter(
  ({ ripTo, ends }) => ripTo !== null && ends !== undefined,
)
const named = blocks.flatMap((block) =>
  block.kind === 'set-up' ? block.boards.flatMap(({ marks }) => marks) : [],
)

describe('pieces that are ripped and mitred', () => {
  test('are drawn square, so beside each mark stands that it is ripped first and mitred then', () => {
    expect(slantedRips.map(({ mark }) => mark)).toEqual(['D1', 'D18', 'D19', 'D36'])
    for (const { mark } of slantedRips) {
      const own = named.filter((text) => new RegExp(`^${mark}(-\\d+)?\\b(?!\\d)`).test(text))
      expect(own.length, mark).toBeGreaterThan(0)
      // 106/32 in; a piece that ends at a joint on both sides has no mitre
      for (const text of own) expect(text).toMatch(/ \(rip to 3 5\/16 in(, then mitre)?\)$/)
      const mitred = own.filter((text) => text.endsWith(', then mitre)'))
      const cut = slantedRips.find((one) => one.mark === mark)?.ends ?? [0, 0]
      expect(mitred.length, mark).toBe(cut.filter((angle) => angle !== 0).length)
    }
    const said = blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : []))
    expect(said.filter((text) => text.startsWith('Pieces to rip are sawn square'))).toHaveLength(1)
  })

  test('say in the list by place that what is left of the width is mitred', () => {
    const rows = blocks.flatMap((block) => (block.kind === 'table' ? block.table.rows : []))
    const told = rows.filter(({ place }) => place?.includes('then mitre what is left'))
    expect(told.map(({ mark }) => mark?.split('-')[0])).toEqual(
      expect.arrayContaining(slantedRips.map(({ mark }) => mark)),
    )
  })
})
