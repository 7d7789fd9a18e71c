import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { design } from '../../core/design.ts'
import type { JobStatement } from '../../core/job/index.ts'
import { CATALOGUE } from '../fixtures/catalogue.ts'

const inch = (min: number, max: number) => fc.integer({ min, max }).map((n) => `${n} in`)
const attachment = fc.constantFrom('ledger', 'freestanding')

/** Rectangles of every size that is built, some with a hole for a tree. */
const rectangles = fc
  .record({ width: fc.integer({ min: 48, max: 480 }), depth: fc.integer({ min: 60, max: 192 }), attachment })
  .map(
    (one): JobStatement => ({
      version: 1,
      size: { width: `${one.width} in`, depth: `${one.depth} in`, height: '60 in' },
      site: { attachment: one.attachment, snowLoad: 0 },
    }),
  )

/** Decks with a corner cut off at any angle, and L-shapes, their outline alone stated. */
const outlines = fc
  .record({
    width: fc.integer({ min: 144, max: 360 }),
    depth: fc.integer({ min: 108, max: 192 }),
    across: fc.integer({ min: 12, max: 70 }),
    down: fc.integer({ min: 12, max: 60 }),
    kind: fc.constantFrom('cut', 'step'),
    attachment,
  })
  .map(({ width, depth, across, down, kind, ...one }): JobStatement => {
    // a steeper cut has no beam of its own: joists hang from its rim; a narrow step has hardly room for two footings
    const [x, y] =
      kind === 'cut'
        ? [width - across, depth - Math.min(down, across)]
        : [width - Math.max(across, 48), depth - down]
    const corner = kind === 'cut' ? '' : `${x} in, ${y} in; `
    const outline = `0, 0; ${width} in, 0; ${width} in, ${y} in; ${corner}${x} in, ${depth} in; 0, ${depth} in`
    return {
      version: 1,
      size: { height: '60 in' },
      shape: { outline },
      site: { attachment: one.attachment, snowLoad: 0 },
    }
  })

/** Outlines of the catalogue, without the sizes that their jobs state. */
const ofCatalogue = fc
  .record({ one: fc.constantFrom(...CATALOGUE), height: inch(48, 100) })
  .map(({ one: { job }, height }): JobStatement => {
    const { size, shape, site } = job as {
      size?: Record<string, string>
      shape?: Record<string, string>
      site?: Record<string, string>
    }
    const { setbacks: _, ...outline } = shape ?? {}
    return {
      version: 1,
      size: { ...size, height },
      shape: outline,
      site: { attachment: site?.attachment ?? 'ledger', snowLoad: 0 },
    }
  })

/** What a default placement can be to blame for. A deck that cannot be framed so says why, and where. */
function failing(statement: JobStatement): readonly string[] {
  const made = design(statement)
  if (!made.ok) {
    for (const { path, message } of made.error)
      expect(`${path}: ${message}`).toMatch(/^(shape|size|frame)\..+: .+/)
    return []
  }
  return made.value.checks
    .filter(({ id, status }) => /^(joist-cantilever|beam-overhang)-/.test(id) && status === 'fails')
    .map(({ id, message }) => `${id}: ${message}`)
}

function neverFails(statement: JobStatement): void {
  expect(failing(statement)).toEqual([])
}

describe('a deck whose beams and posts are all left to the defaults', () => {
  it('never fails on its cantilevers or overhangs as a rectangle, and can always be framed', () => {
    fc.assert(
      fc.property(rectangles, (statement) => {
        neverFails(statement)
        expect(design(statement).ok).toBe(true)
      }),
    )
  })

  it('never fails on them with a corner cut off or left out', () => {
    fc.assert(fc.property(outlines, neverFails))
  })

  it('never fails on them on any outline of the catalogue', () => {
    fc.assert(fc.property(ofCatalogue, neverFails), { numRuns: 60 })
  })
})
