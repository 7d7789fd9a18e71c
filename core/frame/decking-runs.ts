import { isRectangle, type Job } from '../job/index.ts'
import { feet, type Ticks, ticks } from '../units/index.ts'
import type { Course } from './decking.ts'
import { deckingRun } from './runs.ts'
import type { FrameRun } from './types.ts'

/** A part of a course this short comes whole: common practice, no source. */
const WHOLE_COURSE = feet(12)

/** Courses that are alike, of one length over the same joists, may be jointed as one run. */
export function deckingRuns(job: Job, courses: readonly Course[]): readonly FrameRun[] {
  const whole = wholeUpTo(job)
  const keys = new Map(courses.map((course) => [course, keyOf(course)]))
  const mixed = mixedZones(courses, keys, whole)
  const turnOf = ({ member: { lay } }: Course) => {
    if (lay === undefined || lay.part !== 'field' || !mixed.has(lay.zone)) return null
    return lay.row % 2 === 0 ? 0 : 1
  }
  const alike = Map.groupBy(courses, (course) => [turnOf(course), keys.get(course)].join(' '))
  const wild = runWild(job) ? job.cutting.deckingWild : ticks(0)
  let number = 0
  return [...alike.values()].flatMap((own): readonly FrameRun[] => {
    const [first] = own
    if (first === undefined) return []
    const { lay, mark, role } = first.member
    if (lay?.part === 'field') number += 1
    const name = role === 'fascia' ? 'fascia' : (lay?.part ?? 'field')
    const [id, label] =
      lay?.part === 'field'
        ? [numbered('decking', number), numbered('Decking', number, ' ')]
        : [`${name}-${mark}`, `${name.charAt(0).toUpperCase()}${name.slice(1)} ${mark}`]
    const run = deckingRun(
      id,
      own.map(({ member }) => member),
      first.lines,
      { wholeUpTo: whole, lap: first.lap, turn: turnOf(first), label },
    )
    return [wild > 0 && lay?.part === 'field' ? { ...run, wild } : run]
  })
}

function numbered(name: string, number: number, between = '-'): string {
  return number === 1 ? name : `${name}${between}${number}`
}

/** What courses of one run have in common. */
function keyOf({ member, from, lines }: Course): string {
  const place = [from.toFixed(1), member.length, ...(member.ends ?? []), ...member.bearings]
  for (const { id, grazes } of lines) if (grazes === true) place.push(`beside ${id}`)
  return [member.product.size, member.lay?.part, ...place].join(' ')
}

/**
 * Zones in which courses side by side are of different runs, as all are that lie at an angle. There the courses take
 * turns at the joists; elsewhere the plan puts them in an order in which no two neighbours are jointed at one joist.
 */
function mixedZones(
  courses: readonly Course[],
  keys: ReadonlyMap<Course, string>,
  whole: Ticks,
): ReadonlySet<string> {
  const long = courses.filter(({ member }) => member.lay?.part === 'field' && member.length > whole)
  const rowOf = ({ member: { lay } }: Course, further: number) => `${lay?.zone} ${(lay?.row ?? 0) + further}`
  const rows = Map.groupBy(long, (course) => rowOf(course, 0))
  const mixed = long.filter((course) =>
    (rows.get(rowOf(course, 1)) ?? []).some(
      (next) =>
        keys.get(next) !== keys.get(course) &&
        next.member.bearings.some((id) => course.member.bearings.includes(id)),
    ),
  )
  return new Set(mixed.map(({ member }) => member.lay?.zone ?? ''))
}

/** Courses whose ends are fitted between other boards cannot run wild. */
export function runWild({ decking, shape }: Job): boolean {
  const { border, breakers, parts } = decking
  return border === 0 && breakers.trim() === '' && parts.trim() === '' && shape.openings.trim() === ''
}

/** Beside a step, an opening or a breaker, boards shorter than the usual lengths are laid whole. */
function wholeUpTo(job: Job): Ticks {
  const { angle, border, breakers, parts } = job.decking
  const plain = angle === 0 && border === 0 && breakers.trim() === '' && parts.trim() === ''
  return plain && isRectangle(job) && job.shape.openings.trim() === '' ? ticks(0) : WHOLE_COURSE
}
