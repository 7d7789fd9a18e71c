import type { JobStatement } from './types.ts'
import { JOB_VERSION } from './upgrade.ts'

/** The job shown on first start. Place, people and sums are invented. */
export const DEMO_JOB: JobStatement = {
  version: JOB_VERSION,
  name: 'Heron Lane',
  notes: 'Demonstration job. The place, the people and every sum in it are invented.',
  builder: 'contractor',
  size: { width: '23 ft 6 in', depth: '13 ft 6 in', height: '42 in' },
  site: {
    attachment: 'ledger',
    ground: { away: { fall: '6 in', over: '13 ft 6 in' } },
    frostDepth: '36 in',
    frostSource: 'invented for the demonstration',
    soil: 'clay or silt',
    snowLoad: 0,
    snowSource: 'invented for the demonstration',
  },
  frame: {
    joists: { size: '2x10', spacing: '16 in' },
    beams: { front: { size: '2x12', plies: 2, setback: '24 in', posts: 4, inset: '12 in' } },
    postSize: '6x6',
  },
  ground: { tube: '12 in', base: '20 in', baseThickness: '8 in' },
  pricing: { method: 'margin', margin: '30 %', salesTax: '6 %', contingency: '5 %', overhead: '10 %' },
  scope: {
    stairs: { allowance: '$1,150' },
    guard: { allowance: '$2,850' },
    'taking away': { included: false },
    hauling: { allowance: '$140' },
    delivery: { allowance: '$95' },
    permit: { allowance: '$210' },
    hire: { allowance: '$180' },
    'clean-up': { allowance: '$75' },
  },
}
