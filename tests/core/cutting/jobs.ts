import type { CutJob, JointPoint, RunGroup, StockOption } from '../../../core/cutting/index.ts'
import { type Cents, feet, type Ticks, ticks } from '../../../core/units/index.ts'

/** Stock on sale by length in feet and price in cents. */
export function stockOf(prices: Readonly<Record<number, number>>): StockOption[] {
  return Object.entries(prices).map(([length, price]) => ({
    id: `${length} ft`,
    length: feet(Number(length)),
    price: price as Cents,
    supply: null,
    offcut: false,
  }))
}

export function pointAt(at: Ticks, more: Partial<JointPoint> = {}): JointPoint {
  return {
    at,
    label: `post at ${at / 384} ft`,
    cost: 0 as Cents,
    lap: ticks(0),
    cap: null,
    excess: null,
    ...more,
  }
}

export function runOf(
  id: string,
  members: number,
  length: Ticks,
  points: JointPoint[],
  more: Partial<RunGroup> = {},
): RunGroup {
  return {
    id,
    label: id,
    members: Array.from({ length: members }, (_, k) => ({ id: `${id}.${k + 1}`, mark: `${id}${k + 1}` })),
    length,
    points,
    supports: [ticks(0), ...points.map((point) => point.at), length],
    minSupports: 2,
    minPiece: ticks(0),
    maxJoints: null,
    neighboursApart: false,
    ...more,
  }
}

export function jobOf(parts: Partial<CutJob>): CutJob {
  return {
    id: 'job',
    label: '2x12',
    kerf: ticks(4),
    endTrim: ticks(0),
    stock: [],
    pieces: [],
    runs: [],
    handling: 0 as Cents,
    perCut: 0 as Cents,
    keep: null,
    objectives: ['least cost'],
    ...parts,
  }
}
