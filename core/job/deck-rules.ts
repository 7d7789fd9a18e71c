import { inches, printLength } from '../units/index.ts'
import type { Fault, FieldPath, Job } from './types.ts'

/** A border board lies half on the end joist; further out it would hang: common practice, no source. */
const MOST_OVERHANG = inches(1.5)

/** Rules between the fields of the decking that are each valid alone. */
export const DECK_RULES: readonly {
  readonly reads: readonly FieldPath[]
  readonly find: (job: Job) => Omit<Fault, 'path'> | null
}[] = [
  { reads: ['decking.fastening', 'decking.edges'], find: clipsWithoutGroove },
  { reads: ['decking.edges', 'decking.size'], find: groovedSize },
  { reads: ['decking.border', 'decking.overhang'], find: hangingBorder },
]

function clipsWithoutGroove({ decking }: Job) {
  if (decking.fastening !== 'hidden clips' || decking.edges === 'grooved') return null
  return {
    message: 'hidden clips hold grooved boards, and these are solid',
    fix: 'choose grooved edges, or face screws',
  }
}

function groovedSize({ decking }: Job) {
  if (decking.edges !== 'grooved' || decking.size === '5/4x6') return null
  return {
    message: `grooved boards come as 5/4x6, not as ${decking.size}`,
    fix: 'choose 5/4x6 decking, or solid edges',
  }
}

function hangingBorder({ decking }: Job) {
  if (decking.border === 0 || decking.overhang <= MOST_OVERHANG) return null
  return {
    message: `a border that reaches ${printLength(decking.overhang)} past the frame has too little under its outer board`,
    fix: `let the decking overhang by ${printLength(MOST_OVERHANG)} or less, or leave the border out`,
  }
}
