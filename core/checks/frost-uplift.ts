import { IRC_LIMITS } from '../data/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'
import { feetInches } from './words.ts'

/**
 * Uplift by frost that grips a pier's side. The code asks for depth alone, IRC 2021 R403.1.4; ground that holds water
 * lifts a rough pier whatever its depth (Penner and Burn, Canadian Building Digest 128, 1970, read as an abstract). The
 * job's tubes are smooth, which is the remedy; the ground is told, and unknown ground counts as one that holds water.
 */
export function checkFrostUplift(context: CheckContext): Check {
  const { job, frame } = context
  const { soil, frostDepth } = job.site
  const grips = soil === 'unknown' || soil === 'clay or silt'
  const freezes = frostDepth > 0
  const anchored = job.ground.base > job.ground.tube
  const found = byLimit(
    IRC_LIMITS.frostProtection,
    { value: 1, unit: 'count' },
    { value: 1, unit: 'count' },
    [
      freezes
        ? `The ground freezes ${feetInches(frostDepth)} deep`
        : 'The ground does not freeze, as the job states',
      soil === 'unknown'
        ? 'Soil not known: taken as clay or silt, which hold water and heave'
        : `Soil: ${soil}, which ${grips ? 'holds water and heaves' : 'drains'}`,
      'Smooth form tubes give frost nothing to grip',
      anchored
        ? `A base ${feetInches(job.ground.base)} across anchors a tube of ${feetInches(job.ground.tube)} in the ground below`
        : 'No base wider than the tube anchors it in the ground below',
    ],
  )
  const risk = freezes && grips
  return judge(job, {
    id: 'frost-uplift',
    title: 'Uplift by frost',
    subjects: frame.footings.map(({ id }) => id),
    fields: ['site.soil', 'site.frostDepth', 'ground.base', 'ground.tube'],
    prescriptive: { ...found, ratio: null },
    calculated: null,
    good: () =>
      risk
        ? `Frost could grip the piers: smooth tubes${anchored ? ' and wider bases below' : ''} keep them down.`
        : 'Frost has little to lift the piers by.',
    bad: '',
    uncovered: '',
    remedy: '',
    caution: risk
      ? `Ground that holds water can grip a rough pier and lift it when it freezes: use smooth form tubes and drained backfill${anchored ? '' : ', and a base wider than the tube to anchor it'}.`
      : '',
  })
}
