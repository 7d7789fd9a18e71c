import { membersNamed } from '../../checks/index.ts'
import type { Design } from '../../estimate-types.ts'
import type { Connector } from '../../frame/index.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Held by nails alone. */
const NAILED: ReadonlySet<Connector['kind']> = new Set(['joist lap', 'joist pair'])

/** The metal that holds the frame, by the marks on the plan of what it holds: the plan has no room for a sign at each. */
export function connectorLegend({ frame }: Pick<Design, 'frame'>): PaperTable {
  return tableOf(
    'connectors',
    'Hardware on the plan',
    [
      ['what', 'What', 'left'],
      ['count', 'Count', 'right'],
      ['at', 'At', 'left'],
    ],
    frame.connectors
      .filter(({ kind, count }) => count > 0 && !NAILED.has(kind))
      .map((connector) => ({
        what: nameOf(connector),
        count: `${connector.count}`,
        at: membersNamed({ frame, joistIds: connector.at }),
      })),
  )
}

/** As the order names it: by its kind, size, and how it meets what carries it. */
function nameOf({ kind, size, double, skew = 0 }: Connector): string {
  const slant = skew === 0 ? '' : `, skewed ${Number((skew / 100).toFixed(1))}°`
  return `${kind}${double === true ? ` for two ${size}` : `, ${size}`}${slant}`
}
