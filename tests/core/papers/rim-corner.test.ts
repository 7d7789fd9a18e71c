import { expect, test } from 'vitest'
import { innerCornerDetail } from '../../../core/papers/details/inner-corner-detail.ts'
import { rimCornerDetail } from '../../../core/papers/details/rim-corner-detail.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const detailOf = (name: string) => {
  // no detail hangs on how the boards are cut
  const job = CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {}
  const { estimate } = paperSource(job, SAMPLE_BOOK, { quick: true })
  return { estimate, made: rimCornerDetail(estimate) }
}

// rims are as long as the deck is wide: they cover the end joists' ends, and the nails go through them into end grain
test('the corner between a rim and an end joist is drawn with the rim running through and its nails', () => {
  const { estimate, made } = detailOf('wrap-hip')
  const shapes = new Map(
    (made?.drawing.primitives ?? []).flatMap((p) =>
      p.kind === 'polygon' ? [[p.id, p.points] as const] : [],
    ),
  )
  const member = (mark: string) => estimate.frame.members.find((one) => one.mark === mark)
  const corners = [
    ['R1', 'E1'],
    ['R2', 'E2'],
  ] as const
  const [rim, end] =
    corners.map(([r, e]) => [member(r), member(e)]).find(([r]) => shapes.has(r?.id ?? '')) ?? []
  const extent = (id = '') => {
    const points = shapes.get(id) ?? []
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
    return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) }
  }
  const [r, e] = [extent(rim?.id), extent(end?.id)]
  // the end joist stops at the rim's inner face, and the rim reaches the end joist's outer face
  const alongX = r.x1 - r.x0 > r.y1 - r.y0
  expect(
    alongX
      ? [r.y0, r.y1].some((y) => y === e.y0 || y === e.y1)
      : [r.x0, r.x1].some((x) => x === e.x0 || x === e.x1),
  ).toBe(true)
  expect(alongX ? r.x0 <= e.x0 && r.x1 >= e.x1 : r.y0 <= e.y0 && r.y1 >= e.y1).toBe(true)
  expect(made?.drawing.primitives.some(({ id }) => id === 'rim-corner-nail')).toBe(true)
  const said = made?.notes.join(' ') ?? ''
  expect(said).toContain('runs through')
  // IRC 2021 R507.6.2: three nails into the end of each joist
  expect(said).toContain('3 nails 16d common through the rim')
  for (const [a, b] of corners) expect(said).toContain(`${a} and ${b}`)
})

test('every deck that has an end joist square to a rim has that corner', () => {
  for (const name of ['l-shape', 'high-stairs-landing', 'picture-frame-l', 'largest'])
    expect(detailOf(name).made, name).not.toBeNull()
})

test('the inner corner of an L, where a rim ends at an end joist that runs on, is drawn with its nails', () => {
  const { estimate } = detailOf('l-shape')
  const made = innerCornerDetail(estimate)
  const said = made?.notes.join(' ') ?? ''
  // the wing is 120 in wide from 168 in on and 96 in deep: rim R3 begins at E3, which goes on to 166-1/2 in
  expect(said).toContain('R3 and E3')
  expect(made?.drawing.primitives.some(({ id }) => id === 'inner-corner-nail')).toBe(true)
  const rule = estimate.takeoff.goods
    .filter(({ sku }) => sku === 'nail-16d-common')
    .map(({ cause }) => cause.rule)
    .join(' ')
  expect(rule).toContain('at an inner corner: 3 nails')
  expect(innerCornerDetail(detailOf('high-stairs-landing').estimate)).toBeNull()
})
