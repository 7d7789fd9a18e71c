import { BALUSTER_STOCK, PANEL_STOCK } from '../guard/index.ts'
import type { Good } from './types.ts'

/** A kind of goods that a takeoff may ask for. The price book gives each its price, pack and yard code. */
export interface Sku {
  readonly sku: string
  readonly label: string
  readonly unit:
    | 'each'
    | 'lb'
    | 'foot'
    | 'bag'
    | 'quart'
    | 'gallon'
    | 'ton'
    | 'trip'
    | 'square foot'
    | 'cubic foot'
    | 'cubic yard'
    | 'missing cubic yard'
    | 'day'
  readonly group: Good['group']
  /** how it is usually sold, in its own unit; the price book decides */
  readonly soldBy: number
}

const joistSizes = ['2x6', '2x8', '2x10', '2x12'] as const
const postSizes = ['4x4', '4x6', '6x6', '8x8'] as const
/** Inside diameters of fibre form tubes, inches. */
export const tubeDiameters = [8, 10, 12, 14, 16, 18, 20, 24] as const

const hardware = (sku: string, label: string): Sku => ({
  sku,
  label,
  unit: 'each',
  group: 'hardware',
  soldBy: 1,
})
const hire = (sku: string, label: string): Sku => ({ sku, label, unit: 'day', group: 'hire', soldBy: 1 })
const nails = (sku: string, label: string): Sku => ({
  sku,
  label,
  unit: 'lb',
  group: 'fasteners',
  soldBy: 1,
})

