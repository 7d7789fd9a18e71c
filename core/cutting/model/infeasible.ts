import { printLength, TICKS_PER_FOOT, type Ticks } from '../../units/index.ts'
import { longPoints } from '../mitres/measure.ts'
import type { CutJob, FixedPiece, Infeasible, RunGroup } from '../types.ts'
import { runGraph } from './run-graph.ts'

const say = (length: number): string => printLength(length as Ticks)

/** The shortest even-foot stock that gives `length` after trims. */
function stockFor(job: CutJob, length: number): string {
  const feet = Math.ceil((length + 2 * job.endTrim) / (2 * TICKS_PER_FOOT)) * 2
  return `${feet} ft`
}

export function noStock(job: CutJob): Infeasible {
  return {
    jobId: job.id,
    subject: job.label,
    message: `No board can be had for ${job.label}: none is in stock, or the limits leave none.`,
    help: 'Add a stock length with a price, or allow one that the limits leave out.',
  }
}

export function pieceTooLong(job: CutJob, piece: FixedPiece, longest: Ticks): Infeasible {
  return {
    jobId: job.id,
    subject: piece.mark,
    message: `Piece ${piece.mark} of ${job.label} is ${say(piece.length)} long and cannot be jointed; the longest board to be had gives ${say(longest)}.`,
    help: `A stock length of ${stockFor(job, piece.length)} would do, or a piece shorter by ${say(piece.length - longest)}.`,
  }
}

/** How much longer the longest board must be before the run can be made. */
function neededLength(job: CutJob, run: RunGroup): Ticks | null {
  const graph = (longest: Ticks) => runGraph(run, longest, longPoints(job))
  const lengths = [...new Set(graph(run.length).arcs.map((arc) => arc.length))].sort((a, b) => a - b)
  return lengths.find((length) => graph(length).arcs.length > 0) ?? null
}

export function runNeedsStock(job: CutJob, run: RunGroup, longest: Ticks): Infeasible {
  const needed = neededLength(job, run)
  const points = [0, ...run.points.map((point) => point.at), run.length]
  const gaps = points.slice(1).map((at, index) => ({ from: points[index] ?? 0, to: at }))
  const widest = gaps.reduce((most, gap) => (gap.to - gap.from > most.to - most.from ? gap : most), {
    from: 0,
    to: 0,
  })
  const open = widest.to - widest.from > longest
  const reason = open
    ? `between ${say(widest.from)} and ${say(widest.to)} from its end there is no place for a joint`
    : 'its joint points leave no way to make it of pieces that keep the rules'
  return {
    jobId: job.id,
    subject: run.label,
    message: `${run.label} is ${say(run.length)} long, the longest board to be had gives ${say(longest)}, and ${reason}.`,
    help: [
      needed === null ? null : `A stock length of ${stockFor(job, needed)} would do`,
      open
        ? `a place for a joint (${run.another ?? 'a post or another bearing'}) no more than ${say(longest)} from the last one`
        : null,
      !open && run.another !== undefined ? `one more place for a joint (${run.another})` : null,
      !open && run.maxJoints !== null ? 'more joints allowed in one member' : null,
    ]
      .filter((part) => part !== null)
      .join(', or ')
      .concat('.'),
  }
}

export function supplyTooSmall(job: CutJob, subject: string, length: number): Infeasible {
  return {
    jobId: job.id,
    subject,
    message: `The boards to be had for ${job.label} do not suffice: ${subject} (${say(length)}) finds no board once the others are cut.`,
    help: `More boards of ${stockFor(job, length)} or longer, or another stock length, would do.`,
  }
}

export function lengthsTooFew(job: CutJob, most: number): Infeasible {
  return {
    jobId: job.id,
    subject: job.label,
    message: `${job.label} cannot be cut from ${most} different stock ${most === 1 ? 'length' : 'lengths'}.`,
    help: 'One more stock length allowed would help.',
  }
}

export function runUnordered(job: CutJob, run: RunGroup): Infeasible {
  return {
    jobId: job.id,
    subject: run.label,
    message: `${run.label}: no order of its ${run.members.length} members keeps neighbours from being jointed at one point.`,
    help: 'One more place for a joint, or a longer stock length, would help.',
  }
}

export function runCrowded(job: CutJob, run: RunGroup, longest: Ticks): Infeasible {
  const needed = neededLength(job, { ...run, points: [] })
  return {
    jobId: job.id,
    subject: run.label,
    message: `${run.label}: its ${run.members.length} members cannot all be jointed at the points it has, since too many would meet at one point; no board is longer than ${say(longest)}.`,
    help: `One more place for a joint${run.another === undefined ? '' : ` (${run.another})`}, a looser stagger${needed === null ? '' : `, or a stock length of ${stockFor(job, needed)}`} would help.`,
  }
}
