import type { AuditFault, CutJob, CutPlan } from '../types.ts'
import { auditAims } from './audit-aims.ts'
import { auditBoards } from './audit-boards.ts'
import { auditBound } from './audit-bound.ts'
import { auditSlants } from './audit-mitres.ts'
import { auditMoney } from './audit-money.ts'
import { auditPieces } from './audit-pieces.ts'
import { auditRuns } from './audit-runs.ts'

/** Everything that is wrong with a plan, judged from the job alone; empty where the plan is sound. */
export function auditPlan(job: CutJob, plan: CutPlan): readonly AuditFault[] {
  return [...auditCuts(job, plan), ...auditBound(job, plan)]
}

/** The same but for the bound, which takes longer than all else: for plans that are only weighed against each other. */
export function auditCuts(job: CutJob, plan: CutPlan): readonly AuditFault[] {
  return [
    ...auditName(job, plan),
    ...auditPieces(job, plan),
    ...auditSlants(job, plan),
    ...auditBoards(job, plan),
    ...auditRuns(job, plan),
    ...auditMoney(job, plan),
    ...auditAims(job, plan),
  ]
}

function auditName(job: CutJob, plan: CutPlan): AuditFault[] {
  if (plan.jobId === job.id) return []
  const message = `It is the plan of ${plan.jobId}, not of ${job.id}.`
  return [{ rule: 'another job', where: 'plan', message }]
}
