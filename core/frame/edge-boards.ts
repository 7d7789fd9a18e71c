import { bandAlong, edgeAt } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { boardEnds, type ViewEdge, type ZoneView } from '../layout/index.ts'
import { type Dimensions, productOf } from './dimensions.ts'
import { letters } from './distinct-marks.ts'
import { placedBoard } from './footprint.ts'
import { shapeFields } from './joists.ts'
import type { Member } from './types.ts'

/** What the ledger is fastened to: the house, which is no member of the deck. */
export const HOUSE_WALL = 'house-wall'

/** A ledger, or the plies of a rim, along one edge of a zone. */
export interface EdgeBoard {
  readonly kind: 'ledger' | 'rim' | 'hip'
  /** ledger, rim-front, rim-rear, rim-front-b */
  readonly id: string
  /** front and rear rims are called so; others are numbered */
  readonly key: string
  readonly mark: string
  readonly edge: ViewEdge
  /** ply 1 is the outer one */
  readonly plies: readonly Member[]
}

/** Names and marks of the boards along the deck's edges, each used once. */
export class BoardNames {
  #ledgers = 0
  #rims = { front: 0, rear: 0 }
  #further = 2

  /** Names as they are so far, for boards that are only looked at. */
  copy(): BoardNames {
    const copy = new BoardNames()
    copy.#ledgers = this.#ledgers
    copy.#rims = { ...this.#rims }
    copy.#further = this.#further
    return copy
  }

  ledger() {
    this.#ledgers += 1
    const n = this.#ledgers
    return { id: n === 1 ? 'ledger' : `ledger-${letter(n)}`, key: `${n}`, mark: `L${n}` }
  }

  rim(side: 'front' | 'rear') {
    this.#rims[side] += 1
    const n = this.#rims[side]
    if (n > 1) this.#further += 1
    const key = n === 1 ? side : `${side}-${letter(n)}`
    return { id: `rim-${key}`, key, mark: n > 1 ? `R${this.#further}` : side === 'front' ? 'R1' : 'R2' }
  }
}

function letter(n: number): string {
  return n <= 26 ? String.fromCharCode(96 + n) : `${n}`
}

/** Ledgers from left to right. */
export function frameLedgers(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  names: BoardNames,
): readonly EdgeBoard[] {
  return along(view, 'ledger').map((at) =>
    oneBoard(job, d, view, at, {
      role: 'ledger',
      ...names.ledger(),
      bearings: [HOUSE_WALL],
      cause: {
        fields: ['size.width', 'site.attachment', 'frame.joists.size', ...shapeFields(job)],
        ids: [],
        rule: 'Length = width − two end joists, which lap its ends (common practice, no source)',
      },
    }),
  )
}

/** Plies of the rims, those at which joists start first, from left to right. */
export function frameRims(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  joistsAt: (edge: ViewEdge) => readonly string[],
  names: BoardNames,
): readonly EdgeBoard[] {
  const rims = along(view, 'rim')
  const ordered = [
    ...rims.filter(({ edge }) => edge.role === 'head'),
    ...rims.filter(({ edge }) => edge.role === 'foot'),
  ]
  return ordered.map(({ edge, index }) => {
    const { id, key, mark } = names.rim(edge.role === 'foot' ? 'front' : 'rear')
    const bearings = joistsAt(edge)
    const several = job.frame.rimPlies > 1
    const plies = Array.from({ length: job.frame.rimPlies }, (_, i): Member => {
      const { thickness } = d.joist
      return {
        id: `${id}-${i + 1}`,
        mark: `${mark}${several ? letters(i) : ''}`,
        role: 'rim',
        product: productOf(job, d.joist.size),
        ripTo: null,
        ...board(view, index, [i * thickness, (i + 1) * thickness], d),
        bearings,
        cause: {
          fields: ['size.width', 'frame.rimPlies', 'frame.joists.size', ...shapeFields(job)],
          ids: [],
          rule: 'Length = width: it covers the end joists’ ends (common practice, no source)',
        },
      }
    })
    return { kind: 'rim', id, key, mark, edge, plies }
  })
}

/** This part's ply of each hip at its edge; the other part's stands face to face with it. */
export function frameHips(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  bearings: readonly string[],
): readonly EdgeBoard[] {
  return along(view, 'hip').map((at, i) => {
    const key = `${view.zone.id.replace('zone-', '')}${i === 0 ? '' : letter(i + 1)}`
    return oneBoard(job, d, view, at, {
      role: 'hip',
      id: `hip-${key}`,
      key,
      mark: `HP${key}`,
      bearings,
      cause: {
        fields: ['shape.seams', 'shape.zones', 'frame.joists.size', ...shapeFields(job)],
        ids: bearings,
        rule: 'From the inside corner to the outside corner, one ply of each part; its ends are bevelled to fit (common practice, no source)',
      },
    })
  })
}

/** A board of one ply, a joist's size, along all of an edge. */
function oneBoard(
  job: Job,
  d: Dimensions,
  view: ZoneView,
  { edge, index }: { readonly edge: ViewEdge; readonly index: number },
  {
    key,
    ...named
  }: Pick<Member, 'id' | 'mark' | 'bearings' | 'cause'> & {
    readonly role: 'ledger' | 'hip'
    readonly key: string
  },
): EdgeBoard {
  const ply = {
    ...named,
    product: productOf(job, d.joist.size),
    ripTo: null,
    ...board(view, index, [0, edge.width], d),
  }
  return { kind: named.role, id: named.id, key, mark: named.mark, edge, plies: [ply] }
}

function along(view: ZoneView, kind: EdgeBoard['kind']) {
  return view.edges
    .flatMap((edge, index) => (edge.board === kind ? [{ edge, index }] : []))
    .sort((a, b) => leftOf(view, a.index) - leftOf(view, b.index))
}

function leftOf(view: ZoneView, index: number): number {
  const { from, to } = edgeAt(view.polygon, index)
  return Math.min(from.x, to.x)
}

/** The board between two distances inside an edge, from its left end. */
function board(view: ZoneView, index: number, depths: readonly [number, number], d: Dimensions) {
  const [outerStart, outerEnd, innerEnd, innerStart] = bandAlong(
    view.polygon,
    index,
    depths,
    boardEnds(view, index),
  )
  const levels = { z0: d.joistBottom, z1: d.joistTop }
  const isHead = view.edges[index]?.role === 'head'
  // a head runs from left to right with its outer face near; a foot from right to left with its inner face near
  return isHead
    ? placedBoard(view, [outerStart, outerEnd, innerEnd, innerStart], levels)
    : placedBoard(view, [innerEnd, innerStart, outerStart, outerEnd], levels)
}
