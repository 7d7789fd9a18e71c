import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import {
  auditPlan,
  type Board,
  type CutJob,
  type CutPlan,
  type LpEngine,
  planCuts,
} from '../../core/cutting/index.ts'
import { cents, ticks } from '../../core/units/index.ts'
import { loadHighs } from '../../main/workers/lp/index.ts'
import { bruteMitredCost } from './brute-mitres.ts'

const numRuns = Number(process.env.FC_RUNS ?? 120)

const angle = fc.constantFrom(0, 0, 4500, 4500, 4500, -4500, 3000, 2250)
const piece = fc.record({
  length: fc.integer({ min: 20, max: 160 }),
  across: fc.constantFrom(20, 20, 6),
  left: angle,
  right: angle,
})

/** Up to five pieces and a jointed run, of two or three stock lengths: what the oracle can try. */
const arbitraryMitredJob: fc.Arbitrary<CutJob> = fc
  .record({
    kerf: fc.integer({ min: 0, max: 4 }),
    endTrim: fc.constantFrom(0, 0, 2),
    stock: fc.uniqueArray(fc.integer({ min: 120, max: 400 }), { minLength: 1, maxLength: 3 }),
    pieces: fc.array(piece, { minLength: 1, maxLength: 5 }),
    run: fc.option(
      fc.record({
        length: fc.integer({ min: 120, max: 240 }),
        at: fc.uniqueArray(fc.integer({ min: 40, max: 90 }), { maxLength: 1 }),
        members: fc.integer({ min: 1, max: 2 }),
        left: angle,
        right: angle,
        joint: angle,
        cost: fc.integer({ min: 0, max: 30 }),
      }),
      { nil: undefined },
    ),
  })
  .map(({ kerf, endTrim, stock, pieces, run }) => ({
    id: 'mitred',
    label: 'mitred',
    kerf: ticks(kerf),
    endTrim: ticks(endTrim),
    stock: stock.map((length) => ({
      id: `${length}`,
      length: ticks(length),
      price: cents(length + 20),
      supply: null,
      offcut: false,
    })),
    pieces: pieces.slice(0, run === undefined ? 5 : 3).map(({ length, across, left, right }, k) => ({
      id: `p${k}`,
      mark: `P${k + 1}`,
      length: ticks(length),
      ...(left === 0 && right === 0
        ? {}
        : { mitres: { across: ticks(across), ends: [left, right] as const } }),
    })),
    runs:
      run === undefined
        ? []
        : [
            {
              id: 'r',
              label: 'r',
              members: Array.from({ length: run.members }, (_, k) => ({ id: `r.${k}`, mark: `R${k + 1}` })),
              length: ticks(run.length),
              mitres: { across: ticks(20), ends: [run.left, run.right] as const, joint: run.joint },
              points: run.at.map((at) => ({
                at: ticks(at),
                label: `${at}`,
                cost: cents(run.cost),
                lap: ticks(run.joint === 0 ? 0 : 10),
                cap: null,
                excess: null,
              })),
              supports: [],
              minSupports: 0,
              minPiece: ticks(0),
              maxJoints: null,
              neighboursApart: false,
            },
          ],
    handling: cents(0),
    perCut: cents(0),
    keep: null,
    objectives: ['least cost' as const],
  }))

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

function plansOf(runs: number, look: (job: CutJob, plan: CutPlan | null) => void): void {
  fc.assert(
    fc.property(arbitraryMitredJob, (job) => {
      const planned = planCuts(job, engine)
      look(job, planned.ok ? planned.value : null)
    }),
    { numRuns: runs },
  )
}

/** Corners of a piece on its board, by its own cuts. */
function corners({ from, to, mitres }: Board['cuts'][number]): readonly [number, number][] {
  const across = mitres?.across ?? 20
  const shift = (end: 0 | 1): number => across * Math.tan(((mitres?.ends[end] ?? 0) * Math.PI) / 18_000)
  const near = [from + Math.max(0, -shift(0)), to - Math.max(0, shift(1))] as const
  return [
    [near[0], 0],
    [near[1], 0],
    [near[1] + shift(1), across],
    [near[0] + shift(0), across],
  ]
}

function holds(shape: readonly [number, number][], x: number, y: number): boolean {
  return shape.every(([ax, ay], k) => {
    const [bx, by] = shape[(k + 1) % shape.length] as [number, number]
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 1e-6
  })
}

describe('shared slanting cuts against an oracle that tries everything', () => {
  it('finds the least cost, never proves too much, and says so when nothing does the job', () => {
    let [best, all] = [0, 0]
    plansOf(numRuns, (job, plan) => {
      const least = bruteMitredCost(job)
      expect(plan === null).toBe(least === null)
      if (plan === null || least === null) return
      expect(auditPlan(job, plan)).toEqual([])
      const weighed = plan.cost + plan.preference
      expect(weighed).toBeGreaterThanOrEqual(least)
      expect(plan.bound).toBeLessThanOrEqual(least)
      all++
      if (weighed === least) best++
    })
    expect(all).toBeGreaterThan(0)
    // where pieces of several shapes count alike, a tick or two beside unlike slants may cost a plan its best place
    expect(best / all).toBeGreaterThan(0.99)
  })

  it('costs no more than by long points, however little work is allowed', () => {
    let cheaper = 0
    fc.assert(
      fc.property(arbitraryMitredJob, fc.boolean(), fc.nat({ max: 3 }), (mitred, quick, nodes) => {
        // without a kerf a plan by long points fits its boards at any angle
        const job = { ...mitred, kerf: ticks(0) }
        const square: CutJob = {
          ...job,
          pieces: job.pieces.map(({ mitres: _, ...piece }) => piece),
          runs: job.runs.map(({ mitres: _, ...run }) => run),
        }
        const options = { quick, limits: { nodes, columns: 2 * nodes, patterns: 5 } }
        const [shared, plain] = [planCuts(job, engine, options), planCuts(square, engine, options)]
        if (!plain.ok) return
        expect(shared.ok).toBe(true)
        if (!shared.ok) return
        expect(auditPlan(job, shared.value)).toEqual([])
        const [with_, without] = [shared.value, plain.value].map(({ cost, preference }) => cost + preference)
        expect(with_).toBeLessThanOrEqual(without ?? 0)
        if ((with_ ?? 0) < (without ?? 0)) cheaper++
      }),
      { numRuns },
    )
    expect(cheaper).toBeGreaterThan(0)
  })

  it('lays pieces on their boards that nowhere overlap and nowhere reach out', () => {
    let shared = 0
    plansOf(numRuns, (job, plan) => {
      for (const { cuts, length } of plan?.boards ?? []) {
        const shapes = cuts.map(corners)
        for (const [x] of shapes.flat()) {
          expect(x).toBeGreaterThanOrEqual(job.endTrim - 1e-6)
          expect(x).toBeLessThanOrEqual(length - job.endTrim + 1e-6)
        }
        cuts.forEach((cut, k) => {
          if (cut.from < (cuts[k - 1]?.to ?? 0)) shared++
        })
        for (let x = 0.37; x < length; x += 2.3)
          for (let y = 0.29; y < 20; y += 1.7)
            expect(shapes.filter((shape) => holds(shape, x, y)).length).toBeLessThanOrEqual(1)
      }
    })
    expect(shared).toBeGreaterThan(0)
  })
})
