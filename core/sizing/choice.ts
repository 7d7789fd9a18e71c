import { type BeamSpec, type FieldPath, isRectangle, type Job } from '../job/index.ts'
import { layOut } from '../layout/index.ts'
import type { Ticks } from '../units/index.ts'
import type { BeamChoice, Choice, Setbacks } from './types.ts'

/** What a job states now. */
export function choiceOf(job: Job): Choice {
  const { joists, beams, postSize } = job.frame
  const { tube, base, baseThickness } = job.ground
  const beam = ({ size, plies, posts }: BeamChoice): BeamChoice => ({ size, plies, posts })
  return {
    setbacks: setbacksIn(job),
    joist: { size: joists.size, spacing: joists.spacing },
    front: beam(beams.front),
    rear: hasRearBeam(job) ? beam(beams.rear) : null,
    postSize,
    footing: { tube, base, thickness: baseThickness },
  }
}

/** Where a job's beams lie now. */
export function setbacksIn({ frame: { beams } }: Job): Setbacks {
  return { front: beams.front.setback, rear: beams.rear.setback }
}

/** Whether a beam goes by the rear beam's fields: on a free deck, and where a part of a deck lies away from its wall. */
export function hasRearBeam(job: Job): boolean {
  if (job.site.attachment === 'freestanding') return true
  if (isRectangle(job)) return false
  const laid = layOut(job)
  return laid.ok && laid.value.zones.some(({ supports }) => supports.some(({ beam }) => beam === 'rear'))
}

/** The job sized so. */
export function withChoice(job: Job, { setbacks, joist, front, rear, postSize, footing }: Choice): Job {
  const { beams } = withSetbacks(job, setbacks).frame
  return {
    ...job,
    frame: {
      ...job.frame,
      joists: { ...job.frame.joists, ...joist },
      beams: { front: { ...beams.front, ...front }, rear: { ...beams.rear, ...rear } },
      postSize,
    },
    ground: {
      ...job.ground,
      tube: footing.tube,
      base: footing.base,
      baseThickness: footing.thickness,
    },
  }
}

/** The job with its beams placed so. */
export function withSetbacks(job: Job, { front, rear }: Setbacks): Job {
  const { beams } = job.frame
  // one that stays as it is stays unstated
  const placed = (spec: BeamSpec, setback: Ticks): BeamSpec =>
    spec.setback === setback ? spec : { ...spec, setback, setbackStated: true }
  return {
    ...job,
    frame: {
      ...job.frame,
      beams: { front: placed(beams.front, front), rear: placed(beams.rear, rear) },
    },
  }
}

/** The fields that a choice states, in the order of a job file. */
export function fieldsOf({ rear, footing }: Choice): readonly FieldPath[] {
  const beam = (side: 'front' | 'rear') =>
    (['size', 'plies', 'setback', 'posts'] as const).map((what) => `frame.beams.${side}.${what}`)
  return [
    'frame.joists.size',
    'frame.joists.spacing',
    ...beam('front'),
    ...(rear === null ? [] : beam('rear')),
    'frame.postSize',
    'ground.tube',
    'ground.base',
    // a tube without a base has no thickness to state
    ...(footing.base === 0 ? [] : ['ground.baseThickness']),
  ]
}
