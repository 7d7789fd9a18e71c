import type { LabourRate } from './types.ts'

/** [task, work, unit, clock hours of the crew per unit, workers in the crew, confidence] */
type Row = readonly [string, string, string, number, number, string]

/**
 * Productive hours of a professional crew, typical values: no travel, breaks, rain or supervision.
 * Collected 2026-11-25 from openly published pages and public-domain handbooks. "verified": the typical value was
 * read, or converted from a value read, in the page named in its comment; it says so, it need not be right.
 * Starting values, which a builder's own records should replace.
 */
const rows: readonly Row[] = [
  [
    'layout-corner',
    'Batter boards and string lines, set and squared',
    'corner',
    0.4,
    2,
    'common practice, no source',
  ],
  [
    'layout-footing',
    'Drop footing centre from the strings and mark it',
    'footing',
    0.1,
    2,
    'common practice, no source',
  ],
  [
    'layout-recheck',
    'Restring, recheck diagonals and post lines after the pour',
    'job',
    0.5,
    2,
    'common practice, no source',
  ],
  [
    'dig-narrow-soft',
    'Dig footing hole by hand, narrow (18 in or less), soft soil',
    'cubic foot',
    0.12,
    1,
    'common practice, no source',
  ],
  [
    'dig-narrow-medium',
    'Dig footing hole by hand, narrow (18 in or less), medium soil',
    'cubic foot',
    0.22,
    1,
    'common practice, no source',
  ],
  [
    'dig-narrow-hard',
    'Dig footing hole by hand, narrow (18 in or less), hard soil',
    'cubic foot',
    0.45,
    1,
    'common practice, no source',
  ],
  // Planning Planet wiki (British metric outputs), Excavate, pits to 2 m2, loose: 0.50 m3 an hour
  [
    'dig-wide-soft',
    'Dig footing pit by hand, wide (24 in or more), soft soil',
    'cubic foot',
    0.057,
    1,
    'verified',
  ],
  // Planning Planet wiki, Excavate, pits to 2 m2, firm: 0.43 m3 an hour
  [
    'dig-wide-medium',
    'Dig footing pit by hand, wide (24 in or more), medium soil',
    'cubic foot',
    0.066,
    1,
    'verified',
  ],
  // Planning Planet wiki, Excavate, pits to 2 m2, heavy clay
  [
    'dig-wide-hard',
    'Dig footing pit by hand, wide (24 in or more), hard soil',
    'cubic foot',
    0.101,
    1,
    'verified',
  ],
  [
    'auger-hand',
    'Bore hole with two-person power auger',
    'foot of depth',
    0.08,
    2,
    'common practice, no source',
  ],
  // a job report of 2015: 55 holes 36 in deep, 11 minutes each on average
  ['auger-machine', 'Bore hole with towed or tractor hydraulic auger', 'foot of depth', 0.06, 1, 'verified'],
  [
    'hole-clean',
    'Clean and level hole bottom, check depth and width',
    'each',
    0.1,
    1,
    'common practice, no source',
  ],
  [
    'form-tube',
    'Cut and set form tube, plumb, to level, braced',
    'each',
    0.4,
    1,
    'common practice, no source',
  ],
  ['form-base', 'Set flared or boxed footing form', 'each', 0.45, 1, 'common practice, no source'],
  // USDA Farmers' Bulletin, Plain Concrete for Farm Use (public domain), page on labour
  [
    'mix-hand',
    'Mix bagged concrete in a barrow by hand and place it',
    'cubic foot of concrete',
    0.18,
    1,
    'verified',
  ],
  ['readymix-barrow', 'Place ready-mix by barrow', 'cubic yard', 0.7, 2, 'common practice, no source'],
  ['readymix-chute', 'Place ready-mix from the chute', 'cubic yard', 0.3, 2, 'common practice, no source'],
  [
    'wetset-bolt',
    'Set anchor bolt or post base in wet concrete, to line',
    'each',
    0.12,
    1,
    'common practice, no source',
  ],
  // Planning Planet wiki, Hand fill and compact, loose from the side of the excavation
  ['backfill-tamp', 'Backfill beside form or post and tamp in layers', 'cubic foot', 0.033, 1, 'verified'],
  // Practical Methods of Sewage Disposal (1910s, public domain): 40 minutes to load a cubic yard of sand
  ['spoil-load', 'Shovel loose spoil into barrow, trailer or bin', 'cubic foot', 0.025, 1, 'verified'],
  // Planning Planet wiki, Excavate, hand transport of spoil
  ['spoil-wheel', 'Wheel spoil by barrow and tip', 'cubic foot', 0.0088, 1, 'verified'],
  [
    'layout-ledger',
    'Find ledger height and strike the line on the wall',
    'linear foot',
    0.02,
    2,
    'common practice, no source',
  ],
  [
    'ledger-prep',
    'Cut back siding, membrane and flashing at ledger',
    'linear foot',
    0.05,
    2,
    'common practice, no source',
  ],
  ['ledger-set', 'Cut, set and fasten ledger', 'linear foot', 0.06, 2, 'common practice, no source'],
  ['lateral-tie', 'Lateral load connector', 'each', 0.3, 1, 'common practice, no source'],
  ['post-base-wet', 'Fix post base to bolt already cast', 'each', 0.15, 1, 'common practice, no source'],
  [
    'post-set',
    'Set, plumb, brace, mark and cut post to height',
    'each',
    0.35,
    2,
    'common practice, no source',
  ],
  ['post-cap', 'Post cap or notch for beam', 'each', 0.3, 1, 'common practice, no source'],
  ['post-brace', 'Diagonal brace, cut and bolted', 'each', 0.3, 1, 'common practice, no source'],
  // US Army FM 5-426 Carpentry, table C-1: beams 30 man-hours per 1000 board feet; read second-hand
  ['beam-builtup', 'Built-up beam: cut, nail plies, raise, fix', 'board foot', 0.015, 2, 'verified'],
  // US Army FM 5-426 Carpentry, table C-1: joists and sills 25 man-hours per 1000 board feet; read second-hand
  ['joist', 'Joist: crown, cut, set, fasten', 'board foot', 0.0125, 2, 'verified'],
  ['hanger', 'Joist hanger, placed and nailed off', 'each', 0.06, 1, 'common practice, no source'],
  ['joist-tie', 'Hurricane tie or toenail set at beam', 'each', 0.04, 1, 'common practice, no source'],
  ['rim', 'Rim joist: cut, set, nail or tie', 'linear foot', 0.02, 2, 'common practice, no source'],
  ['blocking', 'Solid block: cut and nail', 'each', 0.1, 1, 'common practice, no source'],
  [
    'deck-perp-screw',
    '5/4x6 wood decking, perpendicular, face screws',
    'square foot',
    0.025,
    2,
    'common practice, no source',
  ],
  ['deck-trim', 'Snap and cut the overhang', 'linear foot', 0.008, 1, 'common practice, no source'],
  ['stair-header', 'Frame opening or drop header', 'each', 0.6, 2, 'common practice, no source'],
  ['stringer-first', 'Lay out and cut the pattern stringer', 'each', 0.8, 1, 'common practice, no source'],
  ['stringer-copy', 'Cut further stringer from pattern', 'each', 0.35, 1, 'common practice, no source'],
  ['stringer-set', 'Hang and fix stringer', 'each', 0.2, 2, 'common practice, no source'],
  ['tread', 'Tread, cut and fixed', 'each', 0.2, 1, 'common practice, no source'],
  ['riser', 'Riser board', 'each', 0.12, 1, 'common practice, no source'],
  [
    'stair-rail',
    'Graspable handrail with brackets or posts',
    'linear foot',
    0.2,
    1,
    'common practice, no source',
  ],
  [
    'pad',
    'Form and finish small landing pad for stairs',
    'square foot',
    0.14,
    1,
    'common practice, no source',
  ],
  [
    'guard-post',
    'Guard post: cut, fit, through bolt or tension tie, plumb',
    'each',
    0.35,
    2,
    'common practice, no source',
  ],
  [
    'guard-infill-wood',
    'Site-built rails and balusters between posts',
    'linear foot',
    0.18,
    2,
    'common practice, no source',
  ],
  [
    'guard-infill-kit',
    'Panel or kit rail between posts',
    'linear foot',
    0.1,
    2,
    'common practice, no source',
  ],
  ['guard-cap', 'Cap rail, mitred', 'linear foot', 0.05, 2, 'common practice, no source'],
  ['guard-gate', 'Gate: hang and latch', 'each', 0.75, 2, 'common practice, no source'],
  ['stage-lumber', 'Unload and stage lumber by use', '1000 board feet', 0.8, 2, 'common practice, no source'],
  [
    'day-setup',
    'Roll out and roll up tools, cords, ladders',
    'crew-day',
    0.4,
    2,
    'common practice, no source',
  ],
  ['clean-daily', 'Sweep and stack at day’s end', 'crew-day', 0.35, 2, 'common practice, no source'],
  ['inspection', 'Meet the inspector', 'each', 0.5, 1, 'common practice, no source'],
  [
    'clean-final',
    'Final clean, magnet sweep, punch list',
    '100 square feet of deck',
    0.35,
    2,
    'common practice, no source',
  ],
]

export const sampleRates: readonly LabourRate[] = rows.map(
  ([id, label, unit, hours, workers, confidence]) => ({
    id,
    label,
    unit,
    crewHours: Math.round(hours * 100_000),
    workers,
    confidence,
  }),
)
