import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { carriers } from '../../../core/frame/index.ts'
import { balusterEdges, openingWords, typicalBay } from '../../../core/papers/drawings/guard-bay.ts'
import { guardPlans } from '../../../core/papers/drawings/guard-plan.ts'
import { hardwareTable, makeSheets } from '../../../core/papers/index.ts'
import { ledgerFastenings } from '../../../core/papers/marking/ledger-fastenings.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
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
  const texts = guardPlans(wrap.estimate, guard).flatMap(({ primitives }) =>
    primitives.flatMap((p) => (p.kind === 'text' ? [p] : [])),
  )

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

  test.each(CATALOGUE.map(({ file }) => file))(
    'of %s are as many on the map as are ordered, and two pairs more for each joint, wherever it falls',
    (file) => {
      const made = design(jobOf(file))
      if (!made.ok) throw new Error(JSON.stringify(made.error))
      const { frame, takeoff } = made.value
      // every ledger of the catalogue is lagged, and nothing else in it takes lag screws
      const ordered = takeoff.goods.find(({ sku }) => sku === 'ledger-lag-1/2')?.thousandths ?? 0
      const jointed = (joints: readonly { readonly memberId: string; readonly at: number }[]) => {
        const all = ledgerFastenings({ ...made.value, plans: [{ plan: { joints } }] })
        const rings = all.flatMap(({ places }) => places.map(({ row }) => (row === 'both' ? 2 : 1)))
        return { all, rings: rings.reduce<number>((sum, one) => sum + one, 0) }
      }
      expect(jointed([]).rings * 1000).toBe(ordered)
      for (const run of frame.runs.filter(({ kind }) => kind === 'ledger')) {
        const joints = run.points.flatMap(({ at }) =>
          run.memberIds.map((memberId): { memberId: string; at: number } => ({ memberId, at })),
        )
        const thirds = joints.filter((_, i) => i % 3 === 0)
        for (const some of [...joints.map((one) => [one]), thirds]) {
          const { all, rings } = jointed(some)
          expect(rings).toBe(ordered / 1000 + 4 * some.length)
          const { carrier, places, spacing } =
            all.find(({ carrier: { id } }) => id === some[0]?.memberId) ?? all[0] ?? {}
          for (const { at } of carrier?.lines ?? []) {
            // IRC 2021 Table R507.9.1.3(2): 2 in from an end; both rows on either side, in the joint's own bay
            const before = places?.findLast((one) => one.at < at)
            const after = places?.find((one) => one.at > at)
            expect([before?.row, after?.row]).toEqual(['both', 'both'])
            expect(at - (before?.at ?? 0)).toBeGreaterThanOrEqual(64)
            expect((after?.at ?? 0) - at).toBeGreaterThanOrEqual(64)
            const between = carrier?.marks.filter(
              (joist) => joist.at > (before?.at ?? 0) && joist.at < (after?.at ?? 0),
            )
            expect(between).toEqual([])
          }
          for (const [i, { at }] of (places ?? []).entries())
            if (i > 0) expect(at - (places?.[i - 1]?.at ?? 0)).toBeLessThanOrEqual(spacing ?? 0)
        }
      }
    },
  )

  test('of a jointed ledger are told with the joint’s, and both stand on the order', () => {
    const plain = paperSource(jobOf('rectangle-24-by-14.json'))
    const bought = hardwareTable(plain.estimate, SAMPLE_BOOK.goods).rows.flatMap(
      ({ label, bought: count }) =>
        label?.startsWith('Lag screw') || label?.includes('ledger joint') ? [Number(count)] : [],
    )
    const notes = makeSheets(plain, ['marking']).flatMap(({ blocks }) =>
      blocks.flatMap((block) =>
        block.kind === 'steps' ? block.items.flatMap((item) => item.notes ?? []) : [],
      ),
    )
    const drawn = bought.reduce((sum, one) => sum + one, 0)
    expect(notes.join(' ')).toContain(`They are ${drawn}, as many as are ordered`)
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
    const hanger = hardwareTable(wrap.estimate, SAMPLE_BOOK.goods).rows.find(({ label }) =>
      label?.includes('two 2x10, skewed'),
    )
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
    // four joists, the inner two in hangers at both ends
    expect(wordsOf('stairs', high).join(' ')).toContain('joists LJ1 to LJ4 hung between the beams')
    expect(wordsOf('inspections', high).join(' ')).toContain('in 4 landing hangers')
  })
})

