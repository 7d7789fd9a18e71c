import { SOIL_BEARING } from '../data/index.ts'
import { type Job, toldBy } from '../job/index.ts'
import { type Psf, psf } from '../units/index.ts'
import { byLimit } from './finding.ts'
import type { Finding } from './types.ts'

export interface Bearing {
  readonly psf: Psf
  readonly says: string
  readonly caution: string
}

/**
 * Bearing to reckon with: what the job states; where the soil is not known no more than the poorest class carries, and
 * where nobody is named for it no more than its class is presumed to.
 */
export function bearingOf(job: Job): Bearing {
  const { soil, soilBearing, soilSource } = job.site
  const poorest = Math.min(...SOIL_BEARING.rows.map((row) => row.psf))
  if (soil === 'unknown') {
    const used = psf(Math.min(soilBearing, poorest))
    return {
      psf: used,
      says: `Soil not known: ${used} psf, as for clay or silt (${SOIL_BEARING.source.clause})${soilBearing > used ? `; the ${soilBearing} psf stated count once it is said what the soil is` : ''}`,
      caution: `The soil is not known: have it looked at before digging; clay, silt and fill can carry less.${soilBearing > used ? ` The ${soilBearing} psf stated count only once it is said what the soil is: ${used} psf until then.` : ''}`,
    }
  }
  const presumed = SOIL_BEARING.rows.find((row) => row.soil === soil)?.psf ?? poorest
  const beyond = soilBearing > presumed
  // more than the class is presumed to carry counts only where somebody is named for it
  const used = beyond && soilSource === '' ? psf(presumed) : soilBearing
  return {
    psf: used,
    says: `Soil bearing ${soilBearing} psf, ${toldBy(soilSource)} (${soil}: ${presumed} psf in ${SOIL_BEARING.source.clause})`,
    caution: beyond
      ? `${soilBearing} psf is more than ${soil} is presumed to carry; it needs a soil report${used < soilBearing ? `, and until one is named ${used} psf counts` : ''}.`
      : '',
  }
}

/** What presses on the soil against what it carries, psf. */
export function underSoil({ psf: carried }: Bearing, pressure: number, steps: readonly string[]): Finding {
  return byLimit(
    {
      id: 'irc-2021/soil-bearing',
      says: 'what soil is presumed to carry',
      value: carried,
      unit: 'psf',
      source: SOIL_BEARING.source,
    },
    { value: pressure, unit: 'psf' },
    { value: carried, unit: 'psf' },
    steps,
  )
}
