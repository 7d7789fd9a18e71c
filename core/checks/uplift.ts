import { figure } from '../rules/index.ts'
import type { CheckContext } from './context.ts'
import { judge } from './judge.ts'
import type { Check } from './types.ts'
import { beamName } from './words.ts'

/** Uplift under this is rounding, lb. */
const NOTHING = 1

/**
 * Joists or beams that lift off a support when the live load stands on an overhang or beside it. Nothing where none
 * does, as in every deck within the tables: what holds them down has no table row.
 */
export function checkUplift(context: CheckContext): readonly Check[] {
  const { joists, beams } = context.path
  return [
    ...joists.flatMap(({ group, envelope }, i) =>
      lifted(
        context,
        `joist-uplift${i === 0 ? '' : `-${i + 1}`}`,
        'A joist',
        least(envelope.supports.map((support) => support.least)),
        group.memberIds,
        ['frame.beams.front.setback'],
      ),
    ),
    ...beams.flatMap(({ facts, envelope }) =>
      lifted(
        context,
        `beam-uplift-${facts.beam.key}`,
        `The ${beamName(facts.beam)}`,
        least(envelope.supports.map((support) => support.least)),
        [facts.beam.id, ...facts.beam.postIds],
        [`frame.beams.${facts.beam.beam}.inset`, `frame.beams.${facts.beam.beam}.posts`],
      ),
    ),
  ]
}

function least(reactions: readonly number[]): number {
  return Math.min(0, ...reactions)
}

function lifted(
  context: CheckContext,
  id: string,
  what: string,
  reaction: number,
  subjects: readonly string[],
  fields: readonly string[],
): readonly Check[] {
  if (reaction > -NOTHING) return []
  const pull = figure(Math.ceil(-reaction))
  return [
    judge(context.job, {
      id,
      title: 'Uplift',
      subjects,
      fields,
      prescriptive: null,
      calculated: null,
      good: () => '',
      bad: '',
      uncovered: `${what} lifts off a support by ${pull} lb when the live load stands where it is worst`,
      whenUncovered: `Shorten the overhang, or have a licensed designer hold it down with connectors listed for ${pull} lb or more.`,
      remedy: '',
      caution: '',
    }),
  ]
}
