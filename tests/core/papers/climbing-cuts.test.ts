import { expect, it } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

it('the cutting sheet draws rails, caps and posts beside stairs with the cuts that their list asks for', () => {
  const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
  const { guard } = source.estimate
  const [side] = guard?.stairs ?? []
  // a rail of 3-1/2 in on its face and a cap of 1-1/2 in on its edge lean by so much of the slope
  const lean = new Map([
    ['guard rail', 3.5 * 32 * (side?.slope ?? 0)],
    ['guard cap', 1.5 * 32 * (side?.slope ?? 0)],
  ])
  const byMark = new Map(
    guard?.members.flatMap((one) => (one.slope === undefined ? [] : [[one.mark, one] as const])),
  )
  const cuts = makeSheets(source, ['cutting'])
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) =>
      block.kind === 'set-up'
        ? block.boards.flatMap(({ marks }) =>
            block.cuts.map((cut, k) => ({ cut, member: byMark.get((marks[k] ?? '').replace(/ .*$/, '')) })),
          )
        : [],
    )
    .filter(({ member }) => member !== undefined)
  expect(cuts.length).toBe(byMark.size)
  for (const { cut, member } of cuts) {
    const [a, b] = cut.mitres?.ends ?? [0, 0]
    expect(a, member?.mark).toBe(b)
    const tangent = Math.tan((a * Math.PI) / 18_000)
    expect(Math.abs((cut.mitres?.across ?? 0) * tangent - (lean.get(member?.role ?? '') ?? 0))).toBeLessThan(
      1,
    )
  }
})
