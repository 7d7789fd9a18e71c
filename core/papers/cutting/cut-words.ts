import type { Cut } from '../../cutting/index.ts'
import { printLength, ticks } from '../../units/index.ts'

/** A cut of a board in words: its mark, its length, and to what it is cut in place where it runs wild. */
export function cutWords(cut: Cut): string {
  const wild = inPlace(cut)
  return `${cut.mark} ${printLength(cut.length)}${wild === '' ? '' : ` (in place to ${wild})`}`
}

/** The finished length of a piece that runs wild; '' for others. */
export function inPlace({ length, wild }: Cut): string {
  return wild === undefined ? '' : printLength(ticks(length - wild))
}
