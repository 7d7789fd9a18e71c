import { describe, expect, test } from 'vitest'
import { makeSheets, quoteWarnings } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
const wordsOf = (id: 'steps' | 'quote', of = source) =>
  makeSheets(of, [id]).flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === 'text'
        ? [block.text]
        : block.kind === 'steps'
          ? block.items.map(({ text, notes, cautions }) =>
              [text, ...(notes ?? []), ...(cautions ?? [])].join(' '),
            )
          : [],
    ),
  )

describe('the build steps of a deck around a corner', () => {
  const steps = wordsOf('steps')
  const at = (words: RegExp) => steps.findIndex((text) => words.test(text))

  test('set rims and hip before the joists that hang between them, and those by their marks', () => {
    const [rims, hip, joists] = [
      at(/^Nail the rims/),
      at(/^Set the hip, HP1 and HP2/),
      at(/^Set the joists at the hip/),
    ]
    expect(at(/^Set the end joists/)).toBeGreaterThan(-1)
    expect(rims).toBeGreaterThan(at(/^Set the end joists/))
    expect(hip).toBeGreaterThan(rims)
    expect(joists).toBeGreaterThan(hip)
    expect(steps[joists]).toContain('J1 to J6, J32 to J37')
  })

  test('say that the two beams end in mitres on one post', () => {
    expect(steps[at(/^Nail the beams/)]).toContain('B1 and B2 end in mitres where they meet')
  })

  test('leave no board of the decking long that the cutting sheet saws to its length', () => {
    const lay = steps[at(/^Lay \d/)] ?? ''
    expect(lay).toContain('They come cut to length')
    expect(lay).not.toContain('leave')
  })

  test('ask for a tape that reaches the longest diagonal and rim', () => {
    const [sheet] = makeSheets(source, ['steps'])
    const tools = sheet?.blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : [])) ?? []
    const feet = Number(/reaches (\d+)'/.exec(tools[0] ?? '')?.[1])
    const { frame } = source.estimate
    const rims = frame.members.filter(({ role }) => role === 'rim').map(({ length }) => length / 384)
    expect(feet).toBeGreaterThanOrEqual(Math.floor(Math.max(...rims)))
  })

  test('of a deck without a hip speak of none', () => {
    expect(wordsOf('steps', paperSource(smallJob())).join(' ')).not.toMatch(/hip/)
  })
})

describe('a deck whose guard leaves no way to the yard', () => {
  test('is told so to the customer and to the office', () => {
    expect(wordsOf('quote').join(' ')).toContain('the only way off it is into the house')
    expect(quoteWarnings(source).join(' ')).toContain('ask the customer how anyone leaves the deck')
  })

  test('and not where stairs leave it', () => {
    const stairs = paperSource({
      ...smallJob(),
      stairs: { kind: 'straight' },
      guard: { where: 'all open edges' },
    })
    expect(stairs.estimate.guard?.stretches.length).toBeGreaterThan(0)
    expect(wordsOf('quote', stairs).join(' ')).not.toContain('the only way off')
  })
})

test('the quote names the permit’s drawings and its fee where neither is in the price', () => {
  expect(wordsOf('quote').join(' ')).toContain('the building permit: its drawings and its fee')
})

test('a joist along the house is told by its distance from the rear edge, also where its end slants, a hip by its corners', () => {
  const place = (mark: string) => source.estimate.takeoff.pieces.find((piece) => piece.mark === mark)?.place
  // centre of 6120 and 6168, of 8680 and 8728 ticks: 192 and 272 in
  expect(place('J32')).toBe(`joist at 16'-0" from the rear edge`)
  expect(place('J37')).toBe(`joist at 22'-8" from the rear edge`)
  expect(place('HP1')).toMatch(/^half of the hip, from the corner of the ledgers/)
})

test('what becomes of the holes’ spoil is said as it is priced: to a heap on the site, not off it', () => {
  const hauling = source.estimate.scope.find(({ topic }) => topic === 'hauling')?.message ?? ''
  expect(hauling).toContain('a heap on the site is')
  const wheel = source.estimate.pricing.lines.filter(({ id }) => id.endsWith('spoil-wheel'))
  expect(wheel.length).toBe(1)
  expect(wheel[0]?.label).toMatch(/heap/)
})
