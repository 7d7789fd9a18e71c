import type { Fault, Job } from '../job/index.ts'
import { printLength, type Ticks, ticks } from '../units/index.ts'
import type { DeckEdge } from './types.ts'

/** The edge that stairs leave from, and where along it; or the fault that keeps them from it. */
export type Place =
  | { readonly ok: true; readonly edge: DeckEdge; readonly place: Ticks; readonly width: Ticks }
  | { readonly ok: false; readonly fault: Fault }

/** Where the stairs stand: the stated edge, or the longest open one on the stated side. */
export function placeStairs(job: Job, edges: readonly DeckEdge[]): Place {
  const { stairs } = job
  const edge =
    stairs.edge > 0 ? edges.find(({ number }) => number === stairs.edge) : longestOpen(edges, stairs.side)
  if (stairs.edge > 0 && edge === undefined) {
    return wrong(
      'stairs.edge',
      `there is no edge ${stairs.edge}: ${edgeWords(edges)}`,
      `name one of them, or 0 to go by the side`,
    )
  }
  if (edge === undefined || edge.wall) {
    return wrong(
      stairs.edge > 0 ? 'stairs.edge' : 'stairs.side',
      'the house stands there',
      'choose a side that is open',
    )
  }
  const whole = ticks(Math.floor(edge.length))
  const width = stairs.kind === 'full width' ? whole : stairs.width
  if (width > whole) {
    return wrong(
      'stairs.width',
      `the stairs, ${printLength(width)} wide, are wider than their edge of ${printLength(whole)}`,
      `make them ${printLength(whole)} or narrower`,
    )
  }
  const room = ticks(whole - width)
  const place = {
    middle: ticks(Math.floor(room / 2)),
    near: ticks(0),
    far: room,
    stated: stairs.kind === 'full width' ? ticks(0) : stairs.place,
  }[stairs.align]
  if (place > room) {
    return wrong(
      'stairs.place',
      `stairs ${printLength(width)} wide that begin at ${printLength(place)} reach past the end of their edge of ${printLength(whole)}`,
      `begin at ${printLength(room)} or less`,
    )
  }
  return { ok: true, edge, place: stairs.kind === 'full width' ? ticks(0) : place, width }
}

/** The numbers that edges have; those of further levels begin at 201 and 301. */
function edgeWords(edges: readonly DeckEdge[]): string {
  const levels = [...Map.groupBy(edges, ({ number }) => Math.floor(number / 100)).values()]
  const [first = 0, ...further] = levels.map((level) => level.length)
  const numbers = levels.slice(1).map((level) => `${level[0]?.number} to ${level.at(-1)?.number}`)
  return further.length === 0
    ? `the outline has ${first}`
    : `the outline has ${first}, and the further levels ${numbers.join(' and ')}`
}

function longestOpen(edges: readonly DeckEdge[], side: DeckEdge['side']): DeckEdge | undefined {
  const facing = edges.filter((edge) => edge.side === side)
  const open = facing.filter((edge) => !edge.wall)
  return open.toSorted((a, b) => b.length - a.length)[0] ?? facing[0]
}

function wrong(path: string, message: string, fix: string): Place {
  return { ok: false, fault: { path, message, fix } }
}
