import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { makeSheets } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

/** Two parts 16 ft and 13 ft deep side by side: the joists of each ask for their own spacing of the one ledger's fasteners. */
const TWO_DEPTHS = {
  version: 1,
  shape: { outline: "0,0; 22',0; 22',13'; 8',13'; 8',16'; 0,16'" },
  size: { height: '5\' 2"' },
  site: { soilBearing: 2000, snowLoad: 25 },
  frame: { joists: { size: '2x10', spacing: '12 in' }, postSize: '6x6' },
} as const

function checksOf(statement: object) {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.checks
}

it('where joists ask for unlike spacings of one ledger’s fasteners the one that is drawn and ordered is told', () => {
  const fasteners = checksOf(TWO_DEPTHS).filter(({ title }) => title === 'Ledger fasteners')
  const apart = fasteners.map(({ message }) => Number(/at ([\d.]+) in on centre/.exec(message)?.[1]))
  expect(new Set(apart).size).toBeGreaterThan(1)
  const closest = Math.min(...apart)
  for (const { message } of fasteners)
    expect(message.includes(`hold ${closest} in along the whole ledger`)).toBe(
      !message.includes(`at ${closest} in`),
    )
})

// IRC 2021 Table R401.4.1: clay and silt carry 1,500 psf, the least of its classes
it('a bearing that is stated of unknown soil is said not to count, in the checks and on their basis', () => {
  const footing = checksOf(TWO_DEPTHS).find(({ title }) => title === 'Footing size')
  expect(footing?.remedy).toContain(
    'The 2000 psf stated count only once it is said what the soil is: 1500 psf',
  )
  const sheets = makeSheets(paperSource(TWO_DEPTHS, SAMPLE_BOOK, { quick: true }), ['checks'])
  const facts = sheets.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'facts' ? block.rows : [])),
  )
  expect(facts.find(([name]) => name === 'Soil')?.[1]).toContain('bearing 2000 psf')
  expect(facts.find(([name]) => name === 'Soil')?.[1]).toContain('reckoned with 1500 psf')
  const known = checksOf({ ...TWO_DEPTHS, site: { ...TWO_DEPTHS.site, soil: 'sand', soilBearing: 1500 } })
  expect(known.find(({ title }) => title === 'Footing size')?.remedy ?? '').not.toContain('count only once')
})

// the end joist of the deep part ends 1-1/2 in before the first joist of the other, which begins at 8 ft
it('joists that leave hangers no room between them are named with what to ask for', () => {
  const hangers = checksOf(TWO_DEPTHS).filter(({ title }) => title === 'Joist hangers')
  const told = hangers.map(({ remedy }) => remedy).join(' ')
  expect(told).toMatch(/E3 and J8, 1 1\/2 in apart: two hangers’ flanges have no room/)
  expect(told.match(/have no room/g)).toHaveLength(1)
  const plain = checksOf({ version: 1, size: { width: '16 ft', depth: '12 ft', height: '44 in' } })
  expect(plain.map(({ remedy }) => remedy).join(' ')).not.toContain('have no room')
})
