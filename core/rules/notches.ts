import { IRC_LIMITS } from '../data/index.ts'
import type { Ticks } from '../units/index.ts'

/** A notch in a joist: how deep, how long, and where along the span. */
export interface Notch {
  readonly depth: Ticks
  readonly length: Ticks
  readonly at: 'end' | 'outer third' | 'middle third'
}

/**
 * What a notch breaks, in words; empty where it is allowed. IRC 2021 R502.8.1: a sixth of the depth, a third of it
 * long, none in the middle third of the span; a quarter of the depth at the ends.
 */
export function notchFaults(notch: Notch, depth: Ticks): readonly string[] {
  if (notch.at === 'middle third') return ['a notch in the middle third of the span is not allowed']
  const end = notch.at === 'end'
  const share = end ? IRC_LIMITS.endNotchShare.value : IRC_LIMITS.notchShare.value
  const faults: string[] = []
  if (notch.depth > depth * share) {
    faults.push(`the notch may be ${end ? 'a quarter' : 'a sixth'} of the joist's depth at most`)
  }
  if (!end && notch.length > depth * IRC_LIMITS.notchLengthShare.value) {
    faults.push("the notch may be a third of the joist's depth long at most")
  }
  return faults
}
