import { beforeAll, describe, expect, it } from 'vitest'
import type { LpEngine } from '../../../core/cutting/index.ts'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { why } from '../../../core/why.ts'
import { jointId } from '../../../core/why-joint-things.ts'
import { framingJoints, whyJoints } from '../../../core/why-joints.ts'
import { loadHighs } from '../../../main/workers/lp/index.ts'
import { estimateOf } from '../../fixtures/engine.ts'

let engine: LpEngine
beforeAll(async () => {
  engine = await loadHighs()
})

describe('the joints of the demo deck', () => {
  const made = estimateOf(DEMO_JOB, SAMPLE_BOOK)

  it('each say what they save; no order without one is cheaper', () => {
    const joints = framingJoints(made, SAMPLE_BOOK, engine)
    expect(joints.length).toBeGreaterThan(0)
    for (const joint of joints) {
      if (joint.kind !== 'made') throw new Error(joint.message)
      for (const difference of [joint.withoutIt, joint.inOnePiece]) {
        if (difference !== null) expect(difference.atLeast).toBeGreaterThanOrEqual(0)
      }
    }
  }, 60_000)

  it('lead back to the fields of the job', () => {
    for (const { runId, memberId, at } of made.plans.flatMap(({ plan }) => plan.joints)) {
      const step = why(made, jointId(memberId, at))
      expect(step?.because.map((next) => next.id)).toContain(runId)
    }
  })

  it('are refused at an end post, with the reason', () => {
    const run = made.takeoff.runs.find(({ kind }) => kind === 'beam ply')
    const [end] = run?.refused ?? []
    if (run === undefined || end === undefined) throw new Error('the demo deck has a beam')
    const [reason] = whyJoints(made, SAMPLE_BOOK, engine, {
      only: (runId, at) => runId === run.id && at === end.at,
    })
    expect(reason).toMatchObject({ kind: 'refused' })
    expect(reason?.message).toContain('An end post carries the beam’s end')
    expect(why(made, jointId(run.id, end.at))?.cause?.rule).toContain('An end post')
  })
})
