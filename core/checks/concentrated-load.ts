import {
  analyseBeams,
  bendingStress,
  figure,
  greatestShear,
  momentExtremes,
  shearStress,
} from '../rules/index.ts'
import { byCalculation, type Limit } from './calculated.ts'
import type { JoistContext } from './context.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'

/** Places along a joist, per stretch, at which the load is tried. */
const PLACES = 8

/**
 * A concentrated load as the job states it, on one joist, wherever along it that is worst, with the dead load and
 * without people beside it. No table of the code covers it; nothing is said where there is none.
 */
export function checkConcentratedLoad(context: JoistContext): readonly Check[] {
  const { job } = context
  const pounds = job.site.concentratedLoad
  if (pounds === 0) return []
  const calculated = calculate(context, pounds)
  const fails = (calculated?.ratio ?? 0) > 1
  return [
    judge(job, {
      id: `concentrated-load${context.suffix}`,
      title: 'Concentrated load',
      subjects: context.joistIds,
      // where it does not fail no other size can mend that no table covers it
      fields: ['site.concentratedLoad', ...(fails ? ['frame.joists.size'] : [])],
      prescriptive: null,
      calculated,
      good: () => '',
      bad: `A joist cannot carry ${figure(pounds)} lb at one place by itself.`,
      uncovered: `No table covers ${figure(pounds)} lb at one place`,
      remedy: 'Use deeper joists, or have a licensed designer spread the load over several.',
      caution: 'Its feet must stand over joists; decking between them is not checked for it.',
    }),
  ]
}

/** Bending and shear of one joist alone, no load shared with its neighbours. NDS 2018 3.3 and 3.4. */
function calculate({ joist }: JoistContext, pounds: number): Finding | null {
  if (joist === null) return null
  const { section, line, envelope, values } = joist
  const supports = envelope.supports.map(({ at }) => at)
  const length = Math.max(...envelope.stretches.map(({ to }) => to))
  const places = envelope.stretches.flatMap(({ from, to }) =>
    Array.from({ length: PLACES + 1 }, (_, i) => from + ((to - from) * i) / PLACES),
  )
  const results = analyseBeams(
    { length, supports, stiffness: 1 },
    places.map((at) => [
      { kind: 'uniform', from: 0, to: length, load: line.dead },
      { kind: 'point', at, load: pounds },
    ]),
  )
  const moments = results.map((result) => momentExtremes(result, 0, length))
  const moment = Math.max(...moments.flatMap(({ greatest, least }) => [greatest.value, -least.value]))
  const shear = Math.max(...results.map((result) => greatestShear(result, 0, length)))
  const limits: [Limit, Limit] = [
    {
      name: 'Bending',
      clause: '3.3',
      demand: { value: bendingStress(moment, section), unit: 'psi' },
      capacity: { value: values.bending, unit: 'psi' },
      steps: [values.steps.bending, `Greatest moment ${figure(moment / 12)} ft-lb`],
    },
    {
      name: 'Shear',
      clause: '3.4',
      demand: { value: shearStress(shear, section), unit: 'psi' },
      capacity: { value: values.shear, unit: 'psi' },
      steps: [values.steps.shear, `Greatest shear ${figure(shear)} lb`],
    },
  ]
  return byCalculation(limits, values.source, [
    `${figure(pounds)} lb at the worst of ${places.length} places along one joist, with ${figure(line.dead * 12, 1)} plf of dead load`,
  ])
}
