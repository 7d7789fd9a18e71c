import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { balusterEdges, openingWords, typicalBay } from '../../../core/papers/drawings/guard-bay.ts'
import { guardPlan } from '../../../core/papers/drawings/guard-plan.ts'
import { hardwareTable, makeSheets } from '../../../core/papers/index.ts'
import { ledgerFastenings } from '../../../core/papers/marking/ledger-fastenings.ts'
import { inches, printLength, ticks } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const jobOf = (file: string) => CATALOGUE.find((one) => one.file === file)?.job ?? {}
const wrap = paperSource(jobOf('wrap-hip.json'))
const wordsOf = (id: 'details' | 'inspections' | 'framing' | 'stairs', of = wrap): readonly string[] =>
  makeSheets(of, [id]).flatMap(({ blocks }) =>
    blocks.flatMap((block) => {
      switch (block.kind) {
        case 'drawing':
          return [block.drawing.title]
        case 'steps':
          return block.items.map(({ text }) => text)
        case 'checklist':
          return block.items
        case 'facts':
          return block.rows.map((row) => row.join(': '))
        case 'text':
          return [block.text]
        default:
          return []
      }
    }),
  )

describe('an opening between balusters', () => {
  test('is never said to be less than it is: rounded up to 1/16 in, as the most', () => {
    // 3.671 in is 58.7 sixteenths: 59
    expect(openingWords(3.671 * 32)).toBe('at most 3 11/16 in')
    expect(openingWords(inches(3.625))).toBe('at most 3 5/8 in')
  })

  test('that passes no ball is not said to be as wide as one', () => {
    expect(openingWords(3.98 * 32)).toBe('under 4 in')
  })

  test('and the balusters beside it fill the bay: the last one ends an opening before the other post', () => {
    const { guard } = wrap.estimate
    for (const bay of guard?.stretches.flatMap(({ bays }) => bays) ?? []) {
      const last = balusterEdges(bay).at(-1) ?? 0
      // balusters are 1-1/2 in square
      expect(last + 48 + bay.opening).toBeCloseTo(bay.clear, 6)
    }
  })
})

describe('the guard from above', () => {
  const { guard } = wrap.estimate
  if (guard === null) throw new Error('the deck has a guard')
  const texts = guardPlan(wrap.estimate, guard).primitives.flatMap((p) => (p.kind === 'text' ? [p] : []))

  test('has every post by its mark and by its distance from the beginning of its edge', () => {
    const posts = guard.stretches.flatMap((stretch) => stretch.posts)
    expect(posts.length).toBe(guard.deckPosts)
    for (const { id, at } of posts) {
      const own = texts.filter((text) => text.id === id).map(({ text }) => text)
      expect(own).toEqual([printLength(ticks(Math.round(at))), `GP${id.split('-')[2]}`])
    }
  })

  test('names the end from which each edge is measured', () => {
    const edges = new Set(guard.stretches.map(({ edge }) => edge.number))
    const origins = texts.filter(({ text }) => text.startsWith('0 of edge'))
    expect(new Set(origins.map(({ text }) => Number(text.split(' ').at(-1))))).toEqual(edges)
    expect(origins).toHaveLength(edges.size)
  })

  test('is followed by the bay of which there are most', () => {
    const bays = guard.stretches.flatMap((stretch) => stretch.bays.map(({ clear }) => clear))
    const typical = typicalBay(guard)?.clear
    const most = bays.filter((clear) => clear === typical).length
    for (const clear of bays) expect(bays.filter((one) => one === clear).length).toBeLessThanOrEqual(most)
  })
})

describe('the fasteners of a ledger', () => {
  // IRC 2021 Table R507.9.1.3(2): 2 in or more from each end, bottom row 6-1/2 in below the top edge of a 2x10
  test('of a 2x10 lie 2 in and 6-1/2 in below its top edge', () => {
    for (const { rows } of ledgerFastenings(wrap.estimate))
      expect([rows.top / 32, rows.bottom / 32]).toEqual([2, 6.5])
  })

  test.each(CATALOGUE.map(({ file }) => file))(
    'of %s are no farther apart than the spacing, and clear of the joists',
    (file) => {
      const made = design(jobOf(file))
      if (!made.ok) throw new Error(JSON.stringify(made.error))
      for (const { places, spacing, zones, carrier } of ledgerFastenings({ ...made.value, plans: [] })) {
        expect(spacing).toBe(Math.min(...zones.map((zone) => zone.spacing)))
        expect(places[0]?.row).toBe('both')
        expect(places.at(-1)?.row).toBe('both')
        for (const [i, { at, row }] of places.entries()) {
          expect(at).toBeGreaterThanOrEqual(64)
          expect(carrier.length - at).toBeGreaterThanOrEqual(64)
          const before = places[i - 1]
          if (before !== undefined) {
            expect(at - before.at).toBeGreaterThan(0)
            expect(at - before.at).toBeLessThanOrEqual(spacing)
            if (row !== 'both' && before.row !== 'both') expect(row).not.toBe(before.row)
          }
          for (const joist of carrier.marks)
            expect(at < joist.at || at > joist.at + joist.wide, `${at} at ${joist.mark}`).toBe(true)
        }
      }
    },
  )

  test('stand on the map as often as the order has them, or the map says how many more', () => {
    const plain = paperSource(jobOf('rectangle-24-by-14.json'))
    const drawn = ledgerFastenings(plain.estimate).reduce((sum, { places }) => sum + places.length + 2, 0)
    const ordered =
      plain.estimate.takeoff.goods.find(({ sku }) => sku.startsWith('ledger-'))?.thousandths ?? 0
    const notes = makeSheets(plain, ['marking']).flatMap(({ blocks }) =>
      blocks.flatMap((block) =>
        block.kind === 'steps' ? block.items.flatMap((item) => item.notes ?? []) : [],
      ),
    )
    const more = drawn - ordered / 1000
    expect(notes.join(' ')).toContain(more > 0 ? `have ${more} more` : `They are ${drawn}.`)
  })
})