describe('goods for joints', () => {
  test('are counted as a yard sells them, for the money that they cost', () => {
    const joints = wrap.estimate.pricing.lines.filter(
      ({ group, part }) => group === 'joints' && part === 'material',
    )
    const named = joints.map(({ label }) => label)
    const rows = hardwareTable(wrap.estimate, SAMPLE_BOOK.goods).rows.filter(({ label }) =>
      named.some((words) => label?.startsWith(words)),
    )
    // the price book's own names of joints are no codes of a yard; nails and screws have those of the sample book's goods
    expect(rows.map(({ code }) => code)).toEqual(['', '52040', '52125'])
    expect(rows.map(({ unit }) => unit)).toEqual(['plates', 'lb', 'screws'])
    expect(rows.map(({ unit }) => unit)).not.toContain('joint')
    const decking = joints.find(({ id }) => id === 'joint-decking-material')?.thousandths ?? 0
    // two screws at each
    expect(Number(rows.at(-1)?.needed)).toBe((2 * decking) / 1000)
    // 2,100 in boxes of 350 less the 1,844 that the decking takes: no yard sells 94 screws
    expect(rows.at(-1)).toMatchObject({ bought: '0', packs: 'out of the 256 left over of 52125' })
    // 20 lb in boxes of 5 lb less 15.75 lb
    expect(rows[1]).toMatchObject({ bought: '0', packs: 'out of the 4.25 left over of 52040' })
    const cents = (text = '') => Math.round(Number(text.replace(/[$,]/g, '')) * 100)
    expect(rows.reduce((sum, { amount }) => sum + cents(amount), 0)).toBe(
      joints.reduce((sum, { amount }) => sum + amount, 0),
    )
  })
})

describe('the guard of a deck of three levels, from above', () => {
  const made = design(jobOf('largest.json'))
  if (!made.ok || made.value.guard === null) throw new Error('the deck has a guard')
  const { guard } = made.value
  const plans = guardPlans(made.value, guard)

  test('is one drawing for each level, so that no figure lies on another level’s', () => {
    expect(plans.map(({ title }) => title)).toEqual([
      'Guard of level 1 from above',
      'Guard of level 2 from above',
      'Guard of level 3 from above',
    ])
  })

  test('has every post of the deck and of the stairs once, on the plan of its own level', () => {
    const wanted = guard.members.flatMap(({ role, mark }) => (role === 'guard post' ? [mark] : []))
    const written = plans.flatMap(({ primitives }) =>
      primitives.flatMap((p) => (p.kind === 'text' && wanted.includes(p.text) ? [p.text] : [])),
    )
    expect([...written].sort()).toEqual([...wanted].sort())
  })
})

describe('joists that meet a hip at its end by the house', () => {
  const all = carriers(wrap.estimate, [])
  const marksOn = (label: string) =>
    all.find((one) => one.label === label)?.marks.map(({ mark }) => mark) ?? []

  // J6 and J32 stand 3/4 in from the corner of the ledgers, where the two plies of the hip, 2-1/8 in each at 45°, end
  test('are marked on the hip from which they hang, and not on the ledger', () => {
    expect(marksOn('ledger L1')).not.toContain('J6')
    expect(marksOn('ledger L2')).not.toContain('J32')
    expect(marksOn('hip HP1')).toContain('J6')
    expect(marksOn('hip HP2')).toContain('J32')
  })

  test('and the hip’s own end keep the ledger’s fasteners away', () => {
    const [first] = ledgerFastenings({ ...wrap.estimate, plans: [] })
    // the hip's end takes 2.12 in of the ledger's face, J6 reaches to 2.25 in; 2.25 in off it for a hanger's flange
    expect(first?.places[0]?.at ?? 0).toBeGreaterThanOrEqual(4.5 * 32)
  })

  test('have their hangers told with the joint that is designed, on the plan and on the order', () => {
    expect(wordsOf('framing').join('\n')).toContain('Joists J6 and J32 meet the hip at this very end')
    const skewed = hardwareTable(wrap.estimate, SAMPLE_BOOK.goods).rows.find(({ label }) =>
      label?.includes('one 2x10, skewed'),
    )
    const hangers = hardwareTable(wrap.estimate, SAMPLE_BOOK.goods).rows.filter(({ label }) =>
      label?.includes('skewed'),
    )
    expect((skewed ?? hangers[0])?.label).toContain('those of J6 and J32')
  })
})
