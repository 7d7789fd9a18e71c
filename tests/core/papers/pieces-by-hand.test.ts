import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { PaperSource } from '../../../core/papers/index.ts'
import { makeSheets } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

type Estimate = PaperSource['estimate']
type Member = Estimate['frame']['members'][number]
type Spot = { readonly x: number; readonly y: number }

/** Outlines lie on a grid of 1/32 in, and the thinnest board is 1-1/2 in across: no slant is off by more than this. */
const ROUNDED = 2 / 48

/** Of two ends, for each inch across: how much further along the edge at the right of the way ends than that at its left. */
type Leans = readonly [number, number]

function leansOf(shape: readonly Spot[], way: Spot): Leans {
  const along = ({ x, y }: Spot) => x * way.x + y * way.y
  // y runs to the front: who goes to the right has the front at the right hand
  const right = ({ x, y }: Spot) => y * way.x - x * way.y
  const sides = shape.map(right)
  const edge = (side: number) => shape.filter((spot) => Math.abs(right(spot) - side) < 1).map(along)
  const [hand, other] = [edge(Math.max(...sides)), edge(Math.min(...sides))]
  const across = Math.max(...sides) - Math.min(...sides)
  return [
    (Math.min(...hand) - Math.min(...other)) / across,
    (Math.max(...hand) - Math.max(...other)) / across,
  ]
}

/**
 * From the end that is left or, away from the house, at the rear: all that the sheet says of ends; and whether a run is
 * measured from the other one.
 */
function wayOf({ box, line, plan = [] }: Member): { readonly way: Spot; readonly isBack: boolean } {
  // a corner cut off is no direction: that of the longest edge is
  const edges = plan.map((spot, i) => {
    const next = plan[(i + 1) % plan.length] ?? spot
    return { x: next.x - spot.x, y: next.y - spot.y }
  })
  const level = { x: box.x1 - box.x0, y: 0 }
  const upright = { x: 0, y: box.y1 - box.y0 }
  const stated = line === undefined ? [] : [{ x: line[1].x - line[0].x, y: line[1].y - line[0].y }]
  const sizes = [...stated, ...(stated.length > 0 ? [] : edges.length > 0 ? edges : [level, upright])]
  const longest = sizes.reduce((a, b) => (Math.hypot(b.x, b.y) > Math.hypot(a.x, a.y) ? b : a))
  const size = Math.hypot(longest.x, longest.y)
  const isAway = Math.abs(longest.y) > 1.01 * Math.abs(longest.x)
  const sign = (isAway ? longest.y : longest.x) < 0 ? -1 : 1
  const way = { x: (sign * longest.x) / size, y: (sign * longest.y) / size }
  return { way, isBack: line !== undefined && sign < 0 }
}

/** How a joint along the joists leans. */
function jointLean(joists: 'along' | 'away', way: Spot): number {
  const joist = joists === 'along' ? { x: 1, y: 0 } : { x: 0, y: 1 }
  return (joist.x * way.x + joist.y * way.y) / (joist.y * way.x - joist.x * way.y)
}

/** The slants of each piece as the set-ups draw it, turned so that its left or rear end is at the left. */
function drawn(source: PaperSource): ReadonlyMap<string, Leans> {
  const leans = new Map<string, Leans>()
  for (const block of makeSheets(source, ['cutting']).flatMap((sheet) => sheet.blocks)) {
    if (block.kind !== 'set-up') continue
    for (const { marks } of block.boards)
      marks.forEach((words, i) => {
        const { mitres } = block.cuts[i] ?? {}
        // the sheet draws the far edge on top, so that the near one is at the right of the way to the right
        const [a, b] = (mitres?.ends ?? [0, 0]).map(
          (hundredths) => -Math.tan((hundredths * Math.PI) / 18_000),
        ) as [number, number]
        // turned about, the end at the right comes first; far and near change, and so do right and left
        leans.set(words.split(' ')[0] ?? '', words.endsWith('(end for end)') ? [b, a] : [a, b])
      })
  }
  return leans
}

const slanting = CATALOGUE.filter(({ job }) => {
  const made = design(job)
  if (!made.ok) return false
  const { pieces, runs } = made.value.takeoff
  return [...pieces, ...runs].some(({ ends }) => ends !== undefined)
})
/** Boards over joists along the house whose way to the right leads towards it. */
const along = CATALOGUE.filter(({ file }) => file === 'rectangle-along.json').map(({ job }) => ({
  file: 'rectangle-along.json, decked at 45 degrees to the left,',
  job: { ...job, decking: { ...(job.decking as object), angle: 45, leans: 'left' } },
}))

describe('pieces with slanting ends, as they are drawn on the cutting sheet', () => {
  it.each([...slanting.map(({ file, job }) => ({ file, job })), ...along])(
    'lie in the deck of $file as they lie on their boards, in their own hand',
    { timeout: 120_000 },
    ({ job }) => {
      const source = paperSource(job, SAMPLE_BOOK, { quick: true })
      const { estimate } = source
      const leans = drawn(source)
      const all = [...estimate.frame.members, ...(estimate.guard?.members ?? [])]
      const members = new Map(all.map((member) => [member.id, member]))
      const runs = new Map(
        estimate.plans.flatMap(({ plan }) => plan.runPieces.map((piece) => [piece.id, piece])),
      )
      const pieces = new Map(estimate.takeoff.pieces.map((piece) => [piece.id, piece]))
      const wrong: string[] = []
      let seen = 0
      for (const { pieceId, mark } of estimate.plans.flatMap(({ plan }) =>
        plan.boards.flatMap(({ cuts }) => cuts),
      )) {
        const run = runs.get(pieceId)
        const piece = pieces.get(pieceId)
        const member = members.get(run?.memberId ?? piece?.memberId ?? '')
        // what climbs is cut plumb, what is ripped is mitred afterwards, what runs wild is cut in place
        if (member?.plan === undefined || member.ripTo !== null || member.slope !== undefined) continue
        if (piece !== undefined && piece.length !== piece.finished) continue
        const { way, isBack } = wayOf(member)
        const own = leansOf(member.plan, way)
        const is = leans.get(mark) ?? [Number.NaN, Number.NaN]
        for (const at of [0, 1] as const) {
          const end = isBack ? ((1 - at) as 0 | 1) : at
          const isJoint = run !== undefined && (at === 0 ? run.from !== 0 : run.to < member.length)
          // an end cut to fit in place, round a corner, is sawn square
          if (!isJoint && (member.ends?.[at] ?? 0) === 0) continue
          if (isJoint && (member.lay?.degrees ?? 0) === 0) continue
          const joists = estimate.layout.zones.find(({ id }) => id === member.lay?.zone)?.joists ?? 'away'
          const should = isJoint ? jointLean(joists, way) : own[end]
          seen += 1
          if (!(Math.abs(should - is[end]) <= ROUNDED))
            wrong.push(`${mark} ${end}: ${is[end]}, in the deck ${should}`)
        }
      }
      expect(wrong).toEqual([])
      expect(seen).toBeGreaterThan(0)
    },
  )
})
