import type { Problem } from '../model/problem.ts'
import { lengthStep } from './objectives.ts'

/** Length of all pieces and members together, in the units in which boards are counted, rounded up: no plan has less of board. */
export function woodNeeded(problem: Problem): number {
  const pieces = problem.items.reduce((sum, { size, demand }) => sum + size * demand, 0)
  const members = problem.runs.reduce((sum, run) => sum + run.group.length * run.members, 0)
  return Math.ceil((pieces + members) / lengthStep(problem))
}
