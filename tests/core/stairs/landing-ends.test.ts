import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { orderNote } from '../../../core/papers/tables/order-notes.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

// A landing 48 in wide has four joists, 15-1/2 in apart; the outer faces of the first and the last are flush with the ends of
// both beams, so that half of a hanger there would hold to nothing: two joists in hangers, two in angles
const high = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {}
const made = design(high)
if (!made.ok) throw new Error(JSON.stringify(made.error))
const { stairs, takeoff } = made.value

test('the outermost joists of a landing have an angle at either end, for a hanger has no room there', () => {
  const count = (kind: string) => stairs[0]?.connectors.find((one) => one.kind === kind)?.count
  expect([count('landing hanger'), count('landing end angle')]).toEqual([4, 4])
  const alone = design({ ...high, stairs: { kind: 'none' } })
  if (!alone.ok) throw new Error(JSON.stringify(alone.error))
  const more = (sku: string) =>
    [takeoff, alone.value.takeoff]
      .map(({ goods }) => (goods.find((one) => one.sku === sku)?.thousandths ?? 0) / 1000)
      .reduce((a, b) => a - b)
  expect(more('joist-hanger-2x10')).toBe(4)
  expect(more('end-joist-angle')).toBe(4)
})

test('the angles are named with the load that they must be listed for', () => {
  // half of 16 in by half of 37 in, 50 psf: 0.667 × 1.542 × 50 = 51.4 lb
  expect(made.value.checks.find(({ id }) => id === 'stair-landing')?.remedy).toContain(
    'listed for 52 lb or more',
  )
})

test('stringers at the ends of their headers are named in the order, two to a flight', () => {
  expect(orderNote(['good-stringer-hanger'], paperSource(high).estimate)).toContain(
    '4 of them for outer stringers, flush with the ends of their header',
  )
})
