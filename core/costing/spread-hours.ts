import type { HoursWorked, KeptLine } from '../job/index.ts'

/** Hours booked on all work of a stage name it as `stage-frame`. */
const STAGE = 'stage-'

export interface SpreadHours {
  /** worker hours in 1/1000 by line */
  readonly of: ReadonlyMap<string, number>
  /** what belongs to no work of the estimate, by its words */
  readonly beside: ReadonlyMap<string, number>
}

/** All work of a stage, as hours can be booked on it. */
export interface StageOfWork {
  readonly line: string
  readonly stage: string
  readonly what: string
}

/** The stages that an estimate has work in. */
export function stagesOf(lines: readonly KeptLine[]): readonly StageOfWork[] {
  const stages = new Set(lines.filter(({ hours }) => hours > 0).map(({ stage }) => stage))
  return [...stages]
    .filter((stage) => stage !== '')
    .map((stage) => ({ line: `${STAGE}${stage}`, stage, what: `All work: ${stage}` }))
}

/**
 * Hours by the line they were worked on. Those booked on a whole stage go to its lines by the hours that each was
 * estimated at, to 1/1000 hour: the largest remainders take what rounding leaves, so that none is lost.
 */
export function spreadHours(lines: readonly KeptLine[], worked: readonly HoursWorked[]): SpreadHours {
  const works = lines.filter(({ part }) => part === 'labour')
  const ids = new Set(works.map(({ line }) => line))
  const stages = new Map(stagesOf(works).map(({ line, stage }) => [line, stage]))
  const of = new Map<string, number>()
  const beside = new Map<string, number>()
  const add = (map: Map<string, number>, key: string, hours: number) =>
    map.set(key, (map.get(key) ?? 0) + hours)
  for (const { line, what, thousandths } of worked) {
    const stage = stages.get(line)
    if (ids.has(line)) add(of, line, thousandths)
    else if (stage === undefined) add(beside, what.trim() === '' ? line : what.trim(), thousandths)
    else
      for (const [id, hours] of shares(
        works.filter((one) => one.stage === stage),
        thousandths,
      ))
        add(of, id, hours)
  }
  return { of, beside }
}

function shares(works: readonly KeptLine[], thousandths: number): readonly (readonly [string, number])[] {
  const whole = works.reduce((sum, { hours }) => sum + BigInt(hours), 0n)
  const parts = works.map(({ line, hours }) => {
    const exact = BigInt(thousandths) * BigInt(hours)
    return { line, floor: Number(exact / whole), rest: exact % whole }
  })
  let left = thousandths - parts.reduce((sum, { floor }) => sum + floor, 0)
  const byRest = [...parts].sort((a, b) => (a.rest < b.rest ? 1 : a.rest > b.rest ? -1 : 0))
  const more = new Set<string>()
  for (const { line } of byRest) {
    if (left === 0) break
    more.add(line)
    left -= 1
  }
  return parts.map(({ line, floor }) => [line, floor + (more.has(line) ? 1 : 0)])
}
