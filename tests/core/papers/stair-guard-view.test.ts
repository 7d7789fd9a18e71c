import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { stairGuardViews } from '../../../core/papers/drawings/stair-guard-view.ts'
import type { Drawing, Primitive } from '../../../core/papers/index.ts'
import { inches, printLength, ticks } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const SIXTEENTH = inches(1) / 16

const views = CATALOGUE.flatMap(({ file, job }) => {
  const made = design(job)
  if (!made.ok || made.value.guard === null) return []
  const { guard } = made.value
  return stairGuardViews(made.value, guard).map((drawing) => ({ file, drawing, made: made.value, guard }))
})

function of<K extends Primitive['kind']>(
  { primitives }: Drawing,
  kind: K,
): Extract<Primitive, { kind: K }>[] {
  return primitives.filter((p): p is Extract<Primitive, { kind: K }> => p.kind === kind)
}

/** The dashed line, as a level at a place: y runs down. */
function nosingsOf(drawing: Drawing): (x: number) => number {
  const [line] = of(drawing, 'line').filter(({ stroke }) => stroke === 'hidden')
  if (line === undefined) throw new Error('no line of the nosings')
  return (x) => line.y1 + ((x - line.x1) / (line.x2 - line.x1)) * (line.y2 - line.y1)
}

describe('the guard beside stairs, seen from its side', () => {
  it('is drawn for every side of every deck that has one, alike sides once', () => {
    expect(views.length).toBeGreaterThan(4)
    for (const { file, guard } of views) {
      const titles = views.filter((view) => view.file === file).map(({ drawing }) => drawing.title)
      const named = titles.flatMap((title) => title.match(/sides? ([\d, ]+), flight/)?.[1]?.split(', ') ?? [])
      expect(
        named.map(Number).toSorted((a, b) => a - b),
        file,
      ).toEqual(guard.stairs.map(({ number }) => number))
    }
  })

  it('has its dashed line on the nosings of all treads', () => {
    for (const { file, drawing } of views) {
      const nosings = nosingsOf(drawing)
      const treads = of(drawing, 'rect')
      expect(treads.length, file).toBeGreaterThan(0)
      const level = Map.groupBy(treads, ({ y }) => Math.round(y))
      for (const boards of level.values()) {
        const nose = Math.max(...boards.map(({ x, w }) => x + w))
        const [{ y } = { y: 0 }] = boards
        expect(Math.abs(nosings(nose) - y), `${file} ${drawing.title}`).toBeLessThanOrEqual(2 * SIXTEENTH)
      }
    }
  })

  it('ends as far over that line as the job states, all along, and says so', () => {
    for (const { file, drawing, made } of views) {
      const nosings = nosingsOf(drawing)
      const { height } = made.job.guard
      const rails = of(drawing, 'polygon').filter(({ id }) => /^stair-guard-(?:cap|rail)/.test(id))
      expect(rails.length, file).toBeGreaterThan(0)
      const over = rails.flatMap(({ points }) => points.map(({ x, y }) => nosings(x) - y))
      expect(Math.abs(Math.max(...over) - height), `${file} ${drawing.title}`).toBeLessThanOrEqual(SIXTEENTH)
      const told = of(drawing, 'dimension').map(({ text }) => text)
      expect(told).toContain(printLength(height))
    }
  })

  it('has both bolts of a post in its wood, and the figures of the chain add up to the last post', () => {
    for (const { file, drawing, guard } of views) {
      for (const { id, cx, cy, r } of of(drawing, 'circle')) {
        const [post] = of(drawing, 'polygon').filter((polygon) => polygon.id === id)
        const xs = post?.points.map(({ x }) => x) ?? []
        const ys = post?.points.map(({ y }) => y) ?? []
        expect(cx - r).toBeGreaterThan(Math.min(...xs))
        expect(cx + r).toBeLessThan(Math.max(...xs))
        expect(cy - r).toBeGreaterThan(Math.min(...ys))
        expect(cy + r).toBeLessThan(Math.max(...ys))
      }
      const chain = of(drawing, 'dimension').filter(({ id }) => id.endsWith('-at'))
      const number = Number(drawing.id.replace('stair-guard-', ''))
      const side = guard.stairs.find((one) => one.number === number)
      const last = side?.posts.at(-1)?.at ?? 0
      const first = side?.posts[0]?.at ?? 0
      const sum = chain.reduce((all, { x1, x2 }) => all + Math.abs(x2 - x1), 0)
      const from = chain.some(({ x1, x2 }) => Math.min(x1, x2) === 0) ? 0 : first
      expect(Math.abs(sum - (last - from)), file).toBeLessThan(1)
      for (const { x1, x2, text } of chain)
        expect(text).toBe(printLength(ticks(Math.round(Math.abs(x2 - x1)))))
    }
  })
})
