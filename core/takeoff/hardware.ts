import { DCA_LIMITS } from '../data/index.ts'
import type { Connector, Frame } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import type { GoodShare } from './tally.ts'

/** Metal by the piece, as the frame's connectors state it. */
export function hardwareOf(frame: Frame): readonly GoodShare[] {
  return frame.connectors.flatMap((connector) =>
    connectorSkus(connector).map((sku) => ({ sku, quantity: connector.count, cause: connector.cause })),
  )
}

/** Hangers by what they hold, one board or two, and by whether it meets its support square. */
function hangerSku({ size, double, skew = 0 }: Connector): string {
  return ['joist-hanger', ...(double ? ['double'] : []), ...(skew > 0 ? ['skewed'] : []), size].join('-')
}

/** Goods of which one is taken for each of a connector's count. */
export function connectorSkus(connector: Connector): readonly string[] {
  switch (connector.kind) {
    case 'joist hanger':
      return [hangerSku(connector)]
    case 'uplift tie':
      return ['uplift-tie']
    case 'end joist angle':
      return [(connector.skew ?? 0) > 0 ? 'hip-angle' : 'end-joist-angle']
    case 'post base':
      return [`post-base-${connector.size}`, 'anchor-bolt-1/2']
    case 'post cap':
      return [`post-cap-${connector.size}`]
    case 'brace bolt':
      return ['ledger-bolt-1/2']
    case 'hold-down':
      // one on the deck's joist, one inside on the house's framing, a rod through both: IRC 2021 Figure R507.9.2(1), from memory
      return ['hold-down-1500lb', 'hold-down-1500lb']
    case 'joist splice':
      return ['joist-splice-plate', 'joist-splice-plate']
    case 'joist lap':
    case 'joist pair':
      return []
  }
}

/** Of a guard post: another good where the job states one that bears more than AWC DCA 6 asks for. */
export function guardHoldDownSku({ guard }: Pick<Job, 'guard'>): string {
  return guard.holdDown > DCA_LIMITS.guardHoldDown.value ? 'guard-hold-down-strong' : 'guard-hold-down'
}
