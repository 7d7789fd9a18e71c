import type { CodeLimit } from '../data/index.ts'
import { isRow } from '../rules/index.ts'
import { inches } from '../units/index.ts'
import { byLimit, length, over } from './finding.ts'
import type { Finding } from './types.ts'

/** A single measure against a single number of a clause, in ticks. */
export interface PlainRule {
  readonly limit: CodeLimit
  readonly what: string
  readonly measure: number
  readonly holds: 'at most' | 'at least'
}

/** What several plain rules say of one thing. */
export interface PlainOutcome {
  /** the rule that decides: one that is broken, else one that was read */
  readonly deciding: Finding | null
  readonly beside: readonly Finding[]
  readonly broken: readonly PlainRule[]
  /** rules that hold, but that nobody has read: they decide nothing and are told */
  readonly unread: string
}

/**
 * A rule that was read decides; one from memory decides only where it is broken, which is the safe side, and is told as
 * unread where it holds. Measures that hold have no ratio: 7-1/2 in of 7-3/4 are not near a limit, they are a stair.
 */
export function plainRules(rules: readonly PlainRule[]): PlainOutcome {
  const found = rules.map((rule) => ({ rule, finding: findingOf(rule) }))
  const broken = found.filter(({ finding }) => finding.ratio !== null)
  const read = found.filter(({ finding }) => isRow(finding.confidence))
  const deciding = (broken[0] ?? read[0])?.finding ?? null
  const recalled = found.filter(({ finding }) => !isRow(finding.confidence) && finding.ratio === null)
  return {
    deciding,
    beside: found.map(({ finding }) => finding).filter((finding) => finding !== deciding),
    broken: broken.map(({ rule }) => rule),
    unread:
      recalled.length === 0
        ? ''
        : `From memory, to be confirmed with the building official: ${recalled
            .map(({ rule }) => `${rule.limit.says}, ${rule.limit.value} in (${rule.limit.source.clause})`)
            .join('; ')}.`,
  }
}

function findingOf({ limit, what, measure, holds }: PlainRule): Finding {
  const bound = inches(limit.value)
  const [demand, capacity] = holds === 'at most' ? [measure, bound] : [bound, measure]
  const within = demand <= capacity + 1e-6
  const told = (measure / 32).toFixed(3).replace(/\.?0+$/, '')
  const finding = byLimit(limit, length(demand), length(capacity), [
    `${what}: ${told} in, ${holds} ${limit.value} in`,
  ])
  return { ...finding, ratio: within ? null : over(demand, capacity) }
}
