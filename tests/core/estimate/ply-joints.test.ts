import { describe, expect, test } from 'vitest'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { estimateOf } from '../../fixtures/engine.ts'
import { workedJob } from '../../fixtures/worked-job.ts'

/** Places of posts along a beam lie on the tape's sixteenths. */
const SIXTEENTH = 2

describe('a joint in a ply of a beam', () => {
  // where posts stand is taken from the frame, where joints lie from the plan of the boards: neither from the other
  test.each(['21 ft', '23 ft 6 in', '27 ft 3 in', '32 ft', '25 ft 1 in', '30 ft 7 1/2 in'])(
    'lies over a post, in a deck %s wide',
    (width) => {
      const { plans, frame } = estimateOf(workedJob(width), SAMPLE_BOOK)
      const plies = new Map(
        frame.members.filter(({ role }) => role === 'beam ply').map((member) => [member.id, member]),
      )
      const joints = plans.flatMap(({ plan }) => plan.joints).filter(({ memberId }) => plies.has(memberId))
      expect(joints.length).toBeGreaterThan(0)
      for (const { memberId, at } of joints) {
        const x = (plies.get(memberId)?.box.x0 ?? Number.NaN) + at
        const nearest = Math.min(...frame.posts.map((post) => Math.abs(post.x - x)))
        expect(nearest).toBeLessThanOrEqual(SIXTEENTH)
      }
    },
  )
})
