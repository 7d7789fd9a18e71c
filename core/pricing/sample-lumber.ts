import type { LumberSize } from '../data/index.ts'
import { cents, feet } from '../units/index.ts'
import type { LumberProduct } from './types.ts'

/** Invented prices in cents by stock length in feet, as an invented yard might list treated Southern Pine. */
const lists: readonly {
  readonly size: LumberSize
  readonly code: string
  readonly useClass: string
  readonly prices: { readonly [feet: number]: number }
}[] = [
  {
    size: '2x4',
    code: '30204',
    useClass: 'UC4A ground contact',
    prices: { 8: 448, 10: 572, 12: 668, 14: 804, 16: 896, 18: 1128, 20: 1290 },
  },
  {
    size: '2x6',
    code: '30206',
    useClass: 'UC4A ground contact',
    prices: { 8: 598, 10: 762, 12: 896, 14: 1074, 16: 1198, 18: 1526, 20: 1740 },
  },
  {
    size: '2x8',
    code: '30208',
    useClass: 'UC4A ground contact',
    prices: { 8: 832, 10: 1064, 12: 1262, 14: 1498, 16: 1694, 18: 2078, 20: 2346 },
  },
  {
    size: '2x10',
    code: '30210',
    useClass: 'UC4A ground contact',
    prices: {
      6: 899,
      8: 1142,
      10: 1475,
      12: 1748,
      14: 2072,
      16: 2349,
      18: 2847,
      20: 3215,
      22: 4312,
      24: 4896,
    },
  },
  {
    size: '2x12',
    code: '30212',
    useClass: 'UC4A ground contact',
    prices: {
      6: 1190,
      8: 1499,
      10: 1931,
      12: 2288,
      14: 2705,
      16: 3074,
      18: 3749,
      20: 4219,
      22: 5640,
      24: 6390,
    },
  },
  {
    size: '4x4',
    code: '30404',
    useClass: 'UC4A ground contact',
    prices: { 8: 1248, 10: 1580, 12: 1912, 16: 2698 },
  },
  {
    size: '4x6',
    code: '30406',
    useClass: 'UC4A ground contact',
    prices: { 8: 1996, 10: 2540, 12: 3044, 16: 4188 },
  },
  {
    size: '6x6',
    code: '30606',
    useClass: 'UC4A ground contact',
    prices: { 8: 3975, 10: 4985, 12: 5960, 16: 8140 },
  },
  {
    size: '8x8',
    code: '30808',
    useClass: 'UC4A ground contact',
    prices: { 8: 8240, 10: 10390, 12: 12480, 16: 17100 },
  },
  {
    size: '5/4x6',
    code: '30546',
    useClass: 'UC3B above ground',
    prices: { 12: 1572, 16: 2096, 20: 2790 },
  },
  {
    size: '5/4x6 grooved',
    code: '30547',
    useClass: 'UC3B above ground',
    prices: { 12: 1704, 16: 2272, 20: 3012 },
  },
  {
    size: '1x8',
    code: '30108',
    useClass: 'UC3B above ground',
    prices: { 8: 1040, 10: 1310, 12: 1572, 16: 2112 },
  },
  {
    size: '1x10',
    code: '30110',
    useClass: 'UC3B above ground',
    prices: { 8: 1376, 10: 1730, 12: 2076, 16: 2784 },
  },
  {
    size: '1x12',
    code: '30112',
    useClass: 'UC3B above ground',
    prices: { 8: 1840, 10: 2310, 12: 2772, 16: 3712 },
  },
]

export const sampleLumber: readonly LumberProduct[] = lists.map((list) => ({
  product: { size: list.size, species: 'SP', grade: 'No.2', treatment: 'treated' },
  useClass: list.useClass,
  code: list.code,
  // a better grade of the same wood is as strong or stronger
  substitutes: [`${list.size} Southern Pine No.1, treated`],
  stock: Object.entries(list.prices).map(([length, price]) => ({
    length: feet(Number(length)),
    price: cents(price),
    code: `${list.code}-${length}`,
  })),
}))