describe('details, cards and plan of a deck with a hip', () => {
  test('show the hip at both its ends, the mitred beams and the guard’s corner, from the model', () => {
    const titles = wordsOf('details')
    expect(titles).toContain('Hip HP1 and HP2 at the corner of the house, from above')
    expect(titles).toContain('Hip HP1 and HP2 over the beams’ corner and at the rims, from above')
    expect(titles).toContain('Beams B1 and B2 where they meet over post 1, from above')
    expect(titles).toContain('Guard at a corner of the deck, from above, decking off')
    // from (8', 16') to the post at (1', 23'): 7 ft by 7 ft, 7 √2 = 9.899 ft, 118.79 in, up to 1/32
    expect(titles.join(' ')).toContain('9\'-10 13/16" to the corner of the house')
  })

  test('of a plain rectangle show none of them but the guard', () => {
    const plain = wordsOf('details', paperSource(jobOf('rectangle-24-by-14.json'))).join(' ')
    expect(plain).not.toMatch(/Hip|where they meet/)
  })

  test('the card for the frame has the hip, and the guard’s hold-downs and bolts, which the decking hides', () => {
    const cards = wordsOf('inspections').join('\n')
    expect(cards).toMatch(/Hip HP1 and HP2, 2 plies 2x10/)
    expect(cards).toContain('17 hold-downs, one at the upper bolt')
    expect(cards).toContain('34 bolts')
  })

  test('the joint at the inside corner is ordered, and named on the plan, as one to be asked for', () => {
    expect(wordsOf('framing').join('\n')).toContain('To be designed: The joint of hip HP1 and HP2')
    const hanger = hardwareTable(wrap.estimate).rows.find(({ label }) => label?.includes('two 2x10, skewed'))
    expect(hanger?.label).toContain('ask the designer before it is ordered')
  })
})

describe('a landing between two flights', () => {
  const high = paperSource(jobOf('high-stairs-landing.json'))

  test('has its frame drawn with every mark, and its hangers told on the sheet and the card', () => {
    const drawings = makeSheets(high, ['stairs']).flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'drawing' ? [block.drawing] : [])),
    )
    const plan = drawings.find(({ id }) => id === 'landing-plan')
    const marks = plan?.primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : [])) ?? []
    for (const { mark, role } of high.estimate.stairs.flatMap(({ members }) => members))
      if (role === 'landing beam' || role === 'landing joist' || role === 'landing post')
        expect(marks).toContain(mark)
    // four joists, hung at both ends
    expect(wordsOf('stairs', high).join(' ')).toContain('joists LJ1 to LJ4 hung between the beams')
    expect(wordsOf('inspections', high).join(' ')).toContain('in 8 landing hangers')
  })
})

describe('goods for joints', () => {
  test('are counted as a yard sells them, for the money that they cost', () => {
    const joints = wrap.estimate.pricing.lines.filter(
      ({ group, part }) => group === 'joints' && part === 'material',
    )
    const named = joints.map(({ label }) => label)
    const rows = hardwareTable(wrap.estimate).rows.filter(({ label }) =>
      named.some((words) => label?.startsWith(words)),
    )
    // the price book's own names of joints are no codes of a yard
    expect(rows.map(({ code }) => code)).toEqual(['', '', ''])
    expect(rows.map(({ unit }) => unit)).toEqual(['plates', 'lb', 'screws'])
    expect(rows.map(({ unit }) => unit)).not.toContain('joint')
    const decking = joints.find(({ id }) => id === 'joint-decking-material')?.thousandths ?? 0
    // two screws at each
    expect(Number(rows.at(-1)?.bought)).toBe((2 * decking) / 1000)
    const cents = (text = '') => Math.round(Number(text.replace(/[$,]/g, '')) * 100)
    expect(rows.reduce((sum, { amount }) => sum + cents(amount), 0)).toBe(
      joints.reduce((sum, { amount }) => sum + amount, 0),
    )
  })
})
