import { cents } from '../units/index.ts'
import { sampleGoods } from './sample-goods.ts'
import { sampleLumber } from './sample-lumber.ts'
import { sampleRates } from './sample-rates.ts'
import type { JointKit, PriceBook } from './types.ts'

/** Minutes are common practice, no source; prices are invented. */
const sampleJoints: readonly JointKit[] = [
  {
    kind: 'beam ply',
    sku: 'joint-beam-ply',
    label: 'Nails and plate at a beam joint',
    material: cents(250),
    minutes: 6,
  },
  {
    kind: 'rim',
    sku: 'joint-rim',
    label: 'Nails behind a rim joint',
    material: cents(62),
    minutes: 4,
  },
  {
    kind: 'ledger',
    sku: 'joint-ledger',
    label: 'A pair of fasteners on either side of a ledger joint',
    material: cents(856),
    minutes: 6,
  },
  {
    kind: 'decking',
    sku: 'joint-decking',
    label: 'Two more screws at a decking joint',
    material: cents(20),
    minutes: 2,
  },
]

/** The price book that is used until the user gives one: invented, so that the program can be tried. */
export const SAMPLE_BOOK: PriceBook = {
  version: 1,
  name: 'Sample prices (invented)',
  date: '2026-11-01',
  supplier: 'An invented yard',
  invented: true,
  suppliers: [],
  lumber: sampleLumber,
  goods: sampleGoods,
  rates: sampleRates,
  joints: sampleJoints,
  labourRate: cents(6000),
  crewSize: 2,
}
