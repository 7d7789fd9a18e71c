import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type CutPlan } from '../../../../core/cutting/index.ts'
import type { Cents } from '../../../../core/units/index.ts'
import { changes } from '../../../oracles/changes.ts'

/** Random jobs with their proven plans, of the generator of the oracles: each pair of rules stands in some of them. */
const FROZEN = readFileSync(join(import.meta.dirname, 'frozen-plans.jsonl'), 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as { readonly job: CutJob; readonly plan: CutPlan })

const rules = (job: CutJob, plan: CutPlan): string[] => auditPlan(job, plan).map((fault) => fault.rule)

function withBound(plan: CutPlan, by: number): CutPlan {
  const dualBound = (plan.certificate.dualBound + by) as Cents
  return { ...plan, certificate: { ...plan.certificate, dualBound } }
}

describe.each(FROZEN.map((pair, index) => ({ ...pair, number: index + 1 })))(
  'frozen plan $number',
  ({ job, plan }) => {
    it('is sound, and its prices prove its bound but not a cent more', () => {
      expect(auditPlan(job, plan)).toEqual([])
      expect(rules(job, withBound(plan, 1))).toEqual(['bound'])
    })

    it('breaks the same rules as before with each change of it and of its job', async () => {
      const broken = [...changes(plan)].map(
        ([path, other]) => `${path}: ${rules(job, other as CutPlan).join(', ')}`,
      )
      for (const [path, other] of changes(job))
        broken.push(`job${path}: ${rules(other as CutJob, plan).join(', ')}`)
      expect(digestOf(broken)).toMatchSnapshot()
    })
  },
)

/** How many changes there are, how many are refused and for how many faults, and a sum over all of what was said. */
function digestOf(broken: readonly string[]): string {
  const lists = broken.map((line) => line.slice(line.indexOf(': ') + 2))
  const faults = lists.flatMap((list) => (list === '' ? [] : list.split(', '))).length
  let sum = 0
  for (const letter of broken.join('\n')) sum = (Math.imul(sum, 31) + (letter.codePointAt(0) ?? 0)) | 0
  return `${broken.length} changes, ${lists.filter((list) => list !== '').length} refused for ${faults} faults, sum ${sum}`
}
