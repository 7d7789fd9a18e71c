import { describe, expect, it } from 'vitest'
import { houseHoldDowns } from '../../../core/frame/index.ts'
import { houseHoldDownWords } from '../../../core/papers/build/house-hold-downs.ts'
import { houseHoldDownDetail } from '../../../core/papers/details/house-hold-down-detail.ts'
import { hardwareTable, makeSheets } from '../../../core/papers/index.ts'
import { inches, printLength, ticks } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

// IRC 2021 R507.9.2: not less than two, within 24 in of each end of the deck
describe.each([
  ['l-shape', 2],
  ['wrap-hip', 4],
])('the lateral hold-downs of %s', (name, count) => {
  const source = paperSource(CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {})
  const { estimate } = source
  const places = houseHoldDowns(estimate.frame)

  it('stand on joists in the ledgers, each so far from the end of its wall as is said', () => {
    expect(places).toHaveLength(count)
    const ledgers = estimate.frame.members.filter(({ role }) => role === 'ledger')
    const words = houseHoldDownWords(estimate)
    for (const { joist, fromEnd, end } of places) {
      const alongX = end === 'left' || end === 'right'
      const [low, high] = alongX ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const)
      const middle = (joist.box[low] + joist.box[high]) / 2
      const ends = ledgers.map(({ box }) =>
        Math.abs((end === 'left' || end === 'rear' ? box[low] : box[high]) - middle),
      )
      expect(
        ends.some((away) => Math.abs(away - fromEnd) < 1),
        joist.mark,
      ).toBe(true)
      expect(words).toContain(`${joist.mark}, ${printLength(ticks(fromEnd))} from the ${end} end`)
      // joists stand 16 in apart, and the hip is at one end of either wall
      expect(fromEnd).toBeLessThanOrEqual(inches(24))
    }
  })

  it('are ordered in pairs, one for the deck and one for inside the house, with their rods', () => {
    // IRC 2021 Figure R507.9.2(1): a hold-down on either side of the wall, one rod through both
    const [row] = hardwareTable(estimate, source.book.goods).rows.filter(({ label }) =>
      label?.startsWith('Hold-down, deck to floor framing'),
    )
    expect(row?.bought).toBe(`${2 * count}`)
    expect(row?.label).toContain('two for each place, one at the deck’s joist, one at the house’s framing')
    expect(row?.label).toContain('with the threaded rod, nuts and washers of its sheet')
    // the check counts places
    const check = estimate.checks.find(({ title }) => title === 'Lateral load connection')
    expect(check?.message).toBe(`${count} hold-downs tie the deck to the house.`)
  })

  it('send somebody inside before the ledger is fastened, when what is behind the band can still be chosen', () => {
    const words = JSON.stringify(makeSheets(source, ['steps']))
    const inside = words.indexOf('Go inside the house')
    expect(inside).toBeGreaterThan(0)
    expect(inside).toBeLessThan(words.indexOf('Prop the ledger'))
  })

  it('have a detail with their rod, and are told by the step and by the inspection card', () => {
    const made = houseHoldDownDetail(estimate)
    expect(made?.drawing.primitives.some(({ id }) => id === 'house-hold-down-rod')).toBe(true)
    const words = houseHoldDownWords(estimate)
    expect(made?.notes.join(' ')).toContain(words)
    const sheets = makeSheets(source, ['steps', 'inspections', 'details'])
    const told = sheets.filter((sheet) => JSON.stringify(sheet).includes(JSON.stringify(words).slice(1, -1)))
    expect(told.map(({ id }) => id).toSorted()).toEqual(sheets.map(({ id }) => id).toSorted())
  })
})
