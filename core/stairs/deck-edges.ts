import type { Layout, Level } from '../layout/index.ts'
import type { DeckEdge, Side, Spot } from './types.ts'

/** The edges of the deck, level by level in the order of their outlines, as one who walks off it sees them. */
export function deckEdges({ levels }: Pick<Layout, 'levels'>): readonly DeckEdge[] {
  return levels.flatMap(edgesOf)
}

function edgesOf({ outline, edges, deckTop }: Level): readonly DeckEdge[] {
  const turn = Math.sign(doubleArea(outline))
  return edges.map(({ number, from, to, kind }) => {
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    // with y away from the house and a positive area, outward is to the right of the way round
    const out = { x: (turn * (to.y - from.y)) / length + 0, y: (turn * (from.x - to.x)) / length + 0 }
    const [near, far] = from.y < to.y || (from.y === to.y && from.x < to.x) ? [from, to] : [to, from]
    return {
      id: `edge-${number}`,
      number,
      side: sideOf(out),
      near,
      far,
      length,
      along: { x: (far.x - near.x) / length, y: (far.y - near.y) / length },
      out,
      wall: kind === 'wall',
      top: deckTop,
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

/** The side that something faces; a slanting one's is that which it faces more. */
export function sideOf(out: Spot): Side {
  if (Math.abs(out.y) >= Math.abs(out.x)) return out.y > 0 ? 'front' : 'rear'
  return out.x > 0 ? 'right' : 'left'
}

function doubleArea(outline: readonly Spot[]): number {
  return outline.reduce((sum, a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a
    return sum + a.x * b.y - b.x * a.y
  }, 0)
}
