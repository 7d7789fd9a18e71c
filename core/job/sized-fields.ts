import type { FieldPath } from './types.ts'

/** The fields that sizing may change; every other field is for a person to decide. */
export const SIZED_FIELDS: ReadonlySet<FieldPath> = new Set([
  'frame.joists.size',
  'frame.joists.spacing',
  ...(['front', 'rear'] as const).flatMap((side) =>
    ['size', 'plies', 'setback', 'posts'].map((what) => `frame.beams.${side}.${what}`),
  ),
  'frame.postSize',
  'ground.tube',
  'ground.base',
  'ground.baseThickness',
])
