import type { CodeLimit } from '../code-limit.ts'
import type { Confidence, Source } from '../types.ts'

function guide(clause: string, confidence: Confidence, note: string): Source {
  return { document: 'AWC DCA 6', edition: '2012 IRC version', clause, confidence, note }
}

const SPANS =
  'Read on a page that quotes the Georgia deck amendments of 2015, figure 33; a trade article gives 6 ft for cut stringers.'

/** Single numbers of the AWC deck guide for stairs and guards; the IRC gives no spans of stringers. */
export const DCA_LIMITS = {
  cutStringerSpan: {
    id: 'dca-6/cut-stringer-span',
    says: 'greatest span of a cut 2x12 stringer, measured level between its supports',
    value: 72,
    unit: 'in',
    source: guide('Stairs, stringers', 'verified', SPANS),
  },
  closedStringerSpan: {
    id: 'dca-6/closed-stringer-span',
    says: 'greatest span of a solid 2x12 stringer, measured level between its supports',
    value: 159,
    unit: 'in',
    source: guide('Stairs, stringers', 'verified', SPANS),
  },
  throat: {
    id: 'dca-6/throat',
    says: 'least wood left under the notches of a cut stringer, square to its edge',
    value: 5,
    unit: 'in',
    source: guide('Stairs, stringers', 'from memory', 'Not read.'),
  },
  cutStringerSpacing: {
    id: 'dca-6/cut-stringer-spacing',
    says: 'greatest spacing of cut stringers, centre to centre',
    value: 18,
    unit: 'in',
    source: guide('Stairs, stringers', 'from memory', 'Not read.'),
  },
  closedStringerSpacing: {
    id: 'dca-6/closed-stringer-spacing',
    says: 'greatest spacing of solid stringers, centre to centre',
    value: 36,
    unit: 'in',
    source: guide('Stairs, stringers', 'from memory', 'Not read.'),
  },
  guardHoldDown: {
    id: 'dca-6/guard-hold-down',
    says: 'least capacity of the hold-down of a guard post',
    value: 1800,
    unit: 'lb',
    source: guide('Guard posts', 'verified', 'Read in Wisconsin SPS 320-325 Appendix B section 13.'),
  },
  guardPostSpacing: {
    id: 'dca-6/guard-post-spacing',
    says: 'greatest spacing of guard posts',
    value: 72,
    unit: 'in',
    source: guide('Guard posts', 'from memory', 'Not read.'),
  },
  guardPostSize: {
    id: 'dca-6/guard-post-size',
    says: 'least thickness of a guard post, 4x4 nominal, not notched',
    value: 3.5,
    unit: 'in',
    source: guide('Guard posts', 'verified', 'Read in Wisconsin SPS 320-325 Appendix B section 13.'),
  },
} as const satisfies { readonly [name: string]: CodeLimit }
