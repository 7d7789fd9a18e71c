import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

// A deck of 18 by 11 ft on a ledger, and a platform of 10 by 12 ft beside it, 16 in lower.
const DECK = "0, 0; 18', 0; 18', 11'; 0, 11'"
const LEVEL = "50 in: 18', 0; 28', 0; 28', 12'; 18', 12'"

function designOf(zones: string) {
  return design({ size: { height: '66 in' }, shape: { outline: DECK, levels: LEVEL, zones } })
}

/** Lengths in inches of the joists of both, those of the platform last. */
function joistsOf(zones: string) {
  const made = designOf(zones)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.frame.members
    .filter(({ role }) => role === 'joist')
    .map(({ length }) => length / 32)
    .toSorted((a, b) => a - b)
}

function told(zones: string) {
  const made = designOf(zones)
  return made.ok ? [] : made.error.map(({ path, message }) => `${path}: ${message}`)
}

describe('a stated part over a further level', () => {
  it('says how the joists of that level run, and nothing of the deck’s', () => {
    // 11 ft less ledger and rim; 12 ft less two rims, every 16 in over 10 ft: at 16 to 112 in
    expect(joistsOf('')).toEqual([...Array<number>(13).fill(129), ...Array<number>(7).fill(141)])
    // 10 ft less two rims, every 16 in over 12 ft: at 16 to 128 in
    expect(joistsOf("18', 0, 10', 12': along")).toEqual([
      ...Array<number>(8).fill(117),
      ...Array<number>(13).fill(129),
    ])
  })

  it('is told where it covers only some of it', () => {
    expect(told("18', 0, 10', 6': along")).toEqual([
      'shape.zones: part 1, 10\'-0" by 6\'-0", covers only some of level 2, whose joists all run one way',
    ])
  })

  it('is told where it lies beside all levels', () => {
    expect(told("30', 0, 10', 6': along")).toEqual([
      'shape.zones: part 1, 10\'-0" by 6\'-0", lies beside the deck',
    ])
    // touching it is not lying over it
    expect(told("0, 0, 4', 11': along; 28', 0, 4', 6': along")).toEqual([
      'shape.zones: part 2, 4\'-0" by 6\'-0", lies beside the deck',
    ])
  })
})

describe('edges named for walls and setbacks', () => {
  const shaped = (shape: object) => {
    const made = design({ size: { width: '14 ft', depth: '11 ft', height: '40 in' }, shape })
    return made.ok ? [] : made.error.map(({ path, message }) => `${path}: ${message}`)
  }

  it('are told where a rectangle has none of that number', () => {
    expect(shaped({ setbacks: '9: 2 ft' })).toEqual(['shape.setbacks: there is no edge 9: the outline has 4'])
    expect(shaped({ walls: '7' })).toEqual(['shape.walls: there is no edge 7: the outline has 4'])
  })

  it('may be those of a further level, for setbacks', () => {
    expect(shaped({ outline: DECK, levels: LEVEL, setbacks: '203: 18 in' })).toEqual([])
    expect(shaped({ outline: DECK, levels: LEVEL, setbacks: '205: 18 in' })).toEqual([
      'shape.setbacks: there is no edge 205: the outline has 4',
    ])
  })
})
