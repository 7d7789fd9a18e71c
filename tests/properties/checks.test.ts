import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Check, checkFrame } from '../../core/checks/index.ts'
import type { LumberSize } from '../../core/data/index.ts'
import { frameDeck } from '../../core/frame/index.ts'
import { type Job, readJob } from '../../core/job/index.ts'
import { layOut } from '../../core/layout/index.ts'

const SIZES: readonly LumberSize[] = ['2x6', '2x8', '2x10', '2x12']
/** 300 in the gate, 10,000 in a round of the soak, of 5,000 runs. */
const RANDOM_DECKS = Math.max(300, 2 * Number(process.env.FC_RUNS ?? 100))

const STATUSES = ['passes', 'near', 'fails', 'calculated only', 'outside scope']

const inchesText = (min: number, max: number) =>
  fc.integer({ min: min * 32, max: max * 32 }).map((n) => `${n / 32} in`)
const pick = <T>(...from: T[]) => fc.constantFrom(...from)

const beam = fc.record({
  size: pick(...SIZES),
  plies: fc.integer({ min: 1, max: 3 }),
  setback: inchesText(4, 40),
  posts: fc.integer({ min: 2, max: 8 }),
  inset: inchesText(3, 30),
})

/** Decks of every kind that can be stated, sensible or not. */
const statements = fc.record({
  version: fc.constant(1),
  size: fc.record({ width: inchesText(72, 480), depth: inchesText(60, 260), height: inchesText(24, 200) }),
  site: fc.record({
    attachment: pick('ledger', 'freestanding'),
    soil: pick('unknown', 'clay or silt', 'sand', 'sandy gravel or gravel', 'rock'),
    soilBearing: fc.integer({ min: 1000, max: 4000 }),
    snowLoad: fc.integer({ min: 0, max: 100 }),
    liveLoad: pick(40, 50, 60, 100),
    deadLoad: fc.integer({ min: 10, max: 25 }),
    ledgerFastener: pick('lag', 'bolt'),
    sheathing: pick('up to 1/2 in', 'up to 1 in'),
  }),
  code: fc.record({ governs: pick('prescriptive', 'calculated') }),
  frame: fc.record({
    species: pick('SP', 'DFL', 'HF', 'SPF', 'RW', 'WC'),
    treatment: pick('treated', 'untreated'),
    joists: fc.record({ size: pick(...SIZES), spacing: pick('12 in', '16 in', '24 in', '13 in') }),
    beams: fc.record({ front: beam, rear: beam }),
    postSize: pick('4x4', '4x6', '6x6', '8x8'),
  }),
  ground: fc.record({ base: pick('0 in', '16 in', '24 in', '30 in') }),
})

function checksOf(job: Job): readonly Check[] | null {
  const layout = layOut(job)
  if (!layout.ok) return null
  const frame = frameDeck(job, layout.value)
  return frame.ok ? checkFrame(job, layout.value, frame.value) : null
}

function jobOf(statement: unknown): Job | null {
  const read = readJob(statement)
  return read.ok ? read.value.job : null
}

describe('checks of any deck', () => {
  it('end in a status, with finite figures and a sentence for each', () => {
    let framed = 0
    fc.assert(
      fc.property(statements, (statement) => {
        const job = jobOf(statement)
        const checks = job === null ? null : checksOf(job)
        if (checks === null) return
        framed++
        expect(new Set(checks.map((check) => check.id)).size).toBe(checks.length)
        for (const check of checks) {
          expect(STATUSES).toContain(check.status)
          expect(check.message.endsWith('.')).toBe(true)
          expect(check.message + check.remedy).not.toMatch(/NaN|Infinity|undefined|null/)
          if (
            check.status === 'fails' ||
            check.status === 'outside scope' ||
            check.status === 'calculated only'
          ) {
            expect(check.remedy, check.id).not.toBe('')
          }
          for (const finding of check.findings) {
            expect(Number.isFinite(finding.demand.value)).toBe(true)
            expect(finding.ratio === null || (finding.ratio >= 0 && Number.isFinite(finding.ratio))).toBe(
              true,
            )
            expect([...finding.steps, finding.lookup].join()).not.toMatch(/NaN|Infinity|undefined/)
          }
        }
      }),
      { numRuns: RANDOM_DECKS },
    )
    expect(framed).toBeGreaterThan(RANDOM_DECKS / 10)
  })

  it('pass nothing that has no row, and nothing over its limit', () => {
    fc.assert(
      fc.property(statements, (statement) => {
        const job = jobOf(statement)
        for (const { status, governing, findings } of (job === null ? null : checksOf(job)) ?? []) {
          if (status !== 'passes' && status !== 'near') continue
          expect(findings.some((one) => one.method === 'prescriptive')).toBe(true)
          expect(governing?.ratio ?? 0).toBeLessThanOrEqual(1 + 1e-9)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('say the same of the same deck', () => {
    fc.assert(
      fc.property(statements, (statement) => {
        const job = jobOf(statement)
        if (job !== null) expect(checksOf(job)).toEqual(checksOf(job))
      }),
      { numRuns: 30 },
    )
  })

  it('never find less use of a member under more live load of the same kind', () => {
    fc.assert(
      fc.property(statements, fc.integer({ min: 1, max: 40 }), (statement, more) => {
        const job = jobOf(statement)
        if (job === null) return
        const heavier = {
          ...job,
          site: {
            ...job.site,
            liveLoad: (job.site.liveLoad + more) as Job['site']['liveLoad'],
            snowLoad: 0 as Job['site']['snowLoad'],
          },
        }
        const lighter = { ...job, site: { ...job.site, snowLoad: 0 as Job['site']['snowLoad'] } }
        const before = checksOf(lighter)
        const after = checksOf(heavier)
        for (const check of before ?? []) {
          const other = after?.find((one) => one.id === check.id)
          for (const finding of check.findings.filter((one) => one.method === 'calculated')) {
            const same = other?.findings.find(
              (one) => one.method === 'calculated' && one.lookup === finding.lookup,
            )
            if (same !== undefined)
              expect((same.ratio ?? 0) - (finding.ratio ?? 0), check.id).toBeGreaterThanOrEqual(-1e-9)
          }
        }
      }),
      { numRuns: 100 },
    )
  })

  it('never ask for more of a longer joist to pass where a shorter one fails', () => {
    fc.assert(
      fc.property(statements, fc.integer({ min: 1, max: 1000 }), (statement, longer) => {
        const job = jobOf(statement)
        if (job === null) return
        const ratio = (of: Job) => checksOf(of)?.find((check) => check.id === 'joist-span')?.findings ?? []
        const short = ratio(job).find((one) => one.method === 'prescriptive')?.ratio
        const long = ratio({
          ...job,
          size: { ...job.size, depth: (job.size.depth + longer) as Job['size']['depth'] },
        }).find((one) => one.method === 'prescriptive')?.ratio
        if (short != null && long != null) expect(long).toBeGreaterThanOrEqual(short)
      }),
      { numRuns: 100 },
    )
  })
})
