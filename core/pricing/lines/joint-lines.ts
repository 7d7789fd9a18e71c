import type { FrameRun } from '../../frame/index.ts'
import type { Job } from '../../job/index.ts'
import { jointCost } from '../joint-cost.ts'
import type { Line, PriceBook } from '../types.ts'
import { countLine } from './line.ts'
import type { PlannedClass } from './lumber-lines.ts'

export interface JointLines {
  readonly lines: readonly Line[]
  /** worker minutes of one joint, by line of labour */
  readonly minutes: ReadonlyMap<Line['id'], number>
}

/**
 * What the planned joints cost: per kind one line of material and one of labour, priced by the joint.
 * Their sum is the joint cost of the plans to the cent: it was these dollars that chose the joints.
 */
export function jointLines(
  job: Job,
  runs: readonly FrameRun[],
  plans: readonly PlannedClass[],
  book: PriceBook,
): JointLines {
  const kindOf = new Map(runs.map((run) => [run.id, run.kind]))
  const joints = plans.flatMap(({ plan }) => plan.joints)
  const lines: Line[] = []
  const minutes = new Map<Line['id'], number>()
  for (const kind of ['beam ply', 'rim', 'ledger', 'decking'] as const) {
    const made = joints.filter((joint) => kindOf.get(joint.runId) === kind)
    const cost = jointCost(kind, book, job.builder)
    if (made.length === 0 || cost === null) continue
    const cause = {
      fields: [],
      ids: [...new Set(made.map((joint) => joint.memberId))],
      rule: `${made.length} joints in the cutting plan, ${cost.kit.minutes} worker minutes each${kind === 'rim' ? '; blocks behind them are offcuts, or boards with a line of their own' : ''}`,
    }
    const id = `joint-${kind.replace(' ', '-')}`
    lines.push(
      countLine(
        {
          id: `${id}-material`,
          group: 'joints',
          label: cost.kit.label,
          code: cost.kit.sku,
          unit: 'joint',
          part: 'material',
          cause,
        },
        made.length,
        cost.material,
      ),
      countLine(
        {
          id: `${id}-labour`,
          group: 'joints',
          label: `Make ${kind} joints, ${cost.kit.minutes} min each`,
          code: '',
          unit: 'joint',
          part: 'labour',
          cause,
        },
        made.length,
        cost.labour,
      ),
    )
    minutes.set(`${id}-labour`, cost.kit.minutes)
  }
  const priced = lines.reduce((sum, { amount }) => sum + amount, 0)
  const planned = plans.reduce((sum, { plan }) => sum + plan.jointCost, 0)
  if (priced !== planned) throw new Error(`joint lines sum to ${priced} cents, the plans say ${planned}`)
  return { lines, minutes }
}
