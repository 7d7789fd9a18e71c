import type { Hip } from '../frame/index.ts'
import { bendingStress, momentOfInertia, rectangleOf, shearStress } from '../rules/index.ts'
import { toInches } from '../units/index.ts'
import { byCalculation } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { hipAreas } from './hip-areas.ts'
import { judge } from './judge.ts'
import { valuesOf } from './load-path.ts'
import type { Check, Finding } from './types.ts'
import { squareFeetText } from './words.ts'

/** Deflection of a span under live load, a 360th of it: IRC 2021 Table R507.6, footnotes, for joists. */
const SPAN_LIMIT = 360

/** The name of a hip's check. */
export function hipCheck({ id }: Hip): string {
  return `check-${id}`
}

/** Hips: no table of the code is for them; they are reckoned as beams under the triangle of load that joists bring. */
export function checkHips(context: CheckContext): readonly Check[] {
  const { job, frame } = context
  return frame.hips.map((hip) => {
    const areas = hipAreas(hip)
    const corner = (context.load + job.site.deadLoad) * areas.inside
    return judge(job, {
      id: hipCheck(hip),
      title: 'Hip',
      subjects: [...hip.memberIds, hip.postId],
      fields: ['shape.seams', 'frame.joists.size', 'frame.beams.front.setback'],
      prescriptive: null,
      calculated: reckoned(context, hip),
      good: () => '',
      bad: 'The hip, two plies of the joists’ size, is too weak for what hangs from it.',
      uncovered: 'No table covers a hip, nor the skewed hangers at its joists',
      remedy:
        'Use deeper joists, or set the beams further from the edge, so that the post stands nearer the inside corner.',
      caution: `About ${corner.toFixed(0)} lb come to the inside corner, on the ends of two ledgers: have that joint designed, or stand a post there. Every joist at the hip needs a hanger skewed by 45°.`,
    })
  })
}

function reckoned(context: CheckContext, hip: Hip): Finding {
  const { job, load } = context
  const { size } = job.frame.joists
  const areas = hipAreas(hip)
  const section = rectangleOf(size, 2)
  const values = valuesOf(context, size, 1)
  const [long, tip] = [toInches(hip.span), toInches(hip.overhang)]
  const total = load + job.site.deadLoad
  const [within, beyond] = [total * areas.span, total * areas.overhang]
  // M = 2 W L ÷ (9 √3) in a span under a triangle of load, W c at the post under a load at the end
  const inSpan = (2 * within * long) / (9 * Math.sqrt(3))
  const atPost = beyond * tip
  const shear = Math.max((2 * within) / 3, within / 3 + (beyond * tip) / long, beyond)
  const bent = (0.01304 * load * areas.span * long ** 3) / (values.modulus * momentOfInertia(section))
  return byCalculation(
    [
      {
        name: 'Bending',
        clause: '3.3',
        demand: { value: bendingStress(Math.max(inSpan, atPost), section), unit: 'psi' },
        capacity: { value: values.bending, unit: 'psi' },
        steps: [
          values.steps.bending,
          `M = 2 W L ÷ (9 √3) = ${(inSpan / 12).toFixed(0)} ft-lb in the span, W c = ${(atPost / 12).toFixed(0)} ft-lb at the post`,
        ],
      },
      {
        name: 'Shear',
        clause: '3.4',
        demand: { value: shearStress(shear, section), unit: 'psi' },
        capacity: { value: values.shear, unit: 'psi' },
        steps: [values.steps.shear, `Greatest shear ${shear.toFixed(0)} lb`],
      },
      {
        name: 'Deflection',
        clause: '3.5',
        demand: { value: bent, unit: 'in' },
        capacity: { value: long / SPAN_LIMIT, unit: 'in' },
        steps: [
          values.steps.modulus,
          `Live load alone, 0.01304 W L³ ÷ (E' I), a ${SPAN_LIMIT}th of ${long.toFixed(2)} in`,
        ],
      },
    ],
    values.source,
    [
      `${squareFeetText(areas.span)} hang from it within its span of ${(long / 12).toFixed(2)} ft, most at the inside corner; ${squareFeetText(areas.overhang)} beyond its post, taken at its end, ${(tip / 12).toFixed(2)} ft out`,
      `Section ${section.breadth} × ${section.depth} in, ${total} psf`,
    ],
  )
}
