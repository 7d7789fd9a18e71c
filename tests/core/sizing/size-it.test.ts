import { describe, expect, it } from 'vitest'
import { design } from '../../../core/estimate.ts'
import { clearField, DEMO_JOB, type JobStatement, setField } from '../../../core/job/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { type SizingOptions, sizeIt } from '../../../core/sizing/index.ts'
import { inches } from '../../../core/units/index.ts'
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
  // slanting beams; a middle beam under joists from both sides; a flush one between two parts; a hip
  const decks = ['octagon-free.json', 'deep-lapped.json', 'flush-parts.json', 'wrap-hip.json']

  it.each(decks)(
    'finds sizes of %s that hold by calculation there, and says which checks rest on it',
    (file) => {
      const { statement, work, byCalculation, remaining } = sized(deckOf(file))
      expect(work.basis).toBe('calculation')
      expect(byCalculation.length).toBeGreaterThan(0)
      for (const { status, governing } of byCalculation) {
        expect(status).toBe('calculated only')
        expect(governing?.ratio).toBeLessThanOrEqual(1)
      }
      const told = [...byCalculation, ...remaining].map(({ id }) => id)
      expect(openChecks(statement).toSorted()).toEqual(told.toSorted())
    },
  )

  it.each([50, 70])('does so under %s psf of snow, for which tables have no page', (psf) => {
    const { statement, work, byCalculation } = sized(setField(DEMO_JOB, 'site.snowLoad', psf))
    expect(work.basis).toBe('calculation')
    const beside = byCalculation.map(({ id }) => id)
    expect(beside).toEqual(expect.arrayContaining(['beam-span-front', 'joist-cantilever-front']))
    // calculations only answer: a quarter of the span, the frost and the ledger's band still bind
    expect(openChecks(statement).filter((id) => !beside.includes(id) && id !== 'ledger-fasteners')).toEqual(
      [],
    )
    for (const { governing } of byCalculation) expect(governing?.ratio ?? 0).toBeLessThanOrEqual(1)
  })

  it('says of lumber that the price book has not that it sells none', () => {
    const result = sizeIt(setField(DEMO_JOB, 'frame.species', 'DFL'), SAMPLE_BOOK, engine)
    expect(result).toMatchObject({ ok: false, message: expect.stringContaining('sells nothing') })
  })

  it('knows of the demonstration to the cent what it costs and would cost', () => {
    expect(sized(DEMO_JOB)).toMatchObject({ beforeAtMost: false, atMost: false })
  })

  it('takes no calculation in place of a table that covers the size', () => {
    const { work, byCalculation } = sized(DEMO_JOB)
    expect(work.basis).toBe('tables')
    expect(byCalculation).toEqual([])
  })

  it('has the table decide every beam of such a deck that it covers', () => {
    const { statement, byCalculation } = sized(deckOf('deep-lapped.json'))
    const made = design(statement)
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const spans = made.value.checks.filter(({ id }) => id.startsWith('beam-span-'))
    expect(spans.map(({ id, status }) => [id, status])).toContainEqual([
      'beam-span-front',
      expect.stringMatching(/^(passes|near)$/),
    ])
    expect(byCalculation.map(({ id }) => id)).toEqual(['beam-span-middle'])
  })
})

describe('sizing where joists reach too far beyond a beam, whatever their size', () => {
  // a search of every way of the catalogue, without a limit, found none either
  it.each(['l-shape-free.json', 'tree.json'])('says at once of %s that no size passes', (file) => {
    const result = sizeIt(deckOf(file), SAMPLE_BOOK, engine, { limits: { effort: 20_000 } })
    expect(result).toMatchObject({ ok: false, message: 'No size of the catalogue passes every check.' })
    if (!result.ok) expect(result.checks.map(({ id }) => id).join(' ')).toContain('joist-cantilever-')
  })
})

describe('sizing of a deck whose bounds alone are all the work allowed', () => {
  it('still finds sizes that pass', () => {
    const { statement, work } = sized(deckOf('parts-differ.json'))
    expect(work.proven).toBe(false)
    // its guards are another matter
    expect(openChecks(statement)).toEqual(['guard'])
  })
})

describe('sizing of a wide deck whose courses are hard to lay apart', () => {
  it('keeps to the work allowed', () => {
    const beam = (size: string, posts: number) => ({ size, plies: 2, setback: '21 in', posts })
    const wide: JobStatement = {
      size: { width: '383 in', depth: '191 in', height: '52 in' },
      site: {
        attachment: 'freestanding',
        frostDepth: '24 in',
        soil: 'sand',
        soilBearing: 2000,
        snowLoad: 30,
      },
      frame: {
        joists: { size: '2x8', spacing: '16 in' },
        beams: { front: beam('2x10', 4), rear: beam('2x10', 4) },
      },
      decking: { size: '5/4x6' },
    }
    let solved = 0
    const counting: typeof engine = {
      name: engine.name,
      create: (rows, columns) => {
        const model = engine.create(rows, columns)
        const { solve } = model
        return Object.assign(model, {
          solve: () => {
            solved += 1
            return solve()
          },
        })
      },
      solveInteger: (program) => engine.solveInteger(program),
    }
    const result = sizeIt(wide, SAMPLE_BOOK, counting)
    expect(result.ok).toBe(true)
    // more than 10,000 once, and half a minute
    expect(solved).toBeLessThan(2_000)
  })
})

describe('sizing on posts that take fewer plies than others', () => {
  it('finds what passes on 4x4 posts, though some of its beams are too thick for them', () => {
    const deck: JobStatement = {
      size: { width: '160 in', depth: '190 in', height: '40 in' },
      site: { frostDepth: '0 in', snowLoad: 0 },
      frame: {
        joists: { size: '2x8', spacing: '12 in' },
        beams: { front: { size: '2x8', setback: '15 in', posts: 2, inset: '6 in' } },
      },
      ground: { base: '16 in' },
    }
    const { statement } = sized(deck, {
      narrow: (all) => ({
        ...all,
        joists: all.joists.filter(({ size, spacing }) => size === '2x10' && spacing === inches(12)),
        front: all.front.filter(
          ({ size, plies, posts }) =>
            (size === '2x12' && plies === 2 && posts === 3) ||
            (size === '2x10' && plies === 3 && posts === 2),
        ),
        postSizes: ['4x4'],
      }),
    })
    expect(statement).toMatchObject({
      frame: { postSize: '4x4', beams: { front: { size: '2x12', posts: 3 } } },
    })
  })
})

describe('sizing where the stated joists are deeper than the flush beam that they hang from', () => {
  it('finds shallower ones that pass', () => {
    const deck: JobStatement = {
      size: { width: '96 in', depth: '96 in', height: '40 in' },
      site: { frostDepth: '0 in', snowLoad: 0 },
      frame: {
        joists: { size: '2x12', spacing: '12 in' },
        beams: { front: { set: 'flush', size: '2x8', setback: '6 in', posts: 2, inset: '6 in' } },
      },
    }
    const { statement } = sized(deck, {
      narrow: (all) => ({
        ...all,
        joists: all.joists.filter(({ size, spacing }) => size === '2x8' && spacing === inches(12)),
        front: all.front.filter(({ size, plies, posts }) => size === '2x8' && plies === 2 && posts === 2),
        postSizes: ['4x4'],
      }),
    })
    expect(statement).toMatchObject({ frame: { joists: { size: '2x8' } } })
  })
})
