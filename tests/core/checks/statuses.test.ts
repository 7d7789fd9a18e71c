import { describe, expect, it } from 'vitest'
import { byCalculation } from '../../../core/checks/calculated.ts'
import { type Check, type CheckStatus, checkFrame, type Finding } from '../../../core/checks/index.ts'
import { judge } from '../../../core/checks/judge.ts'
import type { Confidence } from '../../../core/data/index.ts'
import type { Job } from '../../../core/job/index.ts'
import { inches, psf } from '../../../core/units/index.ts'
import { checkNamed, deckWith } from './worked-deck.ts'

const { job } = deckWith()
const engineered: Job = { ...job, code: { ...job.code, governs: 'calculated' } }

function finding(method: Finding['method'], ratio: number | null, confidence: Confidence): Finding {
  return {
    method,
    document: 'Invented',
    edition: '1',
    clause: 'T',
    demand: { value: ratio ?? 0, unit: 'count' },
    capacity: { value: 1, unit: 'count' },
    ratio,
    confidence,
    lookup: '',
    steps: ['given'],
  }
}

function judged(of: Job, row: readonly [number | null, Confidence] | null, calculated: number | null): Check {
  return judge(of, {
    id: 'x',
    title: 'X',
    subjects: [],
    fields: [],
    prescriptive: row === null ? null : finding('prescriptive', ...row),
    calculated: calculated === null ? null : finding('calculated', calculated, 'computed only'),
    good: (share) => `uses ${share}`,
    bad: 'too much',
    uncovered: 'No row covers it',
    remedy: 'Do less.',
    caution: '',
  })
}

describe('status of a check', () => {
  // the rule of DECISIONS, row by row: table ratio and confidence, calculated ratio, status by table, by calculation
  it.each<[readonly [number | null, Confidence] | null, number | null, CheckStatus, CheckStatus]>([
    [[0.9, 'verified'], 0.5, 'passes', 'passes'],
    [[0.91, 'verified'], 0.5, 'near', 'passes'],
    [[1, 'verified'], 0.5, 'near', 'passes'],
    [[1.001, 'verified'], 0.5, 'fails', 'passes'],
    [[0.5, 'verified'], 1.2, 'passes', 'fails'],
    [[0.5, 'from memory; reproduced'], 1.2, 'fails', 'fails'],
    [[0.5, 'from memory; reproduced'], 0.95, 'near', 'near'],
    [[1.2, 'from memory; reproduced'], 0.5, 'fails', 'passes'],
    [[0.5, 'from memory; reproduced'], null, 'passes', 'passes'],
    [[0.5, 'from memory'], 0.5, 'calculated only', 'calculated only'],
    [[1.2, 'from memory'], 0.5, 'fails', 'fails'],
    [[0.5, 'from memory'], null, 'outside scope', 'outside scope'],
    [[0.5, 'computed only'], 0.99, 'calculated only', 'calculated only'],
    [null, 0.5, 'calculated only', 'calculated only'],
    [null, 1.01, 'fails', 'fails'],
    [null, null, 'outside scope', 'outside scope'],
    [[null, 'verified'], null, 'passes', 'passes'],
  ])(
    'row %j and calculation %j: %s by table, %s by calculation',
    (row, calculated, byTable, byCalculated) => {
      expect(judged(job, row, calculated).status).toBe(byTable)
      expect(judged(engineered, row, calculated).status).toBe(byCalculated)
    },
  )

  it('says so where table and calculation part', () => {
    expect(judged(job, [0.5, 'verified'], 1.2).remedy).toContain(
      'The table allows it; the calculation does not (120 %)',
    )
    expect(judged(job, [1.2, 'verified'], 0.5).remedy).toContain('The calculation would allow it (50 %)')
    expect(judged(job, [0.5, 'verified'], 0.7).remedy).toBe('')
  })

  it('tells a person what to do', () => {
    expect(judged(job, [1.2, 'verified'], 1.2)).toMatchObject({ message: 'too much', remedy: 'Do less.' })
    expect(judged(job, null, null).remedy).toContain('licensed designer')
    expect(judged(job, null, 0.5)).toMatchObject({
      message: 'No row covers it; by calculation 50 % is used.',
    })
    expect(judged(job, null, 0.5).remedy).toContain('building official')
  })
})

