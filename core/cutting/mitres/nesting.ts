import { admissibleArcs } from '../model/run-graph.ts'
import type { CutJob, Mitres } from '../types.ts'
import { longPoints, type Measure } from './measure.ts'
import { type Kind, kindKey, type Mix, mixOf, type Slanting } from './mix.ts'
import { classKey, type EndClass, endClasses, kerfAlong, slantOf } from './slants.ts'

/** How the pieces of a job may share slanting cuts. */
export interface Nesting {
  /** no plan takes less of its boards by any arrangement: for bounds, and mostly a plan as well */
  readonly relaxed: Measure
  /** what fits by it fits on a board: every kerf is as wide as any */
  readonly safe: Measure
}

/**
 * How the pieces of a job may share slanting cuts; null where no end slants. Where none can share, or something but the
 * least cost is asked for, every piece takes its length to the long points. See README, "Mitres".
 */
export function nestingOf(job: CutJob): Nesting | null {
  const pieces = piecesOf(job)
  const angles = pieces.flatMap(({ mitres }) => mitres?.ends ?? [])
  if (angles.length === 0) return null
  const widest = Math.max(job.kerf, ...angles.map((hundredths) => kerfAlong(job.kerf, hundredths)))
  const apart = { relaxed: longPoints(job), safe: longPoints(job, widest) }
  if (!countsCostAlone(job)) return apart
  const saved = (kerf: number, { across, hundredths }: Slanting): number =>
    Math.max(0, Math.abs(slantOf({ across }, hundredths)) + kerf - kerfAlong(job.kerf, hundredths))
  const savedAtMost = (end: Slanting): number => 2 * Math.ceil(saved(job.kerf, end) / 2)
  const savedAtLeast = (end: Slanting): number => 2 * Math.floor(saved(widest, end) / 2)
  const meet = classesThatMeet(pieces)
  const wider = (classes: ReadonlySet<string>): number =>
    Math.min(
      ...pieces
        .flatMap(({ length, mitres }) => endClasses(length, mitres))
        .flatMap((end) => (end !== null && classes.has(classKey(end)) ? [end] : []))
        .map(({ hundredths }) => kerfAlong(job.kerf, hundredths) - job.kerf),
    )
  const told = tellingMix(meet, pieces, savedAtMost, wider)
  if (told === null) return apart
  const shares = (end: EndClass): EndClass => (end !== null && told.classes.has(classKey(end)) ? end : null)
  const kindOf = (length: number, mitres: Mitres | undefined): Kind => {
    const [left, right] = endClasses(length, mitres)
    return [shares(left), shares(right)]
  }
  const measure = (kerf: number, savedBy: (end: Slanting) => number, mix: Mix): Measure => ({
    kerf,
    less: (length, mitres) => halves(kindOf(length, mitres), savedBy),
    kindOf: (length, mitres) => kindKey(kindOf(length, mitres)),
    mix,
  })
  // ends that are not told apart may all be shared, for all that the bound knows
  const lessAtMost: Measure['less'] = (length, mitres) =>
    halves(endClasses(length, mitres), (end) => (meet.includes(classKey(end)) ? savedAtMost(end) : 0))
  const safeMix = mixOf(told.kinds, savedAtLeast, 0)
  return {
    relaxed: { ...measure(job.kerf, savedAtMost, told.mix), less: lessAtMost, isRelaxed: true },
    safe: safeMix === null ? apart.safe : measure(widest, savedAtLeast, safeMix),
  }
}

function halves(kind: Kind, savedBy: (end: Slanting) => number): number {
  return kind.reduce((sum, end) => sum + (end === null ? 0 : savedBy(end) / 2), 0)
}

function countsCostAlone({ objectives, perCut, keep }: CutJob): boolean {
  return objectives.every((objective) => objective === 'least cost') && perCut === 0 && !keep?.centsPerFoot
}

interface Shaped {
  readonly length: number
  readonly mitres: Mitres | undefined
  /** most that there can be */
  readonly count: number
}

/** All pieces that may be cut: of runs each that some board is long enough for. */
function piecesOf(job: CutJob): Shaped[] {
  const longest = Math.max(0, ...job.stock.map((option) => option.length))
  const ofRuns = job.runs.flatMap((run) =>
    admissibleArcs(run)
      .filter(({ length }) => length <= longest)
      .map((piece) => ({ ...piece, count: run.members.length })),
  )
  return [...job.pieces.map(({ length, mitres }) => ({ length, mitres, count: 1 })), ...ofRuns]
}

/** Classes of which there can be two ends, those that could save most first. */
function classesThatMeet(pieces: readonly Shaped[]): string[] {
  const ends = new Map<string, { count: number; saves: number }>()
  for (const { length, mitres, count } of pieces) {
    for (const end of endClasses(length, mitres)) {
      if (end === null) continue
      const own = ends.get(classKey(end)) ?? { count: 0, saves: 0 }
      own.count += count
      own.saves += count * Math.abs(slantOf(end, end.hundredths))
      ends.set(classKey(end), own)
    }
  }
  return [...ends]
    .filter(([, { count }]) => count > 1)
    .sort(([, a], [, b]) => b.saves - a.saves)
    .map(([key]) => key)
}

/** The mix of as many of the classes as it can tell apart; null where that is none. */
function tellingMix(
  classes: readonly string[],
  pieces: readonly Shaped[],
  savedBy: (end: Slanting) => number,
  wider: (classes: ReadonlySet<string>) => number,
): { readonly classes: ReadonlySet<string>; readonly kinds: readonly Kind[]; readonly mix: Mix } | null {
  for (let most = classes.length; most > 0; most--) {
    const chosen = new Set(classes.slice(0, most))
    const own = (end: EndClass): EndClass => (end !== null && chosen.has(classKey(end)) ? end : null)
    const all = pieces.map(({ length, mitres }): Kind => {
      const [left, right] = endClasses(length, mitres)
      return [own(left), own(right)]
    })
    const kinds = [...new Map(all.map((kind) => [kindKey(kind), kind])).values()]
    const mix = mixOf(kinds, savedBy, wider(chosen))
    if (mix !== null) return { classes: chosen, kinds, mix }
  }
  return null
}
