import { IRC_LIMITS } from '../data/index.ts'
import { toldBy } from '../job/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'
import { feetInches } from './words.ts'

/** Depth of the footings: at or under the local frost depth, 12 in at least. IRC 2021 R507.3.2, R403.1.4. */
export function checkFootingDepth(context: CheckContext): Check {
  const { job, frame } = context
  const { frostDepth, frostStated, frostSource } = job.site
  const least = inches(IRC_LIMITS.footingDepth.value)
  const needed = ticks(Math.max(least, frostDepth))
  const shallowest = ticks(Math.min(...frame.footings.map((footing) => footing.depth)))
  const prescriptive = byLimit(IRC_LIMITS.footingDepth, length(needed), length(shallowest), [
    frostStated
      ? `Frost depth ${feetInches(frostDepth)}, ${toldBy(frostSource)}; never less than ${feetInches(least)}`
      : `Frost depth not known: taken as ${feetInches(frostDepth)}, as in a very cold place; never less than ${feetInches(least)}`,
    `Bottom of the shallowest footing under the ground at its post: ${feetInches(shallowest)}`,
  ])
  return judge(job, {
    id: 'footing-depth',
    title: 'Footing depth',
    subjects: frame.footings.map((footing) => footing.id),
    fields: ['site.frostDepth', 'site.frostSource'],
    prescriptive: isAtLimit(prescriptive.ratio) ? { ...prescriptive, ratio: null } : prescriptive,
    calculated: null,
    good: () => `Footings reach ${feetInches(shallowest)} down, to the frost depth or below.`,
    bad: `Footings reach ${feetInches(shallowest)} down; ${feetInches(needed)} is needed.`,
    uncovered: 'No rule covers the depth of the footings',
    remedy: `Dig to ${feetInches(needed)}.`,
    caution: frostStated
      ? frostSource === ''
        ? 'Ask the building department for the frost depth.'
        : ''
      : 'Ask the building department for the frost depth and state it: where it is less, holes are less deep.',
  })
}

/** The frame digs to the depth that the rule asks for: being at it is not being near a limit. */
function isAtLimit(ratio: number | null): boolean {
  return ratio === 1
}