describe('a calculation of several limits', () => {
  const limit = (name: string, demand: number, capacity: number) => ({
    name,
    clause: name,
    demand: { value: demand, unit: 'psi' as const },
    capacity: { value: capacity, unit: 'psi' as const },
    steps: [`${name} step`],
  })
  const source = { document: 'D', edition: '1', clause: 'T', confidence: 'verified' as const, note: '' }

  it('is as bad as the worst of them, and shows the steps of all', () => {
    const found = byCalculation([limit('a', 1, 4), limit('b', 3, 4), limit('c', 2, 4)], source)
    expect(found).toMatchObject({ ratio: 0.75, clause: 'b', confidence: 'computed only' })
    expect(found.steps).toEqual([
      'a step',
      'a: 1 psi of 4 psi, 25 %',
      'b step',
      'b: 3 psi of 4 psi, 75 %',
      'c step',
      'c: 2 psi of 4 psi, 50 %',
    ])
  })

  it('is past every limit where nothing is allowed, and is no better known than its values', () => {
    const found = byCalculation([limit('a', 1, 0)], { ...source, confidence: 'from memory' })
    expect(found.ratio).toBe(Number.MAX_VALUE)
    expect(found.confidence).toBe('from memory')
  })
})

describe('checks of other decks', () => {
  it('fails joists that span too far, and names what would do', () => {
    const check = checkNamed(deckWith({ size: { depth: '17 ft' } }).checks, 'joist-span')
    expect(check).toMatchObject({ status: 'fails', message: `Joists span 14'-9"; 2x10 at 16 in may not.` })
    expect(check.remedy).toBe('Use 2x12 at 16 in, 2x10 at 12 in or a beam nearer the house.')
  })

  it('fails a joist over the table by a tick, and passes it at the table', () => {
    // clear span = depth − 24 − 1 1/2 − 1 1/2
    expect(checkNamed(deckWith({ size: { depth: '195 in' } }).checks, 'joist-span').status).toBe('near')
    expect(checkNamed(deckWith({ size: { depth: '195 1/32 in' } }).checks, 'joist-span').status).toBe('fails')
  })

  it('fails a cantilever over a quarter of its span even where no row covers it', () => {
    const change = { site: { snowLoad: 60 }, frame: { beams: { front: { setback: '40 in' } } } }
    expect(checkNamed(deckWith(change).checks, 'joist-cantilever-front').status).toBe('fails')
  })

  it('does not pass a cantilever under 50 psf of snow, of which no row is known', () => {
    expect(checkNamed(deckWith({ site: { snowLoad: 50 } }).checks, 'joist-cantilever-front').status).toBe(
      'calculated only',
    )
  })

  it('does not pass a beam of another species, whose 2021 rows are computed only', () => {
    const { checks } = deckWith({ frame: { species: 'DFL' } })
    expect(checkNamed(checks, 'beam-span-front').status).toBe('calculated only')
    expect(checkNamed(checks, 'joist-span').status).toBe('passes')
  })

  it('does not pass Southern Pine joists under 60 psf, which were recalled and not reproduced', () => {
    const check = checkNamed(
      deckWith({ site: { snowLoad: 60 }, size: { depth: '12 ft' } }).checks,
      'joist-span',
    )
    expect(check.status).toBe('calculated only')
    expect(check.findings.map((one) => one.confidence)).toContain('from memory')
  })

  it('passes nothing by the span tables where the dead load is more than they include', () => {
    const { checks } = deckWith({ site: { deadLoad: 15 } })
    for (const id of ['joist-span', 'joist-cantilever-front', 'beam-span-front', 'post-height-front']) {
      expect(checkNamed(checks, id).status, id).toBe('calculated only')
    }
  })

  it('hangs nothing by the table on lag screws through 1 in of sheathing', () => {
    const check = checkNamed(
      deckWith({ site: { sheathing: 'up to 1 in', ledgerFastener: 'lag' } }).checks,
      'ledger-fasteners',
    )
    expect(check).toMatchObject({ status: 'outside scope' })
  })

  it('fails a 2x6 ledger', () => {
    const { checks } = deckWith({ frame: { joists: { size: '2x6' } }, size: { depth: '8 ft' } })
    expect(checkNamed(checks, 'ledger-size').status).toBe('fails')
  })

  it('leaves the sideways hold of a freestanding deck to a designer', () => {
    const { checks } = deckWith({ site: { attachment: 'freestanding' } })
    expect(checkNamed(checks, 'lateral-stability').status).toBe('outside scope')
    expect(checks.some((check) => check.id === 'ledger-fasteners')).toBe(false)
  })

  it('fails a base too small, and says how large it must be', () => {
    const check = checkNamed(deckWith({ ground: { base: '18 in' } }).checks, 'footing-size-footing-front-2')
    expect(check).toMatchObject({ status: 'fails', remedy: expect.stringContaining(`at least 1'-7" across`) })
  })

  it('shows the load that a continuous beam puts on an inner post, which goes beyond the table, and lets it decide by calculation', () => {
    const byTable = checkNamed(deckWith().checks, 'footing-size-footing-front-2')
    expect(byTable.status).toBe('near')
    expect(byTable.remedy).toContain(`1'-9" would be needed: make its base that wide`)
    const byCalculated = checkNamed(
      deckWith({ code: { governs: 'calculated' } }).checks,
      'footing-size-footing-front-2',
    )
    expect(byCalculated.status).toBe('fails')
  })

  it('takes unknown soil for the poorest, and says so', () => {
    const change = { site: { soil: 'unknown', soilBearing: 3000 } }
    const check = checkNamed(deckWith(change).checks, 'footing-size-footing-front-2')
    expect(check.findings[0]?.demand.value).toBe(inches(19))
    expect(check.remedy).toContain('soil is not known')
  })

  it('asks for a soil report where more is stated than the class is presumed to carry', () => {
    const change = { site: { soil: 'clay or silt', soilBearing: 2000 } }
    expect(checkNamed(deckWith(change).checks, 'footing-size-footing-front-2').remedy).toContain(
      'soil report',
    )
  })

  it('needs no guard at 30 in, and one above it', () => {
    const level = {
      site: { ground: { away: { fall: '0 in', over: '10 ft' } } },
      ground: { projection: '2 in' },
    }
    expect(checkNamed(deckWith({ ...level, size: { height: '30 in' } }).checks, 'guard').status).toBe(
      'passes',
    )
    const higher = deckWith({ ...level, size: { height: '30 1/32 in' } })
    expect(checkNamed(higher.checks, 'guard').status).toBe('outside scope')
    const included = deckWith({ ...level, size: { height: '36 in' }, scope: { guard: { included: true } } })
    expect(checkNamed(included.checks, 'guard')).toMatchObject({
      status: 'passes',
      remedy: expect.stringContaining('36 in high'),
    })
  })

  it('looks at the highest of several levels, not only at the first', () => {
    const outline = "0, 0; 20', 0; 20', 12'; 0, 12'"
    const upper = (height: string) =>
      deckWith({
        site: { ground: { away: { fall: '0 in', over: '10 ft' } } },
        ground: { projection: '2 in' },
        size: { height: '30 in' },
        shape: { outline, levels: `${height}: 4', 12'; 16', 12'; 16', 20'; 4', 20'` },
      })
    expect(checkNamed(upper('26 in').checks, 'guard').status).toBe('passes')
    expect(checkNamed(upper('44 in').checks, 'guard').status).toBe('outside scope')
  })

  it('warns of guards on 2x6 joists', () => {
    const small = deckWith({
      size: { depth: '9 ft' },
      frame: { joists: { size: '2x6' }, beams: { front: { setback: '12 in' } } },
    })
    expect(checkNamed(small.checks, 'guard').remedy).toContain('2x6 joists')
    expect(checkNamed(deckWith().checks, 'guard').remedy).not.toContain('2x6 joists')
  })

  it('measures the drop 36 in out from the edge', () => {
    // 6 in of fall over 13 ft 6 in goes on for 36 in beyond the rim: 42 + 6 + 6 × 36 / 162 in
    const guard = checkNamed(deckWith().checks, 'guard')
    expect(guard.message).toContain(`4'-1 3/8"`)
  })

  it('fails untreated Southern Pine and passes heartwood redwood', () => {
    expect(checkNamed(deckWith({ frame: { treatment: 'untreated' } }).checks, 'decay').status).toBe('fails')
    const redwood = deckWith({ frame: { treatment: 'untreated', species: 'RW' } })
    expect(checkNamed(redwood.checks, 'decay').status).toBe('passes')
  })

  it('weighs the deck, and fails a dead load stated too low', () => {
    const { job: worked, layout, frame } = deckWith()
    expect(checkNamed(checkFrame(worked, layout, frame), 'dead-load').status).toBe('passes')
    const light = { ...worked, site: { ...worked.site, deadLoad: psf(6) } }
    expect(checkNamed(checkFrame(light, layout, frame), 'dead-load')).toMatchObject({
      status: 'fails',
      remedy: expect.stringContaining('State a dead load of 7 psf'),
    })
    const heavy = deckWith({
      frame: { joists: { size: '2x12', spacing: '12 in' } },
      decking: { size: '2x6' },
    })
    expect(checkNamed(heavy.checks, 'dead-load')).toMatchObject({
      status: 'near',
      remedy: expect.stringContaining('11.1 psf'),
    })
  })

  it('fails joists at 24 in under 5/4 decking', () => {
    const check = checkNamed(deckWith({ frame: { joists: { spacing: '24 in' } } }).checks, 'decking-span')
    expect(check.status).toBe('fails')
    const thick = deckWith({ frame: { joists: { spacing: '24 in' } }, decking: { size: '2x6' } })
    expect(checkNamed(thick.checks, 'decking-span').status).toBe('near')
  })

  it('says the frost depth is not known to be right where no source is given', () => {
    expect(checkNamed(deckWith().checks, 'footing-depth').remedy).toContain('Ask the building department')
    const sourced = deckWith({ site: { frostSource: 'county table', soil: 'sand' } })
    expect(checkNamed(sourced.checks, 'footing-depth').remedy).toBe('')
  })

  it('reports each status somewhere in these decks', () => {
    const decks = [
      deckWith(),
      deckWith({ site: { snowLoad: 60 } }),
      deckWith({ frame: { treatment: 'untreated' } }),
    ]
    const seen = new Set(decks.flatMap((deck) => deck.checks.map((check) => check.status)))
    expect([...seen].sort()).toEqual(['calculated only', 'fails', 'near', 'outside scope', 'passes'])
  })
})

