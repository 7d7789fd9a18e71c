import { sectionOf } from '../data/index.ts'
import type { Job } from '../job/index.ts'
import { type Ticks, ticks } from '../units/index.ts'
import type { SupportLine } from './types.ts'

/** The lines that carry the joists, from the house outward. */
export function supportLines(job: Job): readonly SupportLine[] {
  const { width } = job.size
  const front = beamLine('front', frontBeamY(job), width)
  if (job.site.attachment === 'freestanding') {
    return [beamLine('rear', job.frame.beams.rear.setback, width), front]
  }
  const { thickness } = sectionOf(job.frame.joists.size)
  const ledger: SupportLine = {
    id: 'ledger',
    kind: 'ledger',
    beam: null,
    y: thickness,
    from: thickness,
    to: ticks(width - thickness),
  }
  return [ledger, front]
}

/** Centre line of the front beam: its setback is measured from the front rim's outer face. */
function frontBeamY(job: Job): Ticks {
  return ticks(job.size.depth - job.frame.beams.front.setback)
}

function beamLine(beam: 'front' | 'rear', y: Ticks, width: Ticks): SupportLine {
  return { id: `beam-${beam}`, kind: 'beam', beam, y, from: ticks(0), to: width }
}
