import type { CutJob, Mitres, RunGroup } from '../types.ts'
import { piecesOfRun } from './cheapest-member.ts'

/** What a piece counts of a board in the bound without its kerf, and which of its ends are told apart there, sorted. */
export interface Counted {
  readonly length: number
  readonly ends: string
}

/** How the bound counts pieces whose slanting cuts may be shared: each end less half of what it could save at most. */
export interface SharedCuts {
  readonly counted: (length: number, mitres: Mitres | undefined) => Counted
  /** what sharing one end of a class saves, an even number of ticks */
  readonly saves: ReadonlyMap<string, number>
  /** how much wider the saw cuts at least beside an end of them than beside a square one */
  readonly wider: number
}

/**
 * How the plan's certificate may count lengths, or why it may not. Classes of which two ends at least can be there count
 * half of what they save whether or not they are told apart; only of those told apart is it known which share no cut.
 */
export function sharedCuts(job: CutJob, toldApart: readonly string[] | undefined): SharedCuts | string {
  const longest = Math.max(0, ...job.stock.map((option) => option.length))
  const saves = new Map<string, number>()
  const met = new Map<string, number>()
  for (const { length, mitres, count } of [
    ...job.pieces.map((piece) => ({ ...piece, count: 1 })),
    ...job.runs.flatMap((run) =>
      piecesOfRun(run, longest).map(({ length, from, to }) => ({
        length,
        mitres: mitresOfPiece(run, from, to),
        count: run.members.length,
      })),
    ),
  ]) {
    for (const end of [0, 1] as const) {
      const saved = savedBy(job.kerf, length, mitres, end)
      if (saved === null) continue
      const name = nameOf(mitres, end)
      met.set(name, (met.get(name) ?? 0) + count)
      saves.set(name, 2 * Math.ceil(saved / 2))
    }
  }
  for (const [name, count] of met) if (count < 2) saves.delete(name)
  if (toldApart === undefined) {
    if (saves.size > 0 && countsCostAlone(job))
      return 'Slanting cuts may be shared; the bound leaves that out.'
    return { counted: (length) => ({ length, ends: '' }), saves: new Map(), wider: 0 }
  }
  const own = new Map([...saves].filter(([name]) => toldApart.includes(name)))
  const counted = (length: number, mitres: Mitres | undefined): Counted => {
    const ends = ([0, 1] as const).map((end) =>
      savedBy(job.kerf, length, mitres, end) === null ? '' : nameOf(mitres, end),
    )
    const less = ends.reduce((sum, name) => sum + (saves.get(name) ?? 0) / 2, 0)
    const told = ends.map((name) => (own.has(name) ? name : ''))
    return { length: length - less, ends: told.every((name) => name === '') ? '' : told.sort().join(' ') }
  }
  const angles = [...own.keys()].map((name) => Number(name.split(':')[1]))
  const wider = Math.min(...angles.map((angle) => alongBoard(job.kerf, angle) - job.kerf))
  return { counted, saves: own, wider }
}

function countsCostAlone({ objectives, perCut, keep }: CutJob): boolean {
  return (
    objectives.every((objective) => objective === 'least cost') &&
    perCut === 0 &&
    (keep === null || keep.centsPerFoot === 0)
  )
}

function nameOf(mitres: Mitres | undefined, end: 0 | 1): string {
  return `${mitres?.across}:${mitres?.ends[end]}`
}

/** What two pieces save of a board by sharing the cut at this end, whole ticks; null where it cannot be shared. */
function savedBy(kerf: number, length: number, mitres: Mitres | undefined, end: 0 | 1): number | null {
  if (mitres === undefined) return null
  const whole = (angle: number): number => {
    const slant = mitres.across * Math.tan((Math.abs(angle) / 18_000) * Math.PI)
    return Math.sign(angle) * Math.floor(slant + 1e-6)
  }
  const [left, right] = [whole(mitres.ends[0]), whole(mitres.ends[1])]
  const near = length + Math.min(0, left) - Math.max(0, right)
  const far = length - Math.max(0, left) + Math.min(0, right)
  const own = Math.abs(end === 0 ? left : right)
  if (own === 0 || near < 2 || far < 2) return null
  return Math.max(0, own + kerf - alongBoard(kerf, mitres.ends[end]))
}

function alongBoard(kerf: number, angle: number): number {
  return Math.ceil(kerf / Math.cos((angle / 18_000) * Math.PI) - 1e-6)
}

/** Cuts of a run's piece between two places of it. */
export function mitresOfPiece(run: RunGroup, from: number, to: number): Mitres | undefined {
  if (run.mitres === undefined) return undefined
  const { across, ends, joint } = run.mitres
  const far = run.wild === undefined ? ends[1] : 0
  return { across, ends: [from === 0 ? ends[0] : joint, to === run.length ? far : joint] }
}
