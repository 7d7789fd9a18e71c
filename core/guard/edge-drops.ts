import { IRC_LIMITS } from '../data/index.ts'
import { isInside } from '../geometry/index.ts'
import type { Job } from '../job/index.ts'
import { groundAt, type Level } from '../layout/index.ts'
import { type DeckEdge, spotAt } from '../stairs/index.ts'
import { inches } from '../units/index.ts'
import { besideHigher } from './beside-higher.ts'
import type { EdgePart, GuardedEdge } from './types.ts'

const REACH = inches(IRC_LIMITS.guardReach.value)
const STEP = inches(12)

/** A rest of an edge shorter than this is guarded with the part that needs it: common practice, no source. */
export const SHORT_REST = inches(36)

/**
 * Every open edge with the greatest drop within 36 in of it, to the ground or to the level that lies there, sampled every foot along it and outward, its
 * ends and the far line included: exact on a plane. IRC 2021 R312.1.1.
 * @param landing number of the stairs on whose landing the edges are; null: the deck's
 */
export function edgeDrops(
  job: Job,
  edges: readonly DeckEdge[],
  levels: readonly Level[],
  landing: number | null,
): readonly GuardedEdge[] {
  return edges
    .filter((edge) => !edge.wall && !isUnderLevel(edge, levels))
    .map((edge) => {
      const lows = steps(-REACH, edge.length + REACH).map((along) => ({
        along,
        low: Math.min(
          ...steps(0, REACH).map((out) => {
            const { x, y } = spotAt(edge, along, out)
            return surfaceAt(job, levels, x, y)
          }),
        ),
      }))
      const drop = edge.top - Math.min(...lows.map(({ low }) => low))
      const stands = besideHigher(edge, levels)
      const parts = neededParts(edge, lows).filter(
        ({ from, to }) => !stands.some((one) => one.from <= from + GAP && to - GAP <= one.to),
      )
      return { edge, landing, drop, needed: parts.length > 0, parts }
    })
}

const LIMIT = inches(IRC_LIMITS.guardDrop.value)

/**
 * Parts of an edge within 36 in of a place that lies more than 30 in below: a guard begins at the last sample at which
 * none is needed, and goes on to the edge's end where that is near.
 */
function neededParts(
  edge: DeckEdge,
  lows: readonly { readonly along: number; readonly low: number }[],
): readonly EdgePart[] {
  const deep = lows.filter(({ low }) => edge.top - low > LIMIT)
  const places = steps(0, edge.length)
  const parts: EdgePart[] = []
  for (const [i, place] of places.entries()) {
    if (!deep.some(({ along }) => Math.abs(along - place) <= REACH + 1e-6)) continue
    const [before, after] = [places[i - 1] ?? 0, places[i + 1] ?? edge.length]
    const from = before < SHORT_REST ? 0 : before
    const to = edge.length - after < SHORT_REST ? edge.length : after
    const last = parts.at(-1)
    if (last !== undefined && from - last.to < SHORT_REST) parts[parts.length - 1] = { from: last.from, to }
    else parts.push({ from, to })
  }
  return parts
}

/** What one would fall on: the highest level over a place, else the ground. */
function surfaceAt(job: Job, levels: readonly Level[], x: number, y: number): number {
  if (levels.length < 2) return groundAt(job, x, y)
  const over = levels.filter(({ outline }) => isInside(outline, { x, y })).map(({ deckTop }) => deckTop)
  return over.length === 0 ? groundAt(job, x, y) : Math.max(...over)
}

/** Whether a level as high or higher lies along the whole of an edge, but for what no one falls through. */
function isUnderLevel(edge: DeckEdge, levels: readonly Level[]): boolean {
  let reached = 0
  for (const { from, to } of besideHigher(edge, levels))
    if (from <= reached + GAP) reached = Math.max(reached, to)
  return reached >= edge.length - GAP
}

/** Between two levels, or beside one: a ball of 4 in does not pass (IRC 2021 R312.1.3). */
const GAP = inches(3)

function steps(from: number, to: number): readonly number[] {
  const count = Math.max(1, Math.ceil((to - from) / STEP))
  return Array.from({ length: count + 1 }, (_, i) => Math.min(to, from + i * STEP))
}
