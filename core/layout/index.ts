export { beamThickness, type PostFootprint, postFootprint } from './beam-on-post.ts'
export { groundAt } from './ground.ts'
export { layOut } from './lay-out.ts'
export type * from './types.ts'
