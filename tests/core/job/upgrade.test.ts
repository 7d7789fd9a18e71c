import { describe, expect, test } from 'vitest'
import { JOB_VERSION, readJob, UPGRADES, type Upgrade, upgradeStatement } from '../../../core/job/index.ts'

/** Upgrades of an invented history, to show the mechanism while the job has its first version. */
const exercised = new Set<number>()
const INVENTED: readonly Upgrade[] = [
  {
    from: 1,
    update: ({ wide, ...rest }) => {
      exercised.add(1)
      return wide === undefined ? rest : { ...rest, size: { width: wide } }
    },
  },
  {
    from: 2,
    update: (statement) => {
      exercised.add(2)
      return { ...statement, name: `${statement.name ?? 'unnamed'}, upgraded` }
    },
  },
]

describe('a statement is brought to the current version', () => {
  test('one step after another, from whatever version it has', () => {
    expect(upgradeStatement({ version: 1, wide: 240 }, INVENTED, 3)).toEqual({
      ok: true,
      value: { version: 3, size: { width: 240 }, name: 'unnamed, upgraded' },
    })
    expect(upgradeStatement({ version: 2, name: 'a' }, INVENTED, 3)).toEqual({
      ok: true,
      value: { version: 3, name: 'a, upgraded' },
    })
  })

  test('a current one, and one that names no version, is left as it is', () => {
    const current = { version: 3, name: 'a' }
    expect(upgradeStatement(current, INVENTED, 3)).toEqual({ ok: true, value: current })
    expect(upgradeStatement({ name: 'a' }, INVENTED, 3)).toEqual({ ok: true, value: { name: 'a' } })
  })

  test('the statement that was given is not touched', () => {
    const old = Object.freeze({ version: 1, wide: 240 })
    upgradeStatement(old, INVENTED, 3)
    expect(old).toEqual({ version: 1, wide: 240 })
  })

  test('a missing step is a bug', () => {
    expect(() => upgradeStatement({ version: 1 }, INVENTED.slice(1), 3)).toThrow(
      'no upgrade leads from version 1',
    )
  })
})

describe('a version that cannot be read is refused, and nothing else is said', () => {
  test('a newer one', () => {
    expect(readJob({ version: JOB_VERSION + 1, some: 'future field' })).toEqual({
      ok: false,
      error: [
        {
          path: 'version',
          message: `this job was written by a newer program (version ${JOB_VERSION + 1}; this one reads up to ${JOB_VERSION})`,
          fix: 'open it with the newer program; it was left as it is',
        },
      ],
    })
  })

  test.each([0, -1, 1.5, '1', null, Number.NaN, Number.POSITIVE_INFINITY])('%j', (version) => {
    expect(readJob({ version, size: 5 })).toEqual({
      ok: false,
      error: [
        {
          path: 'version',
          message: 'the version is not a whole number from 1',
          fix: `write "version": ${JOB_VERSION}, or leave it out`,
        },
      ],
    })
  })
})

test('there is one upgrade for each version before the current one, and each was exercised above', () => {
  expect(UPGRADES.map((upgrade) => upgrade.from)).toEqual(
    Array.from({ length: JOB_VERSION - 1 }, (_, i) => i + 1),
  )
  expect([...exercised].toSorted()).toEqual(INVENTED.map((upgrade) => upgrade.from))
  for (const { from } of UPGRADES) expect(exercised).toContain(from)
})
