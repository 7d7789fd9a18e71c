import { inches, printLength, type Ticks, ticks } from '../units/index.ts'
import type { Fault, Job } from './types.ts'

/** Least distance between two post centres: closer, their holes are one. */
const POSTS_APART = inches(12)

/** Faults between fields that are each valid alone. */
export function crossFaults(job: Job): readonly Fault[] {
  return [...groundFaults(job), ...footingFaults(job), ...beamFaults(job)]
}

function groundFaults({ site }: Job): readonly Fault[] {
  if (site.ground.kind !== 'spots' || site.ground.spots.length > 0) return []
  return [
    {
      path: 'site.ground.spots',
      message: 'the ground is given by spots, and there are none',
      fix: 'give one spot at least, or give the ground as a "plane"',
    },
  ]
}

function footingFaults({ ground }: Job): readonly Fault[] {
  if (ground.base === 0 || ground.base >= ground.tube) return []
  return [
    {
      path: 'ground.base',
      message: `the base, ${printLength(ground.base)}, is narrower than the tube on it, ${printLength(ground.tube)}`,
      fix: `make it ${printLength(ground.tube)} or more, or 0 where there is no base`,
    },
  ]
}

function beamFaults(job: Job): readonly Fault[] {
  const { front, rear } = job.frame.beams
  const freestanding = job.site.attachment === 'freestanding'
  const faults: Fault[] = []
  const taken = ticks(front.setback + (freestanding ? rear.setback : 0))
  // a beam's centre needs some joist behind it, or the two beams would be one
  if (taken + POSTS_APART > job.size.depth) {
    faults.push({
      path: 'frame.beams.front.setback',
      message: freestanding
        ? `the two beams’ setbacks, ${printLength(taken)} together, leave no span in a depth of ${printLength(job.size.depth)}`
        : `a setback of ${printLength(front.setback)} leaves no span in a depth of ${printLength(job.size.depth)}`,
      fix: `leave ${printLength(POSTS_APART)} or more between ${freestanding ? 'the beams' : 'the beam and the house'}`,
    })
  }
  faults.push(...postFaults('front', front.inset, front.posts, job.size.width))
  if (freestanding) faults.push(...postFaults('rear', rear.inset, rear.posts, job.size.width))
  return faults
}

function postFaults(side: 'front' | 'rear', inset: Ticks, posts: number, width: Ticks): readonly Fault[] {
  const between = width - 2 * inset
  if (between < POSTS_APART) {
    return [
      {
        path: `frame.beams.${side}.inset`,
        message: `end posts ${printLength(inset)} from each end of a beam of ${printLength(width)} leave no room between them`,
        fix: `inset them by ${printLength(ticks(Math.floor((width - POSTS_APART) / 2)))} or less`,
      },
    ]
  }
  const most = Math.floor(between / POSTS_APART) + 1
  if (posts <= most) return []
  return [
    {
      path: `frame.beams.${side}.posts`,
      message: `${posts} posts under a beam of ${printLength(width)} stand less than ${printLength(POSTS_APART)} apart`,
      fix: `use ${most} posts or fewer`,
    },
  ]
}
