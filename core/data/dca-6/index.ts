export { DCA_FOOTING_ROUNDS } from './footing-rounds.ts'
export { DCA_JOIST_OVERHANGS } from './joist-overhangs.ts'
export { DCA_POST_HEIGHTS } from './post-heights.ts'
export { DCA_LIMITS } from './stairs-and-guards.ts'
