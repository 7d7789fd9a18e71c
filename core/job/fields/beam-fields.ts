import { feet, inches } from '../../units/index.ts'
import type { FieldSpec } from '../types.ts'

const COMMON = 'common practice, no source'

/** Fields of one beam; the rear one exists only under a freestanding deck. */
export function beamFields(side: 'front' | 'rear'): readonly FieldSpec[] {
  const beam = side === 'front' ? 'Front beam' : 'Rear beam'
  const only = side === 'front' ? '' : ' Only a freestanding deck has a rear beam.'
  const at = `frame.beams.${side}`
  return [
    {
      path: `${at}.set`,
      label: `${beam}: set`,
      section: 'frame',
      kind: 'choice',
      choices: ['dropped', 'flush'],
      choiceLabels: ['dropped, under the joists', 'flush, the joists hang from it'],
      default: 'dropped',
      help: `A flush beam stands at the edge in the rim’s place, its top level with the joists’ tops: it needs less height, a hanger at every joist, and lets none reach past it. It has no setback.${only}`,
      basis: COMMON,
    },
    {
      path: `${at}.size`,
      label: `${beam}: size`,
      section: 'frame',
      kind: 'choice',
      choices: ['2x6', '2x8', '2x10', '2x12'],
      default: '2x12',
      help: `The beam under the joists is made of this size, several side by side.${only}`,
      basis: COMMON,
    },
    {
      path: `${at}.plies`,
      label: `${beam}: plies`,
      section: 'frame',
      kind: 'count',
      min: 1,
      max: 3,
      boundsReason: 'the code’s beam table goes from one ply to three (IRC 2021, Table R507.5)',
      default: 2,
      help: `How many boards are fastened side by side.${only}`,
      basis: COMMON,
    },
    {
      path: `${at}.setback`,
      label: `${beam}: setback`,
      section: 'frame',
      kind: 'length',
      min: inches(2),
      max: feet(10),
      boundsReason: 'the beam must lie under the deck, and joists reach only so far past it',
      default: '24 in',
      help: `From the outer face of the rim on its side to the beam’s centre line. The joists overhang by this much. Left out, it follows the depth: 24 in, and less on a shallow deck.${only}`,
      basis: `${COMMON}; on a shallow deck what a quarter of the span and IRC 2021, Table R507.6 let joists overhang`,
    },
    {
      path: `${at}.posts`,
      label: `${beam}: posts`,
      section: 'frame',
      kind: 'count',
      min: 2,
      max: 40,
      boundsReason: 'a beam stands on two posts at least',
      default: 4,
      help: `How many posts stand under the beam, at equal distances between the two end posts. Left out, it follows the beam: 4, fewer under a short beam, and so many under a long one that they stand 8 ft apart at most.${only}`,
      basis: 'a plain starting number, not sized: the checks say whether it is enough',
    },
    {
      path: `${at}.inset`,
      label: `${beam}: inset of end posts`,
      section: 'frame',
      kind: 'length',
      min: inches(2),
      max: feet(6),
      boundsReason: 'an end post stands wholly under the beam',
      default: '12 in',
      help: `From the end of the beam to the centre of its end post. Left out, it follows the beam: 12 in, and less under a short beam.${only}`,
      basis: `${COMMON}; under a short beam what IRC 2021, R507.5 lets it overhang: a quarter of the span beside it`,
    },
  ]
}
