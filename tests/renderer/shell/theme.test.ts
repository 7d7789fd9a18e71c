import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'

const css = readFileSync(resolve(import.meta.dirname, '../../../renderer/shell/theme.css'), 'utf8')

function colours(selector: string): ReadonlyMap<string, string> {
  const start = css.indexOf(`${selector} {`)
  const body = css.slice(start, css.indexOf('}', start))
  return new Map(
    [...body.matchAll(/--([\w-]+): (#[0-9a-f]{6})/g)].map((found) => [found[1] ?? '', found[2] ?? '']),
  )
}

/** Relative luminance of WCAG 2.2, "relative luminance". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

/** Contrast ratio of WCAG 2.2, "contrast ratio". */
function contrast(a: string, b: string): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (light + 0.05) / (dark + 0.05)
}

/** Text and what it stands on: 4.5 by success criterion 1.4.3. */
const TEXT = [
  ...['paper', 'panel', 'field', 'wash'].flatMap(
    (ground) =>
      [
        ['ink', ground],
        ['soft', ground],
        ['chalk', ground],
        ['fail', ground],
      ] as const,
  ),
  ['pass', 'paper'],
  ['pass', 'panel'],
  ['near', 'near-wash'],
  ['fail', 'fail-wash'],
  ['on-chalk', 'chalk'],
  ['chalk', 'chalk-wash'],
  ['ink', 'chalk-wash'],
  ['ink', 'wood'],
  ['paper', 'ink'],
] as const

/** Lines and marks that mean something: 3 by success criterion 1.4.11. */
const LINES = [
  ['field-edge', 'field'],
  ['field-edge', 'panel'],
  ['chalk', 'paper'],
  ['joint', 'paper'],
  ['joint', 'wood'],
  ['pass', 'track'],
  ['near', 'track'],
  ['fail', 'track'],
  ['ink', 'wood'],
] as const

describe.each([
  ['light', ':root'],
  ['dark', '[data-mantine-color-scheme="dark"]'],
])('the colours of the %s theme', (_, selector) => {
  const theme = colours(selector)
  const of = (name: string) => theme.get(name) ?? `no colour ${name}`

  test.each(TEXT)('%s is legible as text on %s', (text, ground) => {
    expect(contrast(of(text), of(ground))).toBeGreaterThanOrEqual(4.5)
  })

  test.each(LINES)('%s is seen on %s', (line, ground) => {
    expect(contrast(of(line), of(ground))).toBeGreaterThanOrEqual(3)
  })
})

test('the ratio is that of the standard at its ends', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6)
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2)
})
