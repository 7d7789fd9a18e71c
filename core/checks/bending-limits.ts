import type { StretchDemand } from '../rules/index.ts'
import { bendingStress, heldUpright, shearStress } from '../rules/index.ts'
import type { Limit } from './calculated.ts'
import type { Reckoned } from './load-path.ts'

/** Deflection of a span under live load alone: a 360th of it. IRC 2021 Table R507.6, footnotes. */
const SPAN_LIMIT = 360
/** Deflection of an overhang's tip: a 180th of the overhang. IRC 2021 Table R507.6, footnotes. */
const TIP_LIMIT = 180

/** Bending, shear and deflection of the worst stretch of one kind; null where the member has none of it. */
export function bendingLimits(member: Reckoned, kind: StretchDemand['kind']): [Limit, ...Limit[]] | null {
  const { values } = member
  const stretches = member.envelope.stretches.filter((one) => one.kind === kind)
  if (stretches.length === 0) return null
  const moment = Math.max(...stretches.map((one) => one.moment))
  const shear = Math.max(...stretches.map((one) => one.shear))
  const limit = kind === 'span' ? SPAN_LIMIT : TIP_LIMIT
  const softest = stretches.reduce((a, b) =>
    b.deflection / (b.to - b.from) > a.deflection / (a.to - a.from) ? b : a,
  )
  return [
    ...strengthLimits(member, moment, shear, ', at the support'),
    {
      name: 'Deflection',
      clause: '3.5',
      demand: { value: softest.deflection, unit: 'in' },
      capacity: { value: (softest.to - softest.from) / limit, unit: 'in' },
      steps: [
        values.steps.modulus,
        `Live load alone, a ${limit}th of ${(softest.to - softest.from).toFixed(2)} in`,
      ],
    },
  ]
}

/** How the member's loads were reckoned, in words. */
export function loadSteps({ line, section }: Reckoned): readonly string[] {
  return [
    `Dead ${(line.dead * 12).toFixed(1)} plf, live ${(line.live * 12).toFixed(1)} plf, the live load placed worst`,
    `Section ${section.breadth} × ${section.depth} in`,
  ]
}

/** Whether CL is 1 by the rules for depth over breadth, the ends held and the upper edge held along it. NDS 2018 4.4.1. */
export function upright(nominalRatio: number): boolean {
  return heldUpright(nominalRatio, { ends: true, edge: true, bothEdges: false })
}

/**
 * Bending and shear of a member under a moment, lb-in, and a shear, lb. NDS 2018 3.3 and 3.4.
 * @param at what is said of where the shear is
 */
export function strengthLimits(
  { values, section }: Pick<Reckoned, 'values' | 'section'>,
  moment: number,
  shear: number,
  at = '',
): [Limit, Limit] {
  return [
    {
      name: 'Bending',
      clause: '3.3',
      demand: { value: bendingStress(moment, section), unit: 'psi' },
      capacity: { value: values.bending, unit: 'psi' },
      steps: [values.steps.bending, `Greatest moment ${(moment / 12).toFixed(0)} ft-lb`],
    },
    {
      name: 'Shear',
      clause: '3.4',
      demand: { value: shearStress(shear, section), unit: 'psi' },
      capacity: { value: values.shear, unit: 'psi' },
      steps: [values.steps.shear, `Greatest shear ${shear.toFixed(0)} lb${at}`],
    },
  ]
}
