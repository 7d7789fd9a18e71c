export { auditPlan } from './audit/audit-plan.ts'
export type * from './lp-port.ts'
export { type PlanOptions, planCuts } from './plan-cuts.ts'
export type * from './types.ts'