/** Every sku that a takeoff can name. Steel is hot-dip galvanised or stainless, for treated wood. */
export const skus: readonly Sku[] = [
  ...joistSizes.map((size) => hardware(`joist-hanger-${size}`, `Joist hanger for a ${size}, galvanised`)),
  ...joistSizes.map((size) =>
    hardware(`joist-hanger-double-${size}`, `Joist hanger for two ${size}, galvanised`),
  ),
  ...joistSizes.map((size) =>
    hardware(`joist-hanger-skewed-${size}`, `Joist hanger for a ${size}, skewed, galvanised`),
  ),
  ...joistSizes.map((size) =>
    hardware(`joist-hanger-double-skewed-${size}`, `Joist hanger for two ${size}, skewed, galvanised`),
  ),
  hardware('uplift-tie', 'Uplift tie, joist to beam, galvanised'),
  hardware('end-joist-angle', 'Angle, end joist to ledger, galvanised'),
  hardware('hip-angle', 'Angle for 45°, hip to rim, galvanised'),
  hardware('joist-splice-plate', 'Plate over the butt of two joists, galvanised'),
  ...postSizes.map((size) =>
    hardware(`post-base-${size}`, `Post base with stand-off for a ${size}, galvanised`),
  ),
  hardware('anchor-bolt-1/2', 'Anchor bolt 1/2 in with nut and washer, galvanised'),
  ...postSizes.map((size) =>
    hardware(`post-cap-${size}`, `Post cap or pair of plates for a ${size}, galvanised`),
  ),
  hardware('hold-down-1500lb', 'Hold-down, deck to floor framing, 1,500 lb'),
  hardware('stringer-hanger', 'Sloped hanger for a 2x12 stringer, galvanised'),
  hardware('stringer-foot-angle', 'Angle at the foot of a stringer, galvanised'),
  hardware('tread-bracket', 'Bracket for a tread between stringers, galvanised'),
  { sku: 'handrail', label: 'Handrail, graspable', unit: 'foot', group: 'other material', soldBy: 8 },
  { sku: 'handrail-bracket', label: 'Bracket for a handrail', unit: 'each', group: 'hardware', soldBy: 1 },
  { sku: 'gravel', label: 'Gravel, compacted', unit: 'cubic foot', group: 'other material', soldBy: 0.5 },
  { sku: 'form-board', label: 'Form board for a slab', unit: 'foot', group: 'concrete', soldBy: 8 },
  hardware('guard-hold-down', 'Hold-down for a guard post, 1,800 lb'),
  hardware('guard-hold-down-strong', 'Hold-down for a guard post, stronger than 1,800 lb'),
  hardware('carriage-bolt-1/2', 'Carriage bolt 1/2 in with nut and washer, galvanised'),
  ...BALUSTER_STOCK.map(
    (inches): Sku => ({
      sku: `baluster-${inches}in`,
      label: `Baluster 2x2, ${inches} in, treated`,
      unit: 'each',
      group: 'other material',
      soldBy: 1,
    }),
  ),
  ...PANEL_STOCK.flatMap((feet) =>
    (['', 'stair-'] as const).map(
      (kind): Sku => ({
        sku: `guard-${kind}panel-${feet}ft`,
        label: `Guard panel${kind === '' ? '' : ' for stairs'}, ${feet} ft`,
        unit: 'each',
        group: 'other material',
        soldBy: 1,
      }),
    ),
  ),
  {
    sku: 'guard-gate',
    label: 'Gate for a guard, with hinges and latch',
    unit: 'each',
    group: 'other material',
    soldBy: 1,
  },
  {
    sku: 'joist-tape',
    label: 'Tape for joists, self-adhering',
    unit: 'foot',
    group: 'other material',
    soldBy: 50,
  },
  { sku: 'deck-stain', label: 'Deck stain', unit: 'gallon', group: 'other material', soldBy: 1 },
  {
    sku: 'ground-fabric',
    label: 'Fabric against weeds',
    unit: 'square foot',
    group: 'other material',
    soldBy: 150,
  },
  { sku: 'disposal-ton', label: 'Fee at the tip', unit: 'ton', group: 'fees', soldBy: 0.1 },
  { sku: 'delivery-trip', label: 'Delivery by the yard’s truck', unit: 'trip', group: 'fees', soldBy: 1 },
  hardware('ledger-lag-1/2', 'Lag screw 1/2 in with washer, galvanised'),
  hardware('ledger-bolt-1/2', 'Bolt 1/2 in with nut and washers, galvanised'),
  nails('nail-10d-1-1/2', 'Hanger nails 10d × 1-1/2 in, galvanised'),
  nails('nail-10d-common', 'Nails 10d common, galvanised'),
  nails('nail-10d-box', 'Nails 10d box (3 in × 0.128), galvanised'),
  nails('nail-16d-common', 'Nails 16d common, galvanised'),
  {
    sku: 'screw-deck-2-1/2',
    label: 'Deck screws No.9 × 2-1/2 in, coated',
    unit: 'each',
    group: 'fasteners',
    soldBy: 350,
  },
  {
    sku: 'screw-deck-3',
    label: 'Deck screws No.9 × 3 in, coated',
    unit: 'each',
    group: 'fasteners',
    soldBy: 350,
  },
  {
    sku: 'deck-clip',
    label: 'Hidden clip for grooved decking, with its screw',
    unit: 'each',
    group: 'fasteners',
    soldBy: 100,
  },
  {
    sku: 'skirt-lattice-4x8',
    label: 'Lattice panel, 4 ft by 8 ft, treated',
    unit: 'each',
    group: 'other material',
    soldBy: 1,
  },
  {
    sku: 'skirt-board',
    label: 'Skirting board 5/4x6, treated',
    unit: 'foot',
    group: 'other material',
    soldBy: 12,
  },
  {
    sku: 'skirt-framing',
    label: 'Framing for skirting, 2x4, treated',
    unit: 'foot',
    group: 'other material',
    soldBy: 8,
  },
  ...tubeDiameters.map(
    (inches): Sku => ({
      sku: `form-tube-${inches}in`,
      label: `Form tube ${inches} in, in 4 ft pieces`,
      unit: 'foot',
      group: 'concrete',
      soldBy: 4,
    }),
  ),
  {
    sku: 'footing-base-form',
    label: 'Form for a footing base under a tube',
    unit: 'each',
    group: 'concrete',
    soldBy: 1,
  },
  { sku: 'concrete-bag-80lb', label: 'Concrete mix, 80 lb bag', unit: 'bag', group: 'concrete', soldBy: 1 },
  {
    sku: 'concrete-ready-mix',
    label: 'Ready-mixed concrete',
    unit: 'cubic yard',
    group: 'concrete',
    soldBy: 0.25,
  },
  {
    sku: 'ready-mix-short-load',
    label: 'Short-load fee of ready-mix',
    unit: 'missing cubic yard',
    group: 'concrete',
    soldBy: 0.25,
  },
  hire('hire-auger-two-person', 'Hire of a two-person auger'),
  hire('hire-auger-machine', 'Hire of an auger on a machine'),
  hire('hire-breaker', 'Hire of a breaker'),
  {
    sku: 'ledger-flashing',
    label: 'Ledger flashing with drip edge',
    unit: 'foot',
    group: 'other material',
    soldBy: 10,
  },
  {
    sku: 'ledger-membrane',
    label: 'Membrane behind the ledger, self-adhering',
    unit: 'foot',
    group: 'other material',
    soldBy: 25,
  },
  {
    sku: 'end-cut-preservative',
    label: 'Preservative for cut ends of treated wood',
    unit: 'quart',
    group: 'other material',
    soldBy: 1,
  },
]
