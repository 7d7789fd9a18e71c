import { isRectangle, type Job } from '../job/index.ts'
import { feet, type Ticks, ticks } from '../units/index.ts'
import type { Course } from './decking.ts'
import { deckingRun } from './runs.ts'
import type { FrameRun } from './types.ts'

/** A part of a course this short comes whole: common practice, no source. */
const WHOLE_COURSE = feet(12)

/** Courses that are alike, of one length over the same joists, may be jointed as one run. */
export function deckingRuns(job: Job, courses: readonly Course[]): readonly FrameRun[] {
  const alike = new Map<string, Course[]>()
  for (const course of courses) {
    const { member, from } = course
    const place = [from.toFixed(1), member.length, ...(member.ends ?? []), ...member.bearings]
    const key = [member.product.size, member.lay?.part, turnOf(course), ...place].join(' ')
    alike.set(key, [...(alike.get(key) ?? []), course])
  }
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
    return [
      deckingRun(
        id,
        own.map(({ member }) => member),
        first.lines,
        { wholeUpTo: wholeUpTo(job), lap: first.lap, turn: turnOf(first), label },
      ),
    ]
  })
}

function numbered(name: string, number: number, between = '-'): string {
  return number === 1 ? name : `${name}${between}${number}`
}

/** Boards at an angle are of as many lengths as courses: those side by side take turns at the joists. */
function turnOf({ member: { lay } }: Course): 0 | 1 | null {
  if (lay === undefined || lay.degrees === 0) return null
  return lay.row % 2 === 0 ? 0 : 1
}

/** Beside a step, an opening or a breaker, boards shorter than the usual lengths are laid whole. */
function wholeUpTo(job: Job): Ticks {
  const { angle, border, breakers, parts } = job.decking
  const plain = angle === 0 && border === 0 && breakers.trim() === '' && parts.trim() === ''
  return plain && isRectangle(job) && job.shape.openings.trim() === '' ? ticks(0) : WHOLE_COURSE
}
