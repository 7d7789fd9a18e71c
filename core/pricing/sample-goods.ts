import { unitPrice } from '../units/index.ts'
import type { GoodPrice } from './types.ts'

/** [sku, label, unit, the yard's code, price in cents per unit (1/100 cent allowed), units in a pack, pack] */
type Row = readonly [string, string, string, string, number, number, string]

/** Invented prices of an invented yard. */
const rows: readonly Row[] = [
  ['joist-hanger-2x6', 'Joist hanger for a 2x6, galvanised', 'each', '51006', 168, 1, ''],
  ['joist-hanger-2x8', 'Joist hanger for a 2x8, galvanised', 'each', '51008', 189, 1, ''],
  ['joist-hanger-2x10', 'Joist hanger for a 2x10, galvanised', 'each', '51010', 239, 1, ''],
  ['joist-hanger-2x12', 'Joist hanger for a 2x12, galvanised', 'each', '51012', 329, 1, ''],
  ['uplift-tie', 'Uplift tie, joist to beam, galvanised', 'each', '51100', 112, 1, ''],
  ['end-joist-angle', 'Angle, end joist to ledger, galvanised', 'each', '51120', 285, 1, ''],
  ['post-base-4x4', 'Post base with stand-off for a 4x4, galvanised', 'each', '51204', 1985, 1, ''],
  ['post-base-4x6', 'Post base with stand-off for a 4x6, galvanised', 'each', '51206', 2640, 1, ''],
  ['post-base-6x6', 'Post base with stand-off for a 6x6, galvanised', 'each', '51266', 3275, 1, ''],
  ['post-base-8x8', 'Post base with stand-off for an 8x8, galvanised', 'each', '51288', 6890, 1, ''],
  ['anchor-bolt-1/2', 'Anchor bolt 1/2 in with nut and washer, galvanised', 'each', '51300', 389, 1, ''],
  ['post-cap-4x4', 'Post cap or pair of plates for a 4x4, galvanised', 'each', '51404', 1425, 1, ''],
  ['post-cap-4x6', 'Post cap or pair of plates for a 4x6, galvanised', 'each', '51406', 1790, 1, ''],
  ['post-cap-6x6', 'Post cap or pair of plates for a 6x6, galvanised', 'each', '51466', 2395, 1, ''],
  ['post-cap-8x8', 'Post cap or pair of plates for an 8x8, galvanised', 'each', '51488', 5240, 1, ''],
  ['hold-down-1500lb', 'Hold-down, deck to floor framing, 1,500 lb', 'each', '51500', 2980, 1, ''],
  ['ledger-lag-1/2', 'Lag screw 1/2 in with washer, galvanised', 'each', '51600', 214, 1, ''],
  ['ledger-bolt-1/2', 'Bolt 1/2 in with nut and washers, galvanised', 'each', '51610', 346, 1, ''],
  ['nail-10d-1-1/2', 'Hanger nails 10d × 1-1/2 in, galvanised', 'lb', '52010', 579, 1, '1 lb box'],
  ['nail-10d-common', 'Nails 10d common, galvanised', 'lb', '52020', 438, 5, '5 lb box'],
  ['nail-10d-box', 'Nails 10d box (3 in × 0.128), galvanised', 'lb', '52030', 452, 5, '5 lb box'],
  ['nail-16d-common', 'Nails 16d common, galvanised', 'lb', '52040', 425, 5, '5 lb box'],
  ['screw-deck-2-1/2', 'Deck screws No.9 × 2-1/2 in, coated', 'each', '52125', 10.26, 350, 'box of 350'],
  ['screw-deck-3', 'Deck screws No.9 × 3 in, coated', 'each', '52130', 11.94, 350, 'box of 350'],
  ['form-tube-8in', 'Form tube 8 in, in 4 ft pieces', 'foot', '53008', 248, 4, '4 ft piece'],
  ['form-tube-10in', 'Form tube 10 in, in 4 ft pieces', 'foot', '53010', 312, 4, '4 ft piece'],
  ['form-tube-12in', 'Form tube 12 in, in 4 ft pieces', 'foot', '53012', 385, 4, '4 ft piece'],
  ['form-tube-14in', 'Form tube 14 in, in 4 ft pieces', 'foot', '53014', 512, 4, '4 ft piece'],
  ['form-tube-16in', 'Form tube 16 in, in 4 ft pieces', 'foot', '53016', 640, 4, '4 ft piece'],
  ['form-tube-18in', 'Form tube 18 in, in 4 ft pieces', 'foot', '53018', 795, 4, '4 ft piece'],
  ['form-tube-20in', 'Form tube 20 in, in 4 ft pieces', 'foot', '53020', 968, 4, '4 ft piece'],
  ['form-tube-24in', 'Form tube 24 in, in 4 ft pieces', 'foot', '53024', 1340, 4, '4 ft piece'],
  ['footing-base-form', 'Form for a footing base under a tube', 'each', '53100', 2150, 1, ''],
  ['concrete-bag-80lb', 'Concrete mix, 80 lb bag', 'bag', '53200', 642, 1, ''],
  ['ledger-flashing', 'Ledger flashing with drip edge', 'foot', '54010', 189, 10, '10 ft piece'],
  ['ledger-membrane', 'Membrane behind the ledger, self-adhering', 'foot', '54020', 118, 25, '25 ft roll'],
  [
    'end-cut-preservative',
    'Preservative for cut ends of treated wood',
    'quart',
    '54030',
    2280,
    1,
    'quart can',
  ],
]

export const sampleGoods: readonly GoodPrice[] = rows.map(([sku, label, unit, code, price, pack, note]) => ({
  sku,
  label,
  unit,
  code,
  price: unitPrice(Math.round(price * 100)),
  pack: pack * 1000,
  note,
}))
