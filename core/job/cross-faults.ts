import { inches, printLength, type Ticks, ticks } from '../units/index.ts'
import { DECK_RULES } from './deck-rules.ts'
import { findField } from './fields.ts'
import { settledList } from './found-list.ts'
import { optionList, optionValue } from './option-list.ts'
import { postList } from './post-list.ts'
import { readValue } from './read-value.ts'
import type { Fault, FieldPath, Job } from './types.ts'

/** Least distance between two post centres, and between beams: closer, their holes are one. */
const APART = inches(12)

/** A rule between fields that are each valid alone. It is asked only when every field it reads could be read. */
interface CrossRule {
  /** speaks of the two beams of a rectangle; another outline is judged where it is laid out */
  readonly rectangle?: true
  readonly reads: readonly FieldPath[]
  readonly find: (job: Job) => Omit<Fault, 'path'> | null
}

/** Each rule reports at the first field it reads. */
const RULES: readonly CrossRule[] = [
  { reads: ['site.ground.spots', 'site.ground.kind'], find: noSpots },
  { reads: ['ground.base', 'ground.tube'], find: narrowBase },
  { reads: ['pricing.options'], find: optionOutOfBounds },
  {
    reads: ['ground.moved', 'frame.beams.front.posts', 'frame.beams.rear.posts', 'site.attachment'],
    rectangle: true,
    find: (job) => noSuchPost(job, postList(job.ground.moved)),
  },
  {
    reads: ['ground.measured', 'frame.beams.front.posts', 'frame.beams.rear.posts', 'site.attachment'],
    rectangle: true,
    find: (job) => noSuchPost(job, postList(job.ground.measured)),
  },
  {
    reads: ['ground.found', 'frame.beams.front.posts', 'frame.beams.rear.posts', 'site.attachment'],
    find: (job) => noSuchPost(job, settledList(job.ground.found)),
  },
  {
    reads: ['frame.beams.front.setback', 'frame.beams.rear.setback', 'size.depth', 'site.attachment'],
    rectangle: true,
    find: noSpan,
  },
  {
    reads: ['frame.beams.front.inset', 'size.width'],
    rectangle: true,
    find: (job) => endPostsMeet(job, 'front'),
  },
  {
    reads: ['frame.beams.rear.inset', 'size.width', 'site.attachment'],
    rectangle: true,
    find: (job) => endPostsMeet(job, 'rear'),
  },
  {
    reads: ['frame.beams.front.posts', 'frame.beams.front.inset', 'size.width'],
    rectangle: true,
    find: (job) => postsCrowd(job, 'front'),
  },
  {
    reads: ['frame.beams.rear.posts', 'frame.beams.rear.inset', 'size.width', 'site.attachment'],
    rectangle: true,
    find: (job) => postsCrowd(job, 'rear'),
  },
  ...DECK_RULES,
]

/**
 * Faults between fields that are each valid alone.
 * @param unread whether a field was stated but could not be read: then nothing is said about what depends on it
 */
export function crossFaults(job: Job, unread: (path: FieldPath) => boolean): readonly Fault[] {
  const rectangle = isRectangle(job)
  return RULES.filter((rule) => (rectangle || rule.rectangle !== true) && !rule.reads.some(unread)).flatMap(
    (rule) => {
      const found = rule.find(job)
      return found === null ? [] : [{ path: rule.reads[0] ?? '', ...found }]
    },
  )
}

/** Whether a deck is framed as one rectangle, joists away from the house. */
export function isRectangle({ shape }: Pick<Job, 'shape'>): boolean {
  const { outline, joists, zones, middleBeams, setbacks, levels } = shape
  return (
    joists === 'away' && [outline, zones, middleBeams, setbacks, levels].every((text) => text.trim() === '')
  )
}

function optionOutOfBounds({ pricing }: Job) {
  for (const { name, changes } of optionList(pricing.options)) {
    for (const { path, text } of changes) {
      const field = findField(path)
      if (field === undefined || text === '') continue
      const read = readValue(field, optionValue(field, text))
      if (read.ok) continue
      const [fault] = read.error
      return { message: `the option "${name}": ${fault?.message ?? ''}`, fix: fault?.fix ?? '' }
    }
  }
  return null
}

function noSuchPost(job: Job, named: readonly { readonly post: number }[]) {
  const { front, rear } = job.frame.beams
  const posts = front.posts + (job.site.attachment === 'freestanding' ? rear.posts : 0)
  const wrong = named.find(({ post }) => post < 1 || post > posts)
  if (wrong === undefined) return null
  return {
    message: `there is no post ${wrong.post}: the deck has ${posts}`,
    fix: `name one from 1 to ${posts}, as numbered on the plan`,
  }
}

function noSpots({ site }: Job) {
  if (site.ground.kind !== 'spots' || site.ground.spots.length > 0) return null
  return {
    message: 'the ground is given by spots, and there are none',
    fix: 'give one spot at least, or give the ground as a "plane"',
  }
}

function narrowBase({ ground }: Job) {
  if (ground.base === 0 || ground.base >= ground.tube) return null
  return {
    message: `the base, ${printLength(ground.base)}, is narrower than the tube on it, ${printLength(ground.tube)}`,
    fix: `make it ${printLength(ground.tube)} or more, or 0 where there is no base`,
  }
}

function noSpan(job: Job) {
  const { front, rear } = job.frame.beams
  const depth = printLength(job.size.depth)
  if (job.site.attachment === 'ledger') {
    if (front.setback + APART <= job.size.depth) return null
    return {
      message: `a setback of ${printLength(front.setback)} leaves no span in a depth of ${depth}`,
      fix: `leave ${printLength(APART)} or more between the beam and the house`,
    }
  }
  const taken = ticks(front.setback + rear.setback)
  if (taken + APART <= job.size.depth) return null
  return {
    message: `the two beams’ setbacks, ${printLength(taken)} together, leave no span in a depth of ${depth}`,
    fix: `leave ${printLength(APART)} or more between the beams`,
  }
}

function stands(job: Job, side: 'front' | 'rear'): boolean {
  return side === 'front' || job.site.attachment === 'freestanding'
}

function betweenEndPosts(job: Job, side: 'front' | 'rear'): number {
  return job.size.width - 2 * job.frame.beams[side].inset
}

function endPostsMeet(job: Job, side: 'front' | 'rear') {
  if (!stands(job, side) || betweenEndPosts(job, side) >= APART) return null
  const inset = job.frame.beams[side].inset
  const most: Ticks = ticks(Math.floor((job.size.width - APART) / 2))
  return {
    message: `end posts ${printLength(inset)} from each end of a beam of ${printLength(job.size.width)} leave no room between them`,
    fix: `inset them by ${printLength(most)} or less`,
  }
}

function postsCrowd(job: Job, side: 'front' | 'rear') {
  const between = betweenEndPosts(job, side)
  if (!stands(job, side) || between < APART) return null
  const most = Math.floor(between / APART) + 1
  const posts = job.frame.beams[side].posts
  if (posts <= most) return null
  return {
    message: `${posts} posts under a beam of ${printLength(job.size.width)} stand less than ${printLength(APART)} apart`,
    fix: `use ${most} posts or fewer`,
  }
}
