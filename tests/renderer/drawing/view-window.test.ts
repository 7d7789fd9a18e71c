import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fitInto, toX, toY } from '../../../renderer/drawing/fit.ts'
import { panned, viewFit, zoomedAt } from '../../../renderer/drawing/view-window.ts'
import { WHOLE, windowWithin, zoomWithin } from '../../../renderer/state/drawing/view-window.ts'

const stage = { extent: { x0: -500, y0: -300, x1: 9000, y1: 5200 }, width: 900, height: 420, pad: 18 }
const place = fc.record({ x: fc.integer({ min: 0, max: 900 }), y: fc.integer({ min: 0, max: 420 }) })

test('the whole drawing is shown as if there were no window', () => {
  expect(viewFit(stage, WHOLE)).toEqual(fitInto(stage.extent, 900, 420, 18))
})

test('what lies under the pointer stays under it when the drawing grows, from any window', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true })
  const zoom = fc.double({ min: 1.01, max: 20, noNaN: true })
  fc.assert(
    fc.property(zoom, zoom, share, share, place, (before, after, x, y, at) => {
      const shown = { zoom: before, x, y }
      const from = viewFit(stage, shown)
      const under = {
        x: (at.x - from.left) / from.scale + from.x0,
        y: (at.y - from.top) / from.scale + from.y0,
      }
      const to = viewFit(stage, zoomedAt(stage, shown, after, at))
      expect(toX(to, under.x)).toBeCloseTo(at.x, 5)
      expect(toY(to, under.y)).toBeCloseTo(at.y, 5)
      expect(to.scale / from.scale).toBeCloseTo(after / before, 8)
    }),
  )
})

test('a drawing is moved by as many pixels as the pointer', () => {
  const shown = { zoom: 4, x: 0.4, y: 0.6 }
  const from = viewFit(stage, shown)
  const to = viewFit(stage, panned(stage, shown, 37, -12))
  expect(to.left - from.left).toBeCloseTo(37, 8)
  expect(to.top - from.top).toBeCloseTo(-12, 8)
})

test('a window is never smaller than whole, and its middle never leaves the drawing', () => {
  expect(windowWithin({ zoom: 0.4, x: 0.1, y: 0.9 })).toEqual(WHOLE)
  expect(windowWithin({ zoom: 3, x: -2, y: 1.4 })).toEqual({ zoom: 3, x: 0, y: 1 })
  expect(zoomWithin(1000)).toBeLessThanOrEqual(24)
})
