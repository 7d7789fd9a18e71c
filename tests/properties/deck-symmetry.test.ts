import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import type { Design } from '../../core/estimate-types.ts'
import type { Member } from '../../core/frame/index.ts'
import type { JobStatement } from '../../core/job/index.ts'
import { anyCorners, type Corners, outlineText } from './arbitrary-outline.ts'

type Place = readonly [number, number]

function areaOf(corners: readonly Place[]): number {
  let sum = 0
  corners.forEach(([x, y], i) => {
    const [nx, ny] = corners[(i + 1) % corners.length] as Place
    sum += ((nx - x) * (y + ny)) / 2
  })
  return Math.abs(sum)
}

/** Every board by role, section and length, and what holds joists, decking and posts; boards cut at an angle apart. */
function orderOf({ frame, guard, takeoff }: Design) {
  const goods = takeoff.goods
    .filter(({ sku }) => /^(screw-deck|deck-clip|joist-hanger|uplift-tie|guard-hold-down)/.test(sku))
    .map(({ sku, thousandths }) => `${sku} ${thousandths}`)
  const work = takeoff.tasks
    .filter(({ rateId }) => /^(deck-trim|blocking)$/.test(rateId))
    .map(({ rateId, thousandths }) => `${rateId} ${thousandths}`)
  const members = [...frame.members, ...(guard?.members ?? [])]
  const square = members
    .filter(({ ends }) => ends === undefined)
    .map(({ role, product, length, ripTo }) => `${role} ${product.size} ${length} ${ripTo ?? ''}`)
  const slanting = members
    .filter(({ ends }) => ends !== undefined)
    .map(({ role, product, length, ripTo }) => ({ what: `${role} ${product.size} ${ripTo ?? ''}`, length }))
    .sort((one, other) => one.what.localeCompare(other.what) || one.length - other.length)
  return { square: [...square.sort(), ...goods.sort(), ...work.sort()], slanting }
}

function expectSame(other: Design, plain: Design) {
  const [is, was] = [orderOf(other), orderOf(plain)]
  expect(is.square).toEqual(was.square)
  expect(is.slanting.map(({ what }) => what)).toEqual(was.slanting.map(({ what }) => what))
  // a cut that falls on a tick is rounded to either side of it
  for (const [i, { length }] of was.slanting.entries())
    expect(Math.abs((is.slanting[i]?.length ?? 0) - length)).toBeLessThanOrEqual(1)
}

