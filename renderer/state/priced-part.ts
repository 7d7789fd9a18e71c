import { clearField, FIELDS_WITHOUT_PRICE, type JobStatement } from '../../core/job/index.ts'

/** What of a statement deck and price depend on: without names, notes, the customer and what the job took so far. */
export function pricedPart(statement: JobStatement): JobStatement {
  return [...FIELDS_WITHOUT_PRICE].reduce(clearField, statement)
}

/** Whether the estimate of one statement is that of the other. */
export function isPricedAlike(one: JobStatement, other: JobStatement): boolean {
  return JSON.stringify(pricedPart(one)) === JSON.stringify(pricedPart(other))
}
