import { describe, expect, it } from 'vitest'
import { design } from '../../../core/estimate.ts'
import { clearField, DEMO_JOB, type JobStatement, setField } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { type SizingOptions, sizeIt } from '../../../core/sizing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { engine } from '../../fixtures/engine.ts'

function sized(statement: JobStatement, options: SizingOptions = {}) {
  const result = sizeIt(statement, SAMPLE_BOOK, engine, options)
  if (!result.ok) throw new Error(result.message)
  return result.sized
}

function deckOf(file: string): JobStatement {
  const deck = CATALOGUE.find((one) => one.file === file)
  if (deck === undefined) throw new Error(`no ${file}`)
  return deck.job
}

function openChecks(statement: JobStatement): readonly string[] {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.checks
    .filter(({ status }) => status !== 'passes' && status !== 'near')
    .map(({ id }) => id)
}

describe('sizing with little work', () => {
  const small = { limits: { effort: 3_000 } }

  it('proposes sizes that pass for a job that does not, and claims no proof', () => {
    const failing = setField(DEMO_JOB, 'frame.joists.size', '2x6')
    expect(openChecks(failing)).toContain('joist-span')
    const { work, statement } = sized(failing, small)
    expect(work.proven).toBe(false)
    expect(openChecks(statement)).toEqual([])
  })
})

describe('sizing with a flush beam', () => {
  it('tries joists deeper than the shallowest beam', () => {
    const { statement, costAfter } = sized(deckOf('flush-front.json'))
    const made = design(statement)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    // 2x6 joists need far more of them: $4,358.17 with these, the cheapest that were once found
    expect(made.value.job.frame.joists.size).not.toBe('2x6')
    expect(costAfter).toBeLessThan(435_817)
  })
})

describe('sizing where 4x6 posts are the widest sold', () => {
  it('finds three plies on them', () => {
    const small: JobStatement = {
      size: { width: '104 in', depth: '147 in', height: '40 in' },
      site: { frostDepth: '0 in', snowLoad: 0, soil: 'clay or silt' },
      frame: { joists: { size: '2x8', spacing: '12 in' }, beams: { front: { setback: '9 in', posts: 2 } } },
    }
    const { statement } = sized(small, {
      narrow: (all) => ({
        ...all,
        front: all.front.filter(({ size, plies, posts }) => size === '2x10' && plies === 3 && posts === 2),
        postSizes: ['4x4', '4x6'],
      }),
    })
    expect(statement).toMatchObject({ frame: { postSize: '4x6', beams: { front: { plies: 3 } } } })
  })
})

describe('sizing where the ground snow load is not stated', () => {
  it('says that it is what stands in the way, where nothing passes', () => {
    const result = sizeIt(clearField(DEMO_JOB, 'site.snowLoad'), SAMPLE_BOOK, engine, {
      limits: { effort: 1_000 },
    })
    expect(result).toMatchObject({ ok: false })
    if (!result.ok) expect(result.message).toContain('The ground snow load is not stated')
  })
})

describe('sizing where no table covers a beam, whatever its size', () => {
  it.each(['octagon-free.json', 'deep-lapped.json'])('says at once of %s that no size passes', (file) => {
    const result = sizeIt(deckOf(file), SAMPLE_BOOK, engine)
    expect(result).toMatchObject({ ok: false, message: 'No size of the catalogue passes every check.' })
    if (result.ok) return
    expect(result.checks.map(({ status }) => status)).toContain('calculated only')
  })
})
