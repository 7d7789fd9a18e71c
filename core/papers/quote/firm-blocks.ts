import type { Block } from '../sheet-types.ts'
import type { Firm } from '../source.ts'

/** Who makes the paper, over everything else on it; nothing where the firm has no name. */
export function letterhead({ name, lines }: Firm): readonly Block[] {
  if (name === '') return []
  return [{ kind: 'text', tone: 'strong', foreign: true, text: [name, ...lines].join('\n') }]
}

/** Where the firm and its customer sign. */
export function bothSign({ name }: Firm): Block {
  return {
    kind: 'signatures',
    lines: [`For ${name === '' ? 'the firm' : name}, and date`, 'The customer, and date'],
  }
}
