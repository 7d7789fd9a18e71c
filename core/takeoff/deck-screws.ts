import { cite, nailing, nailingSources } from '../data/index.ts'
import type { Frame, Member } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { inches } from '../units/index.ts'
import { boardScrew } from './board-screw.ts'
import type { GoodShare } from './tally.ts'

/** Stripped and dropped, percent: common practice, no source. */
const SCREW_WASTE = 5

/** Pairs of screws in a board that lies on joists with its whole length stand this far apart: common practice, no source. */
const ALONG = inches(16)

/**
 * Two screws in each course at each joist, or a clip between two courses there; the boards that begin and end the
 * courses are screwed. Screws of a butt joint come with the joint.
 */
export function deckScrews(job: Job, frame: Frame): readonly GoodShare[] {
  const courses = frame.members.filter((member) => member.role === 'decking')
  const across = courses.filter(({ lay }) => lay?.alongJoists !== true)
  const along = courses.filter(({ lay }) => lay?.alongJoists === true)
  const clips = job.decking.fastening === 'hidden clips' ? clipsOf(across) : 0
  const crossings = across.reduce((sum, course) => sum + course.bearings.length, 0)
  const screwed = clips === 0 ? crossings : screwedCrossings(across)
  const pairs = pairsAlong(along)
  const fascia = pairsAlong(frame.members.filter(({ role }) => role === 'fascia'))
  return [
    screws(job, frame, wordsOf(clips, across, screwed), screwed),
    ...(pairs === 0
      ? []
      : [screws(job, frame, `${pairs} pairs along borders and breakers, at 16 in`, pairs)]),
    ...(fascia === 0 ? [] : [screws(job, frame, `${fascia} pairs along the fascia, at 16 in`, fascia)]),
    ...(clips === 0 ? [] : [clipShare(frame, clips)]),
  ]
}

/** Pairs of screws along boards that lie on their bearing with their whole length. */
function pairsAlong(boards: readonly Member[]): number {
  return boards.reduce((sum, { length }) => sum + Math.floor(length / ALONG) + 1, 0)
}

function wordsOf(clips: number, courses: readonly Member[], screwed: number): string {
  if (clips > 0) return `${screwed} crossings of joists and boards with no board on one side`
  const joists = courses[0]?.bearings.length ?? 0
  return courses.every(({ bearings }) => bearings.length === joists)
    ? `${courses.length} courses × ${joists} joists`
    : `${screwed} crossings of courses and joists`
}

function screws(job: Job, frame: Frame, counted: string, places: number): GoodShare {
  return {
    sku: boardScrew(job.decking.size),
    quantity: Math.ceil((places * nailing.deckScrewsPerJoist * (100 + SCREW_WASTE)) / 100),
    cause: {
      fields: ['decking.size', 'decking.fastening', 'frame.joists.spacing'],
      ids: runIds(frame),
      rule: `${counted} × 2 (${cite(nailingSources.deckScrewsPerJoist)}), ${SCREW_WASTE} % more for loss`,
    },
  }
}

function clipShare(frame: Frame, clips: number): GoodShare {
  return {
    sku: 'deck-clip',
    quantity: Math.ceil((clips * (100 + SCREW_WASTE)) / 100),
    cause: {
      fields: ['decking.fastening', 'decking.edges', 'frame.joists.spacing'],
      ids: runIds(frame),
      rule: `${clips} crossings of joists and gaps between two courses, one clip at each (common practice, no source), ${SCREW_WASTE} % more for loss`,
    },
  }
}

function runIds(frame: Frame): readonly string[] {
  return frame.runs.filter(({ kind }) => kind === 'decking').map(({ id }) => id)
}

/** Joists at which a course lies, by its zone and its number. */
function laidAt(courses: readonly Member[]): ReadonlySet<string> {
  return new Set(courses.flatMap((course) => course.bearings.map((joist) => keyOf(course, joist, 0))))
}

function keyOf({ lay }: Member, joist: string, further: number): string {
  return `${lay?.zone} ${(lay?.row ?? 0) + further} ${joist}`
}

/** A clip where the course before lies on the same joist. */
function clipsOf(courses: readonly Member[]): number {
  const field = courses.filter(({ lay }) => lay?.part === 'field')
  const laid = laidAt(field)
  return countOf(field, (course, joist) => laid.has(keyOf(course, joist, -1)))
}

/** Screws where a board has none beside it on one side, and in all of a border. */
function screwedCrossings(courses: readonly Member[]): number {
  const laid = laidAt(courses.filter(({ lay }) => lay?.part === 'field'))
  return countOf(
    courses,
    (course, joist) =>
      course.lay?.part !== 'field' ||
      !laid.has(keyOf(course, joist, -1)) ||
      !laid.has(keyOf(course, joist, 1)),
  )
}

function countOf(courses: readonly Member[], counts: (course: Member, joist: string) => boolean): number {
  return courses.reduce(
    (sum, course) => sum + course.bearings.filter((joist) => counts(course, joist)).length,
    0,
  )
}
