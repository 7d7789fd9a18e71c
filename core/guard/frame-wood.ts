import type { Member } from '../frame/index.ts'

/** Lumber of the frame under the decking: what neither a post nor a block may stand in. Joists under a border are cut at posts. */
export const FRAME_WOOD: ReadonlySet<Member['role']> = new Set([
  'joist',
  'end joist',
  'rim',
  'ledger',
  'header',
  'hip',
  'beam ply',
  'blocking',
  'landing beam',
  'landing joist',
])
