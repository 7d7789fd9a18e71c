import type { Species } from '../data/index.ts'
import type { Beam } from '../frame/index.ts'
import { printLength, type Ticks, toInches } from '../units/index.ts'

/** Names of the species as the NDS Supplement writes them, in running text. */
export const SPECIES_NAME: { readonly [species in Species]: string } = {
  SP: 'Southern Pine',
  DFL: 'Douglas fir-larch',
  HF: 'hem-fir',
  SPF: 'spruce-pine-fir',
  RW: 'redwood',
  WC: 'western cedars',
}

export function feetInches(length: Ticks): string {
  return printLength(length)
}

/** Square feet to two places. */
export function squareFeetText(area: number): string {
  return `${area.toFixed(2)} sq ft`
}

export function spacingText(spacing: Ticks): string {
  return `${Number(toInches(spacing).toFixed(3))} in`
}

/** "a", "a or b", "a, b or c". */
export function either(options: readonly string[]): string {
  return listed(options, 'or')
}

/** "a", "a and b", "a, b and c". */
export function both(parts: readonly string[]): string {
  return listed(parts, 'and')
}

function listed(parts: readonly string[], word: string): string {
  if (parts.length < 2) return parts[0] ?? ''
  return `${parts.slice(0, -1).join(', ')} ${word} ${parts.at(-1)}`
}

/**
 * "front beam"; of further ones on its side, and of those that run away from the house, the mark tells which: "front beam
 * B3", "left beam B2".
 */
export function beamName({ key, lies, mark }: Pick<Beam, 'key' | 'lies' | 'mark'>): string {
  const isOnly = !key.includes('-') && lies !== 'left' && lies !== 'right'
  return isOnly ? `${lies} beam` : `${lies} beam ${mark}`
}
