import type { Estimate, WhyStep } from './estimate-types.ts'
import { fieldSteps } from './why-field.ts'
import { lineThing, type Thing, thingsOf } from './why-things.ts'
import { totalThings } from './why-totals.ts'

/**
 * Why a thing is there or costs what it does: from a total (`totals.cost`), a printed line, a good, a member, a
 * piece, a check or a field back to the job's fields and the clauses. Each thing is explained once in the answer;
 * where it comes up again it stands without its reasons. Null for an id that the estimate does not know.
 */
export function why(estimate: Estimate, id: string): WhyStep | null {
  const { pricing } = estimate
  const lines = new Map(pricing?.lines.map((line) => [line.id, lineThing(line)]))
  const totals = pricing === null ? new Map<string, Thing>() : totalThings(pricing)
  const things = thingsOf(estimate)
  const explained = new Set<string>()

  const stepOf = (key: string, thing: Thing, fromTotal: boolean): WhyStep => {
    const { text, cause } = thing
    if (explained.has(text)) return { id: key, text, cause, because: [] }
    explained.add(text)
    const because = cause.ids.flatMap((next) => {
      // a total names totals and lines; a line and everything else name things of the deck
      const found = fromTotal ? (totals.get(next) ?? lines.get(next)) : things.get(next)
      return found === undefined ? [] : [stepOf(next, found, totals.has(next))]
    })
    const fields = cause.fields.flatMap((path) => fieldSteps(estimate, path))
    return { id: key, text, cause, because: [...because, ...fields] }
  }

  const asked = totals.get(id) ?? lines.get(id) ?? things.get(id)
  if (asked !== undefined) return stepOf(id, asked, totals.has(id))
  const fields = fieldSteps(estimate, id)
  const [only] = fields
  if (only === undefined) return null
  return fields.length === 1 ? only : { id, text: id, cause: null, because: fields }
}
