import type { Task } from './types.ts'

/** A kind of work that a takeoff may ask for. The price book gives each its hours per unit. */
export interface TaskRate {
  readonly rateId: string
  readonly label: string
  readonly unit: string
  readonly stage: Task['stage']
}

const rate = (stage: Task['stage'], rateId: string, unit: string, label: string): TaskRate => ({
  rateId,
  label,
  unit,
  stage,
})

/** Every production rate that a takeoff can name. */
export const taskRates: readonly TaskRate[] = [
  rate('ground', 'layout-corner', 'corner', 'Batter boards and strings, set and squared'),
  rate('ground', 'layout-footing', 'footing', 'Mark footing centres from the strings'),
  rate('ground', 'layout-recheck', 'job', 'Restring and recheck after the pour'),
  rate('ground', 'dig-narrow-soft', 'cubic foot', 'Dig holes by hand, soft soil'),
  rate('ground', 'dig-narrow-medium', 'cubic foot', 'Dig holes by hand, medium soil'),
  rate('ground', 'dig-narrow-hard', 'cubic foot', 'Dig holes by hand, hard soil'),
  rate('ground', 'dig-wide-soft', 'cubic foot', 'Dig wide holes by hand, soft soil'),
  rate('ground', 'dig-wide-medium', 'cubic foot', 'Dig wide holes by hand, medium soil'),
  rate('ground', 'dig-wide-hard', 'cubic foot', 'Dig wide holes by hand, hard soil'),
  rate('ground', 'auger-hand', 'foot of depth', 'Bore holes with a two-person auger'),
  rate('ground', 'auger-machine', 'foot of depth', 'Bore holes with an auger on a machine'),
  rate('ground', 'hole-clean', 'each', 'Clean and level the holes, check depth and width'),
  rate('ground', 'form-tube', 'each', 'Set form tubes, plumb and to level'),
  rate('ground', 'form-base', 'each', 'Set footing base forms'),
  rate('ground', 'mix-hand', 'cubic foot of concrete', 'Mix and place concrete by hand'),
  rate('ground', 'readymix-barrow', 'cubic yard', 'Place ready-mix by barrow'),
  rate('ground', 'readymix-chute', 'cubic yard', 'Place ready-mix from the chute'),
  rate('ground', 'wetset-bolt', 'each', 'Set anchor bolts in wet concrete, to line'),
  rate('ground', 'backfill-tamp', 'cubic foot', 'Backfill and tamp in layers'),
  rate('ground', 'spoil-load', 'cubic foot', 'Load loose spoil'),
  rate('ground', 'spoil-wheel', 'cubic foot', 'Wheel spoil away and tip'),
  rate('frame', 'layout-ledger', 'linear foot', 'Strike the ledger line on the wall'),
  rate('frame', 'ledger-prep', 'linear foot', 'Cut back siding, membrane and flashing at the ledger'),
  rate('frame', 'ledger-set', 'linear foot', 'Set and fasten the ledger'),
  rate('frame', 'lateral-tie', 'each', 'Fit hold-downs'),
  rate('frame', 'post-base-wet', 'each', 'Fix post bases to the cast bolts'),
  rate('frame', 'post-set', 'each', 'Set, plumb, brace and cut posts to height'),
  rate('frame', 'post-cap', 'each', 'Fix post caps'),
  rate('frame', 'post-brace', 'each', 'Cut and bolt knee braces'),
  rate('frame', 'beam-builtup', 'board foot', 'Build up, raise and fix the beam'),
  rate('frame', 'joist', 'board foot', 'Crown, cut, set and fasten joists'),
  rate('frame', 'hanger', 'each', 'Hangers and angles, placed and nailed off'),
  rate('frame', 'joist-tie', 'each', 'Uplift ties at the beam'),
  rate('frame', 'rim', 'linear foot', 'Set rim joists'),
  rate('frame', 'blocking', 'each', 'Cut and nail blocking'),
  rate('decking', 'deck-perp-screw', 'square foot', 'Lay decking, face screws'),
  rate('decking', 'deck-trim', 'linear foot', 'Snap and cut the overhang'),
  rate('frame', 'stair-header', 'each', 'Fix the header behind the stringers'),
  rate('stairs', 'stringer-first', 'each', 'Lay out and cut the pattern stringer'),
  rate('stairs', 'stringer-copy', 'each', 'Cut further stringers from the pattern'),
  rate('stairs', 'stringer-set', 'each', 'Hang and fix stringers'),
  rate('stairs', 'tread', 'each', 'Cut and fix treads'),
  rate('stairs', 'riser', 'each', 'Cut and fix riser boards'),
  rate('stairs', 'stair-rail', 'linear foot', 'Fix handrails with their brackets'),
  rate('ground', 'pad', 'square foot', 'Form and finish the pad of the stairs'),
  rate('guard', 'guard-post', 'each', 'Cut, fit and fix guard posts'),
  rate('guard', 'guard-infill-wood', 'linear foot', 'Rails and balusters between the posts'),
  rate('guard', 'guard-infill-kit', 'linear foot', 'Panels between the posts'),
  rate('guard', 'guard-cap', 'linear foot', 'Cap rail, mitred'),
  rate('guard', 'guard-gate', 'each', 'Hang and latch a gate'),
  rate('general', 'stage-lumber', '1000 board feet', 'Unload and stage lumber'),
  rate('general', 'day-setup', 'crew-day', 'Set up tools and put them away, each day'),
  rate('general', 'clean-daily', 'crew-day', 'Sweep and stack at each day’s end'),
  rate('general', 'inspection', 'each', 'Meet the inspector'),
  rate('general', 'clean-final', '100 square feet of deck', 'Final clean, magnet sweep, punch list'),
]
