import {
  edgeAt,
  heightAt,
  lengthOf,
  meeting,
  movedLeft,
  type PlanePoint,
  type Polygon,
  partsInside,
  pointAt,
  type Segment,
  shareAt,
} from '../geometry/index.ts'
import { inches } from '../units/index.ts'

/** A beam's line along one edge or more, from left to right as the joists are seen. */
export interface BeamLine {
  /** index of the edge that it follows */
  readonly edge: number
  readonly line: Segment
  /** lines of the cuts at its ends; null: square */
  readonly cuts: readonly [Segment | null, Segment | null]
  /** whether it meets the beam before it and the one after it there */
  readonly meets: readonly [boolean, boolean]
}

/** Whether an edge leans more along the joists than across them. */
export function isSteep({ from, to }: Segment): boolean {
  return Math.abs(to.y - from.y) > Math.abs(to.x - from.x)
}

export interface BeamRule {
  /** outer face of the rim of an edge to the centre line, along the joists */
  setback(edge: number): number
  /** half of the beam's thickness */
  readonly half: number
  /** thickness of the rim */
  readonly rim: number
  /** what both faces of a beam lie in */
  readonly within: Polygon
  /** whether a beam that ends at a place of the edges is mitred along them there */
  isMitred(end: PlanePoint): boolean
}

/** A shorter beam carries nothing that is worth two posts: common practice, no source. */
const LEAST_BEAM = inches(12)

/**
 * Beams behind the edges at which joists end: one behind each level edge, drawn on behind the slanting edges beside it
 * as far as their joists still reach it, and one that follows a slanting edge where they do not.
 * @param isFoot edges at whose rim joists end; the polygon's area is positive and its feet are its far edges
 */
export function beamLines(
  polygon: Polygon,
  isFoot: (edge: number) => boolean,
  rule: BeamRule,
): readonly BeamLine[] {
  return chainsOf(polygon, isFoot).flatMap((chain) => chainBeams(polygon, chain, rule))
}

/** An edge of a chain from left to right. */
interface Link {
  readonly edge: number
  readonly left: PlanePoint
  readonly right: PlanePoint
  readonly level: boolean
  /** leans more along the joists than across them: its joists hang from its rim, and no beam follows it */
  readonly steep: boolean
  /** the beam's centre line behind it, without end: the setback away along the joists */
  readonly behind: Segment
}

function chainsOf(polygon: Polygon, isFoot: (edge: number) => boolean): readonly (readonly number[])[] {
  const count = polygon.length
  const chains: number[][] = []
  const start = polygon.findIndex((_, i) => !isFoot(i))
  for (let step = 1; step <= count; step++) {
    const i = (start + step) % count
    if (!isFoot(i)) continue
    const before = chains.at(-1)
    if (before?.[0] === (i + count - 1) % count) before.unshift(i)
    else chains.push([i])
  }
  return chains.sort((a, b) => leftOf(polygon, a) - leftOf(polygon, b))
}

function leftOf(polygon: Polygon, [first]: readonly number[]): number {
  return edgeAt(polygon, first ?? 0).to.x
}

function chainBeams(polygon: Polygon, chain: readonly number[], rule: BeamRule): readonly BeamLine[] {
  const links = chain.map((edge): Link => {
    const { from: right, to: left } = edgeAt(polygon, edge)
    const back = ({ x, y }: PlanePoint) => ({ x, y: y - rule.setback(edge) })
    return {
      edge,
      left,
      right,
      level: left.y === right.y,
      steep: isSteep({ from: left, to: right }),
      behind: { from: back(left), to: back(right) },
    }
  })
  const reaches = links.map((link, i) => (link.level ? reachOf(links, i, rule) : null))
  const chosen = mergedLevels(links, reaches).filter(
    ({ first }) => links[first]?.level === true || !(links[first]?.steep || isCovered(links, reaches, first)),
  )
  return chosen.flatMap(({ first, last, reach }, i): readonly BeamLine[] => {
    const link = links[first]
    if (link === undefined) return []
    const before = chosen[i - 1]
    const after = chosen[i + 1]
    const cutBefore =
      before !== undefined && before.last === first - 1 ? cutBetween(links[before.last], link, rule) : null
    const cutAfter =
      after !== undefined && after.first === last + 1 ? cutBetween(link, links[after.first], rule) : null
    const from = cutBefore?.from ?? at(link.behind, reach?.from ?? link.left.x)
    const to = cutAfter?.from ?? at(link.behind, reach?.to ?? link.right.x)
    if (to.x - from.x < 1) return []
    const found = squareInside(
      rule.within,
      { from, to },
      rule.half,
      (end) =>
        end === cutBefore?.from ||
        end === cutAfter?.from ||
        (!link.level && (end === from || end === to)) ||
        rule.isMitred(end),
    )
    const parts = found.filter((part) => part.to.x - part.from.x >= LEAST_BEAM / 2)
    return parts.map((line) => ({
      edge: link.edge,
      line,
      cuts: [
        line.from === from ? (cutBefore ?? plumb(link, from)) : null,
        line.to === to ? (cutAfter ?? plumb(link, to)) : null,
      ],
      meets: [line.from === from && cutBefore !== null, line.to === to && cutAfter !== null],
    }))
  })
}

/** Less of a beam outside an edge is the rounding of its places, ticks. */
const NOISE = 0.5

