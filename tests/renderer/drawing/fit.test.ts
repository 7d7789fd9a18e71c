import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fitInto, toX, toY } from '../../../renderer/drawing/fit.ts'
import { uncrowded } from '../../../renderer/drawing/uncrowded.ts'

test('every drawing lies wholly within its room, to one scale both ways, and touches it on one axis', () => {
  const side = fc.integer({ min: 100, max: 40_000 })
  fc.assert(
    fc.property(
      side,
      side,
      fc.integer({ min: 200, max: 2000 }),
      fc.integer({ min: 200, max: 2000 }),
      (w, h, width, height) => {
        const extent = { x0: -500, y0: -300, x1: w, y1: h }
        const fit = fitInto(extent, width, height, 18)
        const left = toX(fit, extent.x0)
        const right = toX(fit, extent.x1)
        const top = toY(fit, extent.y0)
        const bottom = toY(fit, extent.y1)
        expect(Math.min(left, top)).toBeGreaterThanOrEqual(18 - 1e-6)
        expect(width - right).toBeGreaterThanOrEqual(18 - 1e-6)
        expect(height - bottom).toBeGreaterThanOrEqual(18 - 1e-6)
        expect(Math.min(left, top)).toBeCloseTo(18, 6)
      },
    ),
  )
})

test('a mark that would run into the one before it is left out; marks of other rows and other things stay', () => {
  const mark = (id: string, x: number, y: number) =>
    ({ kind: 'text', id, layer: 'marks', x, y, text: id, anchor: 'middle', size: 'small' }) as const
  const all = [mark('J1', 0, 0), mark('J2', 20, 0), mark('J3', 40, 0), mark('B1', 20, 9)]
  expect(uncrowded(all, 1).map((p) => p.id)).toEqual(['J1', 'J3', 'B1'])
  expect(uncrowded(all, 2).map((p) => p.id)).toEqual(['J1', 'J2', 'J3', 'B1'])
})
