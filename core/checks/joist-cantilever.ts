import { IRC_LIMITS } from '../data/index.ts'
import { tabledCantilever } from '../rules/index.ts'
import { toInches } from '../units/index.ts'
import type { CheckContext, JoistCantilever } from './context.ts'
import { atMost, byLimit, length, worse } from './finding.ts'
import { judge } from './judge.ts'
import { joistIds } from './members.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { feetInches, SPECIES_NAME } from './words.ts'

/**
 * Cantilever of the joists beyond each beam, from its centre to the rim's outer face: the lesser of IRC 2021
 * Table R507.6 and a quarter of the adjacent span.
 */
export function checkJoistCantilevers(context: CheckContext): readonly Check[] {
  return context.cantilevers.map((cantilever) => checkOne(context, cantilever))
}

function checkOne(context: CheckContext, { beam, length: reach, adjacent }: JoistCantilever): Check {
  const { job } = context
  const { size } = job.frame.joists
  const lookup = underTables(context, tabledCantilever(size, adjacent, job.frame.species, context.spanLoad))
  const quarter = Math.floor(adjacent * IRC_LIMITS.cantileverShare.value)
  const steps = [
    `Cantilever, centre of the beam to the rim's outer face: ${feetInches(reach)}`,
    `Adjacent clear span: ${feetInches(adjacent)}`,
    `Table: ${lookup.sentence}`,
    `A quarter of the adjacent span: ${Number(toInches(quarter).toFixed(2))} in`,
  ]
  const table = atMost(lookup, reach, steps)
  const share: Finding = byLimit(IRC_LIMITS.cantileverShare, length(reach), length(quarter), steps)
  const tooLong = reach > quarter
  // a quarter of the span is a limit of its own: it can fail a cantilever that has no row, and passes none
  const prescriptive = table === null ? (tooLong ? share : null) : worse(table, share)
  return judge(job, {
    id: `joist-cantilever-${beam}`,
    title: 'Joist cantilever',
    subjects: joistIds(context.frame),
    fields: [`frame.beams.${beam}.setback`, 'frame.joists.size', 'size.depth'],
    prescriptive,
    calculated: null,
    good: (used) => `Joists use ${used} of their cantilever beyond the ${beam} beam.`,
    bad: `Joists reach ${feetInches(reach)} beyond the ${beam} beam; that is too far.`,
    uncovered: `No table row covers a cantilever of ${size} joists of ${SPECIES_NAME[job.frame.species]} at ${context.load} psf`,
    remedy: `Set the ${beam} beam nearer the rim, or use deeper joists.`,
    caution: '',
  })
}