/**
 * The parts of a beam's centre line on which its two faces lie in the polygon as well: where an edge slants past it, its
 * square end reaches the edge with one corner.
 * @param isCut whether an end is cut along another line, and so goes as far as the centre line does
 */
export function squareInside(
  polygon: Polygon,
  line: Segment,
  half: number,
  isCut: (end: PlanePoint) => boolean,
): readonly Segment[] {
  const faces = half <= NOISE ? [] : [half - NOISE, NOISE - half]
  return partsInside(polygon, line).flatMap((whole) => {
    const parts = faces.reduce<readonly Segment[]>(
      (rest, off) => {
        const beside = partsInside(polygon, movedLeft(whole, off))
        return rest.flatMap((part) => {
          const shared = beside.flatMap((one) => shorter(part, one)).filter((one) => lengthOf(one) > NOISE)
          // a beam at the edge itself may have one face past it
          return shared.length === 0 ? [part] : shared
        })
      },
      [whole],
    )
    return parts.map(({ from, to }, i) => ({
      from: i === 0 && isCut(whole.from) ? whole.from : from,
      to: i === parts.length - 1 && isCut(whole.to) ? whole.to : to,
    }))
  })
}

/** A line no longer than one beside it; an end that is not past the other's keeps its exact place. */
function shorter(line: Segment, beside: Segment): readonly Segment[] {
  const [least, most] = [shareAt(line, beside.from), shareAt(line, beside.to)]
  if (least >= 1 || most <= 0) return []
  const slack = NOISE / lengthOf(line)
  return [
    {
      from: pointAt(line, least <= slack ? 0 : least),
      to: pointAt(line, most >= 1 - slack ? 1 : most),
    },
  ]
}

/** A slanting beam ends on a line along the joists, so that it carries the end joist too. */
function plumb(link: Link, { x, y }: PlanePoint): Segment | null {
  return link.level ? null : { from: { x, y }, to: { x, y: y + 1 } }
}

function at(line: Segment, x: number): PlanePoint {
  return { x, y: heightAt(line, x) }
}

interface Reach {
  readonly from: number
  readonly to: number
}

/** How far behind the slanting edges beside it a level edge's beam still carries the joists that end there. */
function reachOf(links: readonly Link[], i: number, rule: BeamRule): Reach {
  const link = links[i]
  if (link === undefined) return { from: 0, to: 0 }
  const level = link.behind.from.y
  const carriedTo = (next: Link, near: PlanePoint, far: PlanePoint): number | null => {
    const slope = (far.y - near.y) / (far.x - near.x)
    if (next.steep) {
      // as far as the edge itself, whose rim it carries
      return near.y > level && far.y < level ? near.x + (level - near.y) / slope : null
    }
    const need = level + rule.half + rule.rim * Math.hypot(1, slope)
    if (Math.min(near.y, far.y) >= need) return far.x
    return near.y > need ? near.x + (need - near.y) / slope : null
  }
  let to = link.right.x
  for (const next of links.slice(i + 1)) {
    const reached = next.level ? null : carriedTo(next, next.left, next.right)
    if (reached !== null) to = reached
    if (reached !== next.right.x) break
  }
  let from = link.left.x
  for (const next of links.slice(0, i).reverse()) {
    const reached = next.level ? null : carriedTo(next, next.right, next.left)
    if (reached !== null) from = reached
    if (reached !== next.left.x) break
  }
  return { from, to }
}

interface Choice {
  readonly first: number
  readonly last: number
  readonly reach: Reach | null
}

/** Level edges at one height whose beams reach each other share one. */
function mergedLevels(links: readonly Link[], reaches: readonly (Reach | null)[]): readonly Choice[] {
  const choices: Choice[] = []
  for (const [i, link] of links.entries()) {
    const reach = reaches[i] ?? null
    const same = choices.findIndex(
      (one) =>
        reach !== null &&
        one.reach !== null &&
        links[one.first]?.behind.from.y === link.behind.from.y &&
        one.reach.to >= reach.from,
    )
    const before = choices[same]
    if (before?.reach && reach) {
      choices.splice(same, choices.length - same, {
        first: before.first,
        last: i,
        reach: { from: before.reach.from, to: Math.max(before.reach.to, reach.to) },
      })
    } else choices.push({ first: i, last: i, reach })
  }
  return choices
}

/** Whether beams of level edges carry all joists that end at a slanting one. */
function isCovered(links: readonly Link[], reaches: readonly (Reach | null)[], i: number): boolean {
  const link = links[i]
  if (link === undefined) return true
  const from = Math.max(link.left.x, ...reaches.slice(0, i).map((reach) => reach?.to ?? link.left.x))
  const to = Math.min(link.right.x, ...reaches.slice(i + 1).map((reach) => reach?.from ?? link.right.x))
  return from >= to
}

/** The cut on which two beams of a chain meet: from the meeting of their centre lines towards that of their far faces. */
function cutBetween(left: Link | undefined, right: Link | undefined, rule: BeamRule): Segment | null {
  if (left === undefined || right === undefined) return null
  const joint = meeting(left.behind, right.behind)
  const inner = meeting(movedLeft(left.behind, -rule.half), movedLeft(right.behind, -rule.half))
  return joint === null || inner === null ? null : { from: joint, to: inner }
}