describe('uplift', () => {
  it('is not spoken of where nothing lifts', () => {
    expect(deckWith().checks.some((check) => /^(joist|beam)-uplift/.test(check.id))).toBe(false)
  })

  it('is found where joists reach too far beyond a beam, and loads neither that beam nor its footings', () => {
    const change = {
      size: { depth: '70 in', height: '72 in' },
      site: { attachment: 'freestanding' },
      frame: { beams: { front: { setback: '40 in' }, rear: { setback: '4 in' } } },
    }
    const { checks } = deckWith(change)
    expect(checkNamed(checks, 'joist-uplift')).toMatchObject({
      status: 'outside scope',
      message: expect.stringMatching(/^A joist lifts off a support by [\d,]+ lb/),
    })
    expect(checkNamed(checks, 'joist-cantilever-front').status).toBe('fails')
    expect(
      checkNamed(checks, 'footing-size-footing-rear-1').findings.every((one) => one.demand.value >= 0),
    ).toBe(true)
  })
})

describe('ledger fasteners', () => {
  it('are spaced by the table, with the calculation beside it', () => {
    const check = checkNamed(deckWith().checks, 'ledger-fasteners')
    expect(check).toMatchObject({
      status: 'passes',
      message: 'The ledger takes 1/2 in lag screws at 15 in on centre.',
    })
    // 377 lb every 16 in: 282.6 plf; 367.5 / 23.55 = 15.6 in
    expect(check.findings[1]).toMatchObject({ method: 'calculated', capacity: { value: inches(15) } })
  })

  it('say along which joists each spacing holds, where joists of several spans hang', () => {
    // 14 ft deep at the left, 8 ft at the right
    const { checks } = deckWith({
      shape: { outline: "0', 0'; 24', 0'; 24', 8'; 14', 8'; 14', 14'; 0', 14'" },
    })
    const said = checks.flatMap(({ title, message }) => (title === 'Ledger fasteners' ? [message] : []))
    expect(said.length).toBeGreaterThan(1)
    for (const message of said) expect(message).toMatch(/^The ledger, along joists [A-Z]+\d+(,| to) /)
  })

  it('are calculated only where the load has no page', () => {
    const check = checkNamed(deckWith({ site: { snowLoad: 90 } }).checks, 'ledger-fasteners')
    expect(check.status).toBe('calculated only')
    expect(check.message).toMatch(
      /^No table row covers 1\/2 in lag screws .* by calculation 7 in on centre\.$/,
    )
  })
})
