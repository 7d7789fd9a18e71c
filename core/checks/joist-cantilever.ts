import { IRC_LIMITS } from '../data/index.ts'
import { guideOverhang, momentOfInertia, tabledCantilever, tipDeflection } from '../rules/index.ts'
import { toInches } from '../units/index.ts'
import { bendingLimits, loadSteps } from './bending-limits.ts'
import { byCalculation, type Limit } from './calculated.ts'
import type { JoistContext } from './context.ts'
import { beside, guideCaution } from './deck-guide.ts'
import { atMost, byLimit, length, worse } from './finding.ts'
import { joistsNamed } from './hanging-joists.ts'
import { judge } from './judge.ts'
import type { JoistCantilever } from './measures.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { beamName, feetInches, SPECIES_NAME } from './words.ts'

/**
 * Cantilever of the joists beyond each beam, from its centre to the rim's outer face: the lesser of IRC 2021
 * Table R507.6 and a quarter of the adjacent span.
 */
export function checkJoistCantilevers(context: JoistContext): readonly Check[] {
  return context.cantilevers.map((cantilever) => checkOne(context, cantilever))
}

function checkOne(context: JoistContext, cantilever: JoistCantilever): Check {
  const { job } = context
  const { beam, key, length: reach, adjacent } = cantilever
  const { size } = job.frame.joists
  const name = beamName(cantilever)
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
  const none = lookup.kind !== 'outside' && lookup.value === null
  // a quarter of the span is a limit of its own: it can fail a cantilever that has no row, and passes none
  const prescriptive = table === null ? (tooLong ? share : null) : worse(table, share)
  const guide = beside(context, guideOverhang(size, job.frame.joists.spacing, job.frame.species), (found) =>
    atMost(found, reach, [`Cantilever: ${feetInches(reach)}`, found.sentence]),
  )
  return judge(job, {
    id: `joist-cantilever-${key}${context.suffix}`,
    title: 'Joist cantilever',
    subjects: context.joistIds,
    fields: [`frame.beams.${beam}.setback`, 'frame.joists.size', 'size.depth'],
    prescriptive,
    paged: lookup.paged,
    calculated: calculate(context, cantilever),
    beside: guide,
    good: (used) => `${joistsNamed(context)} use ${used} of their cantilever beyond the ${name}.`,
    bad: `${joistsNamed(context)} reach ${feetInches(reach)} beyond the ${name}; ${none ? `over a span of ${feetInches(adjacent)} the table allows none` : 'that is too far'}.`,
    uncovered: `No table row covers a cantilever of ${size} joists of ${SPECIES_NAME[job.frame.species]} at ${context.load} psf`,
    remedy: none
      ? 'Use deeper joists, or shorten the span with another beam.'
      : `Set the ${name} nearer the rim, or use deeper joists.`,
    caution: guideCaution(guide),
  })
}

/** Load at the tip of a cantilever, lb: IRC 2021 Table R507.6, footnotes, from memory; AWC DCA 6 names it too. */
const TIP_LOAD = 220

/** Bending and shear at the beam, and the tip's deflection under live load and, alone, under 220 lb. NDS 2018 3.3 to 3.5. */
function calculate({ joist }: JoistContext, { side }: JoistCantilever): Finding | null {
  const overhangs = joist?.envelope.stretches.filter((one) => one.kind === 'overhang') ?? []
  const overhang = side === 'start' ? overhangs[0] : overhangs.at(-1)
  const spans = joist?.envelope.stretches.filter((one) => one.kind === 'span') ?? []
  const span = side === 'start' ? spans[0] : spans.at(-1)
  if (joist === null || overhang === undefined || span === undefined) return null
  const limits = bendingLimits({ ...joist, envelope: { stretches: [overhang], supports: [] } }, 'overhang')
  if (limits === null) return null
  const reach = overhang.to - overhang.from
  const stiffness = joist.values.modulus * momentOfInertia(joist.section)
  const tip = tipDeflection(TIP_LOAD, reach, span.to - span.from, stiffness)
  const underMan: Limit = {
    name: `Deflection under ${TIP_LOAD} lb at the tip`,
    clause: '3.5',
    demand: { value: tip, unit: 'in' },
    capacity: { value: reach / 180, unit: 'in' },
    steps: [
      `P a² (L + a) / (3 E' I), a ${reach} in, L ${span.to - span.from} in; a 180th of the cantilever is allowed`,
    ],
  }
  return byCalculation([...limits, underMan], joist.values.source, loadSteps(joist))
}
