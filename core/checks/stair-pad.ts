import type { Pad, StairPlan } from '../stairs/index.ts'
import { toFeet } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { walkedOf } from './flight-load.ts'
import { judge } from './judge.ts'
import { bearingOf, underSoil } from './soil.ts'
import type { Check } from './types.ts'
import { feetInches, squareFeetText } from './words.ts'

/**
 * Soil under the pad that a flight stands on: half of the flight, borne by no more of the pad than lies under the
 * stringers, behind the board of the lowest riser.
 */
export function checkPad(context: CheckContext, { flights, patterns, tread }: StairPlan, pad: Pad): Check {
  const { job, load } = context
  const last = flights.at(-1)
  const span = last === undefined ? 0 : walkedOf({ patterns }, last)
  const area = toFeet(pad.width) * (toFeet(span) / 2)
  const under = toFeet(pad.width) * toFeet(pad.depth - pad.landing - tread.riserBoard)
  const psf = load + job.site.deadLoad
  const pressure = (area * psf) / under
  const bearing = bearingOf(job)
  const found = underSoil(bearing, pressure, [
    `Half of the last flight, ${squareFeetText(area)} × ${psf} psf = ${Math.ceil(area * psf)} lb`,
    `On ${squareFeetText(under)} of the pad, as deep as stringers stand on it: ${tenth(pressure)} psf`,
    bearing.says,
  ])
  return judge(job, {
    id: 'stair-pad',
    title: 'Pad under the stairs',
    subjects: [],
    fields: ['stairs.foot', 'stairs.padDepth', 'site.soil', 'site.soilBearing'],
    prescriptive: found,
    calculated: null,
    good: () =>
      `The pad, ${feetInches(pad.thickness)} thick, presses ${tenth(pressure)} psf on soil that carries ${bearing.psf}.`,
    bad: `The pad presses ${tenth(pressure)} psf on soil that carries ${bearing.psf}.`,
    uncovered: 'No rule covers the soil under the pad',
    remedy: 'Have footings under the stringers.',
    caution: bearing.caution,
  })
}

/** Rounded up to a tenth, as the demand is in print. */
function tenth(psf: number): string {
  return `${Math.ceil(psf * 10 - 1e-6) / 10}`
}
