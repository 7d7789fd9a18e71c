import { IRC_LIMITS } from '../data/index.ts'
import { inches, ticks } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'
import { beamName, feetInches } from './words.ts'

/**
 * Joists jointed over middle beams: lapped by 3 in or more and nailed, or butted with a splice as strong, IRC 2021
 * R502.6.1. Their bearing is judged with that of all joists. Nothing where none is jointed.
 */
export function checkJoistJoints({ job, frame }: CheckContext): readonly Check[] {
  const laps = frame.connectors.filter(({ kind }) => kind === 'joist lap')
  const splices = frame.connectors.filter(({ kind }) => kind === 'joist splice')
  const joints = [...laps, ...splices]
  if (joints.length === 0) return []
  const overlaps = laps.flatMap(({ overlap: one }) => one ?? [])
  const overlap = overlaps.length === 0 ? null : ticks(Math.min(...overlaps))
  const ids = new Set(joints.flatMap(({ cause }) => cause.ids))
  const over = frame.beams.filter(({ id }) => ids.has(id)).map(beamName)
  const where = over.join(' and the ')
  const count = (list: typeof joints) => list.reduce((sum, one) => sum + one.count, 0)
  const told = [
    ...(laps.length === 0 ? [] : [`${count(laps)} lapped`]),
    ...(splices.length === 0 ? [] : [`${count(splices)} butted with a pair of plates`]),
  ].join(', ')
  const least = inches(IRC_LIMITS.joistLap.value)
  const found: Finding = byLimit(IRC_LIMITS.joistLap, length(least), length(overlap ?? least), [
    ...(overlap === null ? [] : [`Shortest overlap of two joists: ${feetInches(overlap)}`]),
    ...(laps.length === 0 ? [] : ['Each lap nailed through the faces with three 10d nails']),
    ...(splices.length === 0
      ? []
      : ['Each butt over the middle of its beam, a plate on each side, as strong as a nailed lap']),
  ])
  return [
    judge(job, {
      id: 'joist-joints',
      title: 'Joints of joists',
      subjects: joints.flatMap(({ at }) => at),
      fields: ['frame.joists.overMiddle', 'frame.joists.longest', 'shape.middleBeams'],
      // a lap is made to the rule: being at it is not being near a limit
      prescriptive: (found.ratio ?? 0) > 1 ? found : { ...found, ratio: null },
      calculated: null,
      good: () => `Joists are jointed over the ${where}: ${told}.`,
      bad: `Joists overlap by ${feetInches(overlap ?? ticks(0))} over the ${where}; 3 in are needed.`,
      uncovered: '',
      remedy: 'Let each joist run 1-1/2 in or more past the centre of the beam.',
      caution:
        splices.length === 0
          ? ''
          : 'Plates: listed for a tie across a butt, with all their nails; each end bears 1-1/2 in.',
    }),
  ]
}
