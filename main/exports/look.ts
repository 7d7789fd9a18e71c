import type { Fill, Tone } from '../../core/papers/index.ts'

/** Ink, soft ink and hairline as in the window, on white; wood and tint light enough for black and white. */
export const TONES: { readonly [tone in Tone]: string } = { ink: '#18232b', soft: '#4f5a62', hair: '#b9b4a8' }

export const FILLS: { readonly [fill in Fill]: string | null } = {
  none: null,
  white: '#ffffff',
  wood: '#f1e6d2',
  tint: '#eceae4',
  ink: '#18232b',
}

/** The papers' own font, and those that write what it lacks. */
export const FACES = [
  'Atkinson Hyperlegible Next',
  'Noto Sans',
  'Noto Sans Hebrew',
  'Noto Sans Arabic',
  'UnifontEX',
] as const
