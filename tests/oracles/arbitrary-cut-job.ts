import fc from 'fast-check'
import type { CutJob, RunGroup, StockOption } from '../../core/cutting/index.ts'
import type { Cents, Ticks } from '../../core/units/index.ts'

const length = (n: number): Ticks => n as Ticks
const money = (n: number): Cents => n as Cents

function stock(id: string): fc.Arbitrary<StockOption> {
  return fc
    .record({
      length: fc.integer({ min: 6, max: 30 }),
      price: fc.integer({ min: 0, max: 40 }),
      supply: fc.option(fc.integer({ min: 1, max: 4 }), { nil: null, freq: 2 }),
      offcut: fc.boolean(),
      pack: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined, freq: 3 }),
      minimum: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined, freq: 3 }),
      step: fc.option(
        fc.record({ from: fc.integer({ min: 2, max: 4 }), price: fc.integer({ min: 0, max: 40 }) }),
        { nil: undefined, freq: 3 },
      ),
    })
    .map(({ pack, minimum, step, ...rest }) => ({
      id,
      length: length(rest.length),
      price: money(rest.price),
      supply: rest.supply,
      offcut: rest.offcut,
      ...(pack === undefined ? {} : { pack }),
      ...(minimum === undefined ? {} : { minimum }),
      ...(step === undefined ? {} : { breaks: [{ from: step.from, price: money(step.price) }] }),
    }))
}

function run(id: string): fc.Arbitrary<RunGroup> {
  return fc
    .record({
      length: fc.integer({ min: 8, max: 34 }),
      members: fc.integer({ min: 1, max: 3 }),
      at: fc.uniqueArray(fc.integer({ min: 3, max: 30 }), { maxLength: 3 }),
      cost: fc.integer({ min: 0, max: 8 }),
      lap: fc.integer({ min: 0, max: 1 }),
      cap: fc.option(fc.integer({ min: 0, max: 2 }), { nil: null }),
      excess: fc.option(fc.integer({ min: 0, max: 6 }), { nil: null }),
      minSupports: fc.integer({ min: 0, max: 3 }),
      minPiece: fc.integer({ min: 0, max: 6 }),
      maxJoints: fc.option(fc.integer({ min: 0, max: 2 }), { nil: null, freq: 2 }),
      neighboursApart: fc.boolean(),
      window: fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined, freq: 2 }),
    })
    .map((raw) => {
      const at = raw.at.filter((x) => x < raw.length - 1).sort((a, b) => a - b)
      const points = at.map((x) => ({
        at: length(x),
        label: `at ${x}`,
        cost: money(raw.cost),
        lap: length(raw.lap),
        cap: raw.cap,
        excess: raw.cap === null ? null : raw.excess === null ? null : money(raw.excess),
      }))
      return {
        id,
        label: id,
        members: Array.from({ length: raw.members }, (_, k) => ({ id: `${id}.${k}`, mark: `${id}${k + 1}` })),
        length: length(raw.length),
        points,
        supports: [0, ...at, raw.length].map(length),
        minSupports: raw.minSupports,
        minPiece: length(raw.minPiece),
        maxJoints: raw.maxJoints,
        neighboursApart: raw.neighboursApart,
        ...(raw.window === undefined || points.length < 2
          ? {}
          : { windows: [{ points: [0, 1], cap: raw.window }] }),
      }
    })
}

/** Small cutting jobs with every feature on now and then; few enough pieces for the oracle. */
export const arbitraryCutJob: fc.Arbitrary<CutJob> = fc
  .record({
    kerf: fc.integer({ min: 0, max: 2 }),
    endTrim: fc.integer({ min: 0, max: 1 }),
    stock: fc
      .tuple(stock('a'), stock('b'), stock('c'))
      .chain((all) => fc.integer({ min: 1, max: 3 }).map((n) => all.slice(0, n))),
    pieces: fc.array(fc.integer({ min: 2, max: 20 }), { maxLength: 5 }),
    runs: fc.oneof(
      fc.constant([]),
      run('r').map((r) => [r]),
      fc.tuple(run('r'), run('q')).map(([r, q]) => [r, { ...q, members: q.members.slice(0, 1) }]),
    ),
    handling: fc.constantFrom(0, 0, 2),
    perCut: fc.constantFrom(0, 0, 1),
    keep: fc.option(
      fc.record({ from: fc.integer({ min: 1, max: 8 }), rate: fc.integer({ min: 100, max: 900 }) }),
      { nil: null, freq: 2 },
    ),
    maxLengths: fc.option(fc.integer({ min: 1, max: 2 }), { nil: undefined, freq: 3 }),
    atMost: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined, freq: 3 }),
  })
  .map((raw) => ({
    id: 'job',
    label: 'job',
    kerf: length(raw.kerf),
    endTrim: length(raw.endTrim),
    stock: raw.stock,
    pieces: raw.pieces.map((l, k) => ({ id: `p${k}`, mark: `P${k + 1}`, length: length(l) })),
    runs: raw.runs,
    handling: money(raw.handling),
    perCut: money(raw.perCut),
    keep: raw.keep === null ? null : { from: length(raw.keep.from), centsPerFoot: raw.keep.rate },
    objectives: ['least cost' as const],
    ...(raw.maxLengths === undefined ? {} : { maxLengths: raw.maxLengths }),
    ...(raw.atMost === undefined ? {} : { atMost: [{ stockId: 'a', count: raw.atMost }] }),
  }))

/** The most pieces that a plan of the job may have: what an oracle that tries everything takes, grows with their factorial. */
export function mostPieces(job: CutJob): number {
  return job.runs.reduce(
    (sum, run) =>
      sum + run.members.length * (1 + Math.min(run.points.length, run.maxJoints ?? run.points.length)),
    job.pieces.length,
  )
}
