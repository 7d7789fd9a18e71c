import { isRectangle, type Job } from '../job/index.ts'

/**
 * Whether posts stand by their number alone: on a rectangle with dropped beams. On other outlines beams meet each other,
 * and the middle of a flush beam lies by its plies.
 */
export function standByNumber(job: Job): boolean {
  const { front, rear } = job.frame.beams
  return isRectangle(job) && front.set === 'dropped' && rear.set === 'dropped'
}
