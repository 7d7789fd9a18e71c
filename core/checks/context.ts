import type { Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import type { JoistMeasures } from './joist-measures.ts'
import { type LoadPath, loadPath, type ReckonedJoist } from './load-path.ts'
import { type JoistCantilever, type JoistSpan, type Measures, measure } from './measures.ts'

/** What every check may look at: the deck, its measures, and its loads followed down to the posts. */
export interface CheckContext extends Measures {
  readonly path: LoadPath
}

/** The same for the joists of one group. */
export interface JoistContext extends CheckContext {
  readonly group: JoistMeasures
  readonly spans: readonly JoistSpan[]
  readonly cantilevers: readonly JoistCantilever[]
  /** null where the joists do not lie on two supports */
  readonly joist: ReckonedJoist | null
  readonly joistIds: readonly string[]
  /** what follows a check's name where there is more than one group; empty for the first */
  readonly suffix: string
  /** greatest reaction at a ledger, a header or a flush beam, from which joists hang, lb; null where they hang from none */
  readonly hung: number | null
}

export function contextOf(job: Job, layout: Layout, frame: Frame): CheckContext {
  const measures = measure(job, layout, frame)
  return { ...measures, path: loadPath(measures) }
}

/** One context for the joists of every group. */
export function joistContexts(context: CheckContext): readonly JoistContext[] {
  return context.groups.map((group, i) => {
    const joist = context.path.joists.find((one) => one.group === group) ?? null
    const hanging = group.supports.flatMap(({ seat }, k) =>
      seat !== 'hung' ? [] : [joist?.envelope.supports[k]?.greatest ?? 0],
    )
    return {
      ...context,
      group,
      spans: group.spans,
      cantilevers: group.cantilevers,
      joist,
      joistIds: group.memberIds,
      suffix: i === 0 ? '' : `-${i + 1}`,
      hung: joist === null || hanging.length === 0 ? null : Math.max(...hanging),
    }
  })
}
