import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { isModelled } from '../../../core/pricing/scope.ts'
import { inches } from '../../../core/units/index.ts'

const DECK = { version: 1, size: { width: '16 ft', depth: '12 ft', height: '44 in' } } as const
const FRONT = { kind: 'straight', side: 'front', width: '48 in', run: '10 1/2 in' }
const LEFT = { kind: 'straight', side: 'left', width: '36 in', stringers: 'closed', treads: '2x6' }
const NONE = { kind: 'none' }

function designOf(statement: object): Design {
  const made = design({ ...DECK, ...statement })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function faultsOf(statement: object) {
  const made = design({ ...DECK, ...statement })
  return made.ok ? [] : made.error
}

/** Everything that is counted, by name, in thousandths; bags are rounded up once for all and stand for themselves. */
function counts({ takeoff }: Design): ReadonlyMap<string, number> {
  const pieces = Map.groupBy(takeoff.pieces, ({ product, length }) => `${product.size} ${length}`)
  return new Map([
    ...[...takeoff.goods, ...takeoff.tasks]
      .filter(({ id }) => !id.includes('bag'))
      .map(({ id, thousandths }) => [id, thousandths] as const),
    ...[...pieces].map(([key, of]) => [key, 1000 * of.length] as const),
  ])
}

/** What one deck counts beyond another. */
function beyond(made: Design, bare: Design): ReadonlyMap<string, number> {
  const before = counts(bare)
  return new Map([...counts(made)].map(([key, count]) => [key, count - (before.get(key) ?? 0)]))
}

describe('two stairs of one deck', () => {
  const bare = designOf({})
  const front = designOf({ stairs: FRONT })
  const left = designOf({ stairs: LEFT })
  const both = designOf({ stairs: { ...FRONT, second: LEFT } })

  it('count what each of them counts alone', () => {
    const [a, b] = [beyond(front, bare), beyond(left, bare)]
    const sum = beyond(both, bare)
    for (const key of new Set([...a.keys(), ...b.keys(), ...sum.keys()])) {
      const expected = (a.get(key) ?? 0) + (b.get(key) ?? 0)
      // shares are added before they are rounded up to a thousandth
      expect(Math.abs((sum.get(key) ?? 0) - expected), key).toBeLessThanOrEqual(2)
    }
    const concrete = (made: Design) => made.takeoff.volumes.concrete - bare.takeoff.volumes.concrete
    expect(concrete(both)).toBeCloseTo(concrete(front) + concrete(left), 9)
  })

  it('are the ones that a person counts', () => {
    // 44 in ÷ 7-3/4 in: 6 risers, 5 treads in each; 46-1/2 in between the outer stringers of the first, cut, 16 in
    // apart at most: 4; 34-1/2 in of the second, closed, 24 in apart at most: 3
    expect(both.stairs.map(({ risers }) => risers)).toEqual([6, 6])
    const stringers = both.stairs.map(
      ({ members }) => members.filter(({ role }) => role === 'stringer').length,
    )
    expect(stringers).toEqual([4, 3])
    const good = (sku: string) => both.takeoff.goods.find((one) => one.sku === sku)?.thousandths
    expect(good('stringer-hanger')).toBe(7000)
    expect(good('stringer-foot-angle')).toBe(7000)
    // two brackets for each of 5 treads in each of 2 bays
    expect(good('tread-bracket')).toBe(20_000)
  })

  it('have ids and marks of their own, and causes at the fields that state them', () => {
    const members = both.stairs.flatMap((one) => one.members)
    expect(new Set(members.map(({ id }) => id)).size).toBe(members.length)
    expect(both.stairs.map(({ flights }) => flights.map(({ number }) => number))).toEqual([[1], [2]])
    const fields = new Set(both.stairs[1]?.members.flatMap(({ cause }) => cause.fields))
    expect(fields).toContain('stairs.second.width')
    expect([...fields].filter((path) => /^stairs\.(?!second)/.test(path))).toEqual([])
    expect(both.takeoff.tasks.find(({ rateId }) => rateId === 'tread')?.cause.fields).toEqual(
      expect.arrayContaining(['stairs.treads', 'stairs.second.treads']),
    )
  })

  it('are checked each by itself', () => {
    const narrow = designOf({ stairs: { ...FRONT, second: { ...LEFT, width: '30 in' } } })
    const widths = narrow.checks.filter(({ title }) => title.startsWith('Width of the stairs'))
    expect(widths.map(({ id, title, status, fields }) => [id, title, status, fields[0]])).toEqual([
      ['stair-width', 'Width of the stairs', 'passes', 'stairs.width'],
      ['stair-width-of-2', 'Width of the stairs (second stairs)', 'fails', 'stairs.second.width'],
    ])
    expect(new Set(narrow.checks.map(({ id }) => id)).size).toBe(narrow.checks.length)
  })

  it('count the same whichever of them is named first, and without a first', () => {
    const swapped = designOf({ stairs: { ...LEFT, second: FRONT } })
    expect(counts(swapped)).toEqual(new Map(counts(both)))
    const alone = designOf({ stairs: { ...NONE, third: LEFT } })
    expect(counts(alone)).toEqual(counts(left))
    expect(isModelled(alone.job, 'stairs')).toBe(true)
  })

  it('leave the guard open at both heads, with a gate for each', () => {
    const made = designOf({
      stairs: { ...FRONT, second: LEFT },
      guard: { where: 'all open edges', gate: true },
    })
    const stretches = (side: string) => made.guard?.stretches.filter(({ edge }) => edge.side === side) ?? []
    // 16 ft less 48 in, 12 ft less 36 in, each half on either side
    expect(stretches('front').map(({ from, to }) => to - from)).toEqual([inches(72), inches(72)])
    expect(stretches('left').map(({ from, to }) => to - from)).toEqual([inches(54), inches(54)])
    expect(made.guard?.gates).toBe(2)
    // both rise over 30 in: a guard on either side of each
    expect(made.guard?.stairs.map(({ flight }) => flight)).toEqual([1, 1, 2, 2])
  })

  it.each([
    [{ ...FRONT, second: { ...LEFT, edge: 9 } }, 'stairs.second.edge', 'there is no edge 9'],
    [{ ...FRONT, second: FRONT }, 'stairs.second.align', 'they stand where the first stairs do'],
    [
      { ...LEFT, align: 'far', second: FRONT, third: { ...FRONT, align: 'near', width: '7 ft' } },
      'stairs.third.align',
      'where the second stairs do',
    ],
  ])('%j is a fault at %s', (stairs, path, message) => {
    expect(faultsOf({ stairs })).toEqual([
      expect.objectContaining({ path, message: expect.stringContaining(message) }),
    ])
  })

  it('with landings stand on posts of their own', () => {
    const size = { ...DECK.size, height: '84 in' }
    const made = designOf({
      size,
      stairs: { kind: 'landing', second: { kind: 'landing left', side: 'left' } },
    })
    const members = [...made.frame.members, ...made.stairs.flatMap((one) => one.members)]
    expect(new Set(members.map(({ id }) => id)).size).toBe(members.length)
    expect(new Set(members.map(({ mark }) => mark)).size).toBe(members.length)
    expect(members.filter(({ role }) => role === 'landing post')).toHaveLength(8)
  })
})

describe('stairs that would stand in the deck', () => {
  it('are at fault where a wing of it is in their way', () => {
    // a U 24 ft wide with a notch 5 ft wide and 8 ft deep in front: 44 in are 51-1/4 in of run, into no wing; at
    // the notch's side they run 51-1/4 in into 60 in, and stairs with a landing beyond
    const shape = { outline: "0,0; 24',0; 24',16'; 15',16'; 15',8'; 10',8'; 10',16'; 0,16'" }
    const job = { size: { height: '44 in' }, shape }
    const at = (stairs: object) => {
      const made = design({ version: 1, ...job, stairs: { kind: 'straight', width: '3 ft', ...stairs } })
      return made.ok ? [] : made.error.map(({ path, message }) => [path, message])
    }
    expect(at({ edge: 5, foot: 'existing' })).toEqual([])
    expect(at({ edge: 6, foot: 'existing' })).toEqual([])
    expect(at({ edge: 6, foot: 'existing', run: '14 in' })).toEqual([
      ['stairs.align', 'they run into the deck itself'],
    ])
  })
})

describe('stairs to a lower level', () => {
  // 66 in down to 30 in: 36 in are 5 risers of 7.2 in, 4 treads of 10-1/4 in are 41 in of run, in 12 ft
  const levels = "30 in: 2', 12'; 14', 12'; 14', 24'; 2', 24'"
  const statement = (stairs: object, shape: object = { levels }) => ({
    size: { ...DECK.size, height: '66 in' },
    shape,
    stairs: { kind: 'straight', width: '4 ft', ...stairs },
    guard: { where: 'where needed' },
  })

  it('rise from it, not from the ground, and need no pad', () => {
    const made = designOf(statement({}))
    const [stairs] = made.stairs
    expect(stairs).toMatchObject({ risers: 5, totalRise: inches(36), pad: null, footings: [] })
    // 144 − 41 in are left of the level, of which 60 in are looked at, less the riser's board of 1 in that stands on it
    expect(stairs?.floor).toEqual({ level: 2, landing: inches(59) })
    const good = (sku: string) => made.takeoff.goods.find((one) => one.sku === sku)
    expect(good('gravel')).toBeUndefined()
    expect(made.checks.find(({ id }) => id === 'stair-floor')).toMatchObject({
      status: 'outside scope',
      message: expect.stringContaining('at each of 4 stringers'),
    })
    // the drop between the two levels is walked by them
    expect(made.checks.some(({ id }) => id === 'level-2')).toBe(false)
  })

  it('leave too little of a level for its landing, and say so', () => {
    const short = "30 in: 2', 12'; 14', 12'; 14', 18'; 2', 18'"
    const made = designOf(statement({}, { levels: short }))
    // 72 − 41 in, and 7/8 in more: the uppermost run is shorter by a riser's board of 1 in and a nosing of 7/8 in less the
    // deck's 1 in; less the board of the lowest riser, 1 in
    expect(made.stairs[0]?.floor?.landing).toBe(inches(31 + 0.875 - 1))
    expect(made.checks.find(({ id }) => id === 'stair-steps')?.status).toBe('fails')
  })

  it('run into a level that they do not end on, or only partly', () => {
    // 42 in deep: with 5 risers the foot stands on it, 41 in out, not with 14 in to a tread, 56 in out
    const narrow = "30 in: 2', 12'; 14', 12'; 14', 15' 6\"; 2', 15' 6\""
    const beams = { front: { setback: '6 in' }, rear: { setback: '6 in' } }
    const low = { base: 0, tube: '10 in' }
    expect(
      faultsOf({ ...statement({ run: '14 in' }, { levels: narrow }), frame: { beams }, ground: low }),
    ).toEqual([expect.objectContaining({ path: 'stairs.align', message: 'they run into level 2' })])
    expect(faultsOf(statement({ align: 'near' }))).toEqual([
      expect.objectContaining({ message: expect.stringContaining('partly on a lower level') }),
    ])
  })

  it('may leave the lower level in their turn, by the number of its edge', () => {
    const made = designOf(statement({ second: { kind: 'straight', edge: 203, width: '4 ft' } }))
    // 30 in to the ground: 4 risers
    expect(made.stairs[1]).toMatchObject({ risers: 4, totalRise: inches(30), floor: null })
    expect(made.stairs[1]?.edge.number).toBe(203)
    expect(faultsOf(statement({ edge: 199 }))).toEqual([
      expect.objectContaining({
        message: 'there is no edge 199: the outline has 4, and the further levels 201 to 204',
      }),
    ])
  })
})
