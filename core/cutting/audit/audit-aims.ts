import type { AuditFault, CutJob, CutPlan, Objective } from '../types.ts'
import { allowedStock } from './stock-rules.ts'

/** What the plan says of its objectives: each is there in its order, counted again, and has no bound above it. */
export function auditAims(job: CutJob, plan: CutPlan): AuditFault[] {
  const asked: readonly Objective[] = job.objectives.includes('least cost')
    ? job.objectives
    : [...job.objectives, 'least cost']
  const wanted = asked.length === 1 ? [] : asked
  const aims = plan.aims ?? []
  const stated = aims.map(({ objective }) => objective).join(', ')
  if (stated !== wanted.join(', ')) {
    const message = `It should be chosen for ${wanted.join(', ') || 'the least cost alone'}, not for ${stated || 'that alone'}.`
    return [{ rule: 'aims', where: 'plan', message }]
  }
  return aims.flatMap(({ objective, value, bound }) => {
    const real = counted(job, plan, objective)
    const where = objective
    if (value !== real) return [{ rule: 'aim', where, message: `It should be ${real}, not ${value}.` }]
    return bound > value
      ? [{ rule: 'aim', where, message: `The bound ${bound} lies above the plan’s own ${value}.` }]
      : []
  })
}

function counted(job: CutJob, plan: CutPlan, objective: Objective): number {
  switch (objective) {
    case 'least cost':
      return plan.cost + plan.preference
    case 'fewest joints':
      return plan.joints.length
    case 'least waste':
      return plan.boards.reduce((sum, board) => sum + board.length, 0)
    case 'fewest lengths': {
      const stock = allowedStock(job)
      const bought = plan.boards.filter((board) => stock.get(board.stockId)?.option.offcut !== true)
      return new Set(bought.map((board) => board.length)).size
    }
  }
}
