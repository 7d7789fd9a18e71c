import { SOIL_BEARING } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { type Psf, psf } from '../units/index.ts'

export interface Bearing {
  readonly psf: Psf
  readonly says: string
  readonly caution: string
}

/** Bearing to reckon with: what the job states, and where the soil is not known, no more than the poorest class carries. */
export function bearingOf(job: Job): Bearing {
  const { soil, soilBearing } = job.site
  const poorest = Math.min(...SOIL_BEARING.rows.map((row) => row.psf))
  if (soil === 'unknown') {
    const used = psf(Math.min(soilBearing, poorest))
    return {
      psf: used,
      says: `Soil not known: ${used} psf, as for clay or silt (${SOIL_BEARING.source.clause})`,
      caution: 'The soil is not known: have it looked at before digging; clay, silt and fill can carry less.',
    }
  }
  const presumed = SOIL_BEARING.rows.find((row) => row.soil === soil)?.psf ?? poorest
  return {
    psf: soilBearing,
    says: `Soil bearing as stated: ${soilBearing} psf (${soil}: ${presumed} psf in ${SOIL_BEARING.source.clause})`,
    caution:
      soilBearing > presumed
        ? `${soilBearing} psf is more than ${soil} is presumed to carry; it needs a soil report.`
        : '',
  }
}