describe('the same deck seen otherwise', () => {
  /** Corners on whole feet. */
  const steps: fc.Arbitrary<Corners> = fc
    .record({
      w: fc.integer({ min: 12, max: 24 }),
      d: fc.integer({ min: 9, max: 15 }),
      step: fc.integer({ min: 0, max: 4 }),
    })
    .map(({ w, d, step }) =>
      step === 0
        ? [
            [0, 0],
            [w * 12, 0],
            [w * 12, d * 12],
            [0, d * 12],
          ]
        : [
            [0, 0],
            [w * 12, 0],
            [w * 12, (d - step) * 12],
            [(w - 5) * 12, (d - step) * 12],
            [(w - 5) * 12, d * 12],
            [0, d * 12],
          ],
    )

  const someCorners = fc.oneof({ weight: 3, arbitrary: steps }, { weight: 1, arbitrary: anyCorners })

  const stated = (
    corners: Corners,
    over: {
      readonly joists: string
      readonly from: string
      readonly angle: number
      readonly leans: string
      readonly border: number
      readonly guard?: string
    },
  ): JobStatement => ({
    shape: { outline: outlineText(corners), joists: over.joists },
    size: { height: '60 in' },
    site: { attachment: 'freestanding' },
    frame: {
      joists: { spacing: '12 in', layoutFrom: over.from },
      beams: { front: { setback: 18 }, rear: { setback: 18 } },
    },
    ground: { base: '16 in' },
    decking: { angle: over.angle, leans: over.leans, border: over.border },
    guard: { where: over.guard ?? 'none' },
  })

  /** Whether it can be built, and then is the same order mirrored with its layout from the other end, and turned by 90°. */
  function expectSymmetric(corners: Corners, angle: number, border: number): boolean {
    const guard = 'all open edges'
    const width = Math.max(...corners.map(([x]) => x))
    const plain = design(
      stated(corners, { joists: 'away', from: 'left', angle, leans: 'right', border, guard }),
    )
    if (!plain.ok) return false
    const mirrored = design(
      stated(
        corners.map(([x, y]) => [width - x, y]),
        { joists: 'away', from: 'right', angle, leans: 'left', border, guard },
      ),
    )
    const turned = design(
      stated(
        corners.map(([x, y]) => [y, x]),
        { joists: 'along', from: 'left', angle, leans: 'right', border, guard },
      ),
    )
    for (const other of [mirrored, turned]) {
      if (!other.ok) throw new Error(JSON.stringify(other.error))
      expectSame(other.value, plain.value)
    }
    return true
  }

  it('asks for the same order when mirrored with its layout from the other end, and when turned by 90 degrees', () => {
    let tried = 0
    fc.assert(
      fc.property(steps, fc.constantFrom(0, 30, 45), fc.constantFrom(0, 1), (corners, angle, border) => {
        tried += Number(expectSymmetric(corners, angle, border))
      }),
    )
    expect(tried).toBeGreaterThan(10)
  })

  it.each([
    [170, 157, 48, 55],
    [204, 180, 48, 51],
    [228, 168, 36, 36],
    [200, 150, 40, 60],
    [210, 120, 24, 48],
  ])(
    'asks for the same order with a corner of its %i by %i in cut off by %i in and %i in',
    (w, d, side, front) => {
      const corners: Corners = [
        [0, 0],
        [w, 0],
        [w, d - side],
        [w - front, d],
        [0, d],
      ]
      expect(expectSymmetric(corners, 0, 0)).toBe(true)
    },
  )

  it('is decked from the house outward on whichever side of it a wing lies', () => {
    const wing = (corners: Corners, zone: number, walls: string, from: string) =>
      design({
        shape: { outline: outlineText(corners), walls, zones: `${zone}, 0, 72, 168: along`, seams: 'hip' },
        size: { height: '36 in' },
        frame: { joists: { size: '2x8', layoutFrom: from } },
      })
    const left: Corners = [
      [0, 0],
      [72, 0],
      [72, 168],
      [264, 168],
      [264, 240],
      [0, 240],
    ]
    const right: Corners = [
      [192, 0],
      [264, 0],
      [264, 240],
      [0, 240],
      [0, 168],
      [192, 168],
    ]
    const [one, other] = [wing(left, 0, '2,3', 'left'), wing(right, 192, '5,6', 'right')]
    if (!one.ok || !other.ok) throw new Error(JSON.stringify([one, other]))
    expectSame(other.value, one.value)
  })

  it('never loses a member when it is made larger', () => {
    let tried = 0
    fc.assert(
      fc.property(someCorners, fc.constantFrom(0, 45), fc.constantFrom(0, 1), (corners, angle, border) => {
        const small = design(stated(corners, { joists: 'away', from: 'left', angle, leans: 'right', border }))
        const large = design(
          stated(
            corners.map(([x, y]) => [x * 1.25, y * 1.25]),
            { joists: 'away', from: 'left', angle, leans: 'right', border },
          ),
        )
        if (!small.ok || !large.ok) return
        tried += 1
        // the number of posts is stated
        const count = (made: Design, role: Member['role']) =>
          made.frame.members.filter((member) => member.role === role).length
        for (const role of ['joist', 'end joist', 'rim', 'beam ply', 'blocking', 'decking'] as const)
          expect(count(large.value, role), role).toBeGreaterThanOrEqual(count(small.value, role))
      }),
    )
    expect(tried).toBeGreaterThan(5)
  })

  it('shares the deck out among its joists to the last square inch: tributary areas make up the whole', () => {
    let tried = 0
    fc.assert(
      fc.property(steps, fc.constantFrom(0, 1, 2), (corners, border) => {
        const made = design(
          stated(corners, { joists: 'away', from: 'left', angle: 0, leans: 'right', border }),
        )
        if (!made.ok) return
        tried += 1
        const lines = made.value.frame.joistGroups.flatMap(({ lines: own }) => own)
        const carried = lines.reduce(
          (sum, { from, to, widths }) => sum + widths.reduce((all, width) => all + width * (to - from), 0),
          0,
        )
        const whole = areaOf(corners.map(([x, y]): Place => [x * 32, y * 32]))
        // beside a step the bay is shared by joists that end at different lines
        const steps = corners.length > 4 ? whole / 8 : 1
        expect(Math.abs(carried - whole)).toBeLessThanOrEqual(steps)
      }),
    )
    expect(tried).toBeGreaterThan(5)
  })
})
