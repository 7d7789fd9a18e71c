import type { Source } from '../types.ts'

/** Yield of one 80 lb bag of concrete mix, in 1/1000 cubic foot. */
export const BAG_YIELD_THOUSANDTHS = 600

export const bagYieldSource: Source = {
  document: 'published bag yields',
  edition: '',
  clause: '',
  confidence: 'verified',
  note: '0.15 cu ft per 20 lb, read on two public pages; real yield varies by a few percent.',
}
