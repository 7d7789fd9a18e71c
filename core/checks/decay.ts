import type { Species } from '../data/index.ts'
import { IRC_LIMITS } from '../data/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'
import { SPECIES_NAME } from './words.ts'

/** Species whose heartwood is naturally durable, IRC 2021 R202; sapwood of them is not. */
const DURABLE: readonly Species[] = ['RW', 'WC']

/** Supports of a deck in the weather are treated or naturally durable. IRC 2021 R317.1. */
export function checkDecay(context: CheckContext): Check {
  const { species, treatment } = context.job.frame
  const treated = treatment === 'treated'
  const durable = DURABLE.includes(species)
  const found = byLimit(
    IRC_LIMITS.decay,
    { value: 1, unit: 'count' },
    { value: treated || durable ? 1 : 0, unit: 'count' },
    [`Framing: ${treatment} ${SPECIES_NAME[species]}`],
  )
  return judge(context.job, {
    id: 'decay',
    title: 'Protection against decay',
    subjects: [],
    fields: ['frame.treatment', 'frame.species'],
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () =>
      treated ? 'The framing is treated.' : `Heartwood of ${SPECIES_NAME[species]} is naturally durable.`,
    bad: `Untreated ${SPECIES_NAME[species]} decays in the weather.`,
    uncovered: 'No rule covers decay',
    remedy: 'Use treated lumber, labelled for ground contact where it is near the ground.',
    caution: treated
      ? 'Brush field cuts with preservative; fasteners hot-dip galvanised or stainless.'
      : 'Heartwood only: sapwood of any species decays.',
  })
}
