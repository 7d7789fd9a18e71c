import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import type { DeckEdge, Side, Spot } from './types.ts'

/** The edges of the deck in the order of its outline, the first one along the house. */
export function deckEdges(job: Job, layout: Layout): readonly DeckEdge[] {
  const { outline } = layout
  const turn = Math.sign(doubleArea(outline))
  return outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    // with y away from the house and a positive area, outward is to the right of the way round
    const out = { x: (turn * (to.y - from.y)) / length, y: (turn * (from.x - to.x)) / length }
    const [near, far] = from.y < to.y || (from.y === to.y && from.x < to.x) ? [from, to] : [to, from]
    return {
      id: `edge-${i + 1}`,
      number: i + 1,
      side: sideOf(out),
      near,
      far,
      length,
      along: { x: (far.x - near.x) / length, y: (far.y - near.y) / length },
      out: { x: out.x + 0, y: out.y + 0 },
      wall: job.site.attachment === 'ledger' && from.y === 0 && to.y === 0,
      top: layout.deckTop,
    }
  })
}

/** A place by its distance along an edge and out from it. */
export function spotAt(edge: Pick<DeckEdge, 'near' | 'along' | 'out'>, along: number, out: number): Spot {
  return {
    x: edge.near.x + along * edge.along.x + out * edge.out.x,
    y: edge.near.y + along * edge.along.y + out * edge.out.y,
  }
}

function sideOf(out: Spot): Side {
  if (Math.abs(out.y) >= Math.abs(out.x)) return out.y > 0 ? 'front' : 'rear'
  return out.x > 0 ? 'right' : 'left'
}

function doubleArea(outline: readonly Spot[]): number {
  return outline.reduce((sum, a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a
    return sum + a.x * b.y - b.x * a.y
  }, 0)
}
