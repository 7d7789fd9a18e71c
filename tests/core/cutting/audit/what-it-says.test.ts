import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan } from '../../../../core/cutting/index.ts'
import { changes } from '../../../oracles/changes.ts'
import { RICH_JOB, RICH_PLAN } from './rich-plan.ts'

/** One line for each kind of sentence: the first change of the plan, or of the job, that brings it out. */
function saidOf(pairs: Iterable<readonly [path: string, job: CutJob, plan: CutPlan]>): string[] {
  const said = new Map<string, string>()
  for (const [path, job, plan] of pairs) {
    for (const { rule, where, message } of auditPlan(job, plan)) {
      const kind = `${rule}|${where}|${message}`.replace(/[-\d]+/g, '#')
      if (!said.has(kind)) said.set(kind, `${path}: ${rule}, ${where}: ${message}`)
    }
  }
  return [...said.values()]
}

function* plansChanged(): Iterable<readonly [string, CutJob, CutPlan]> {
  for (const [path, plan] of changes(RICH_PLAN)) yield [path, RICH_JOB, plan as CutPlan]
}

function* jobsChanged(): Iterable<readonly [string, CutJob, CutPlan]> {
  for (const [path, job] of changes(RICH_JOB)) yield [`job${path}`, job as CutJob, RICH_PLAN]
}

describe('the auditor', () => {
  it('finds nothing wrong with the sound plan', () => {
    expect(auditPlan(RICH_JOB, RICH_PLAN)).toEqual([])
  })

  it('says of each change of the plan what is wrong, where, and what would be right', async () => {
    await expect(saidOf(plansChanged()).join('\n')).toMatchFileSnapshot('./plan-faults.txt')
  })

  it('says the same where the job is another than the plan was made for', async () => {
    await expect(saidOf(jobsChanged()).join('\n')).toMatchFileSnapshot('./job-faults.txt')
  })

  it('finds as many faults with each change as it did', async () => {
    const counts = [...plansChanged(), ...jobsChanged()].map(
      ([path, job, plan]) =>
        `${path}: ${auditPlan(job, plan)
          .map((fault) => fault.rule)
          .join(', ')}`,
    )
    await expect(counts.join('\n')).toMatchFileSnapshot('./rules-broken.txt')
  })
})
