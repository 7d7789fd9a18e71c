import { cents, printMoney, TICKS_PER_FOOT } from '../units/index.ts'
import type { Aim } from './types.ts'

/** What a plan was chosen for, and what of it is proven, as sentences; '' for none. */
export function aimWords(aims: readonly Aim[]): string {
  if (aims.length === 0) return ''
  const wishes = aims.map(({ objective }) => objective).join(', then ')
  const parts = aims.map((aim, place) => `${place === 0 ? '' : 'of such plans '}${wordsOf(aim)}`)
  return `Chosen for ${wishes}: ${parts.join('; ')}.`
}

function wordsOf({ objective, value, bound }: Aim): string {
  const proven = value <= bound
  switch (objective) {
    case 'fewest joints':
      return proven
        ? `none has fewer joints than ${value}, proven`
        : `${value} joints, where ${bound} are not ruled out`
    case 'least waste':
      return proven
        ? `none takes less board than ${feet(value)}, proven`
        : `${feet(value)} of board, where ${feet(bound)} are not ruled out`
    case 'fewest lengths':
      return proven
        ? `none buys fewer lengths than ${value}, proven`
        : `${value} lengths, where ${bound} are not ruled out`
    case 'least cost':
      return proven
        ? 'none costs less, proven'
        : `up to ${printMoney(cents(value - bound))} might still be saved`
  }
}

function feet(length: number): string {
  return `${Math.round((length * 100) / TICKS_PER_FOOT) / 100} ft`
}
