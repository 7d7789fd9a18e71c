import type { FieldSpec } from '../../core/job/index.ts'
import type { Place } from './session-types.ts'

const PLACE_OF: { readonly [section in FieldSpec['section']]: Place } = {
  job: 'site',
  size: 'site',
  shape: 'site',
  site: 'site',
  code: 'site',
  frame: 'frame',
  decking: 'frame',
  stairs: 'frame',
  guard: 'frame',
  work: 'price',
  ground: 'ground',
  cutting: 'boards',
  pricing: 'price',
  scope: 'price',
  costing: 'price',
}

/** The work place at which the fields of a section stand. */
export function placeOf(section: FieldSpec['section']): Place {
  return PLACE_OF[section]
}
