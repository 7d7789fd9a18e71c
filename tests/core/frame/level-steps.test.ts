import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { ofRole } from './joint-decks.ts'

// Two levels of our own, side by side; hand sums by IRC 2021 R311.7.5 (risers of 7-3/4 in at most, treads of 10 in at
// least). A level's top in inches: 48 above unless a test says otherwise, the lower one as each test states.

function levelsAt(lower: string, shape: Readonly<Record<string, string>> = {}, height = '48 in'): Design {
  const deck = CATALOGUE.find(({ file }) => file === 'stepped-levels.json')
  const made = design({
    ...deck?.job,
    size: { height },
    shape: {
      outline: "0, 0; 20', 0; 20', 10'; 0, 10'",
      levels: `${lower}: 4', 10'; 18', 10'; 18', 20'; 4', 20'`,
      ...shape,
    },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe('a box step between two levels, two risers apart', () => {
  const made = levelsAt('34 in')
  const { frame } = made
  const frames = ofRole(frame, 'step frame')
  const boards = ofRole(frame, 'step tread')

  it('halves the drop', () => {
    // 48 − 34 = 14 in: 2 risers of 7 in
    expect(frame.steps.map(({ risers, drop }) => [risers, drop / 32])).toEqual([[2, 14]])
    expect(new Set(boards.map(({ box }) => box.z1 / 32))).toEqual(new Set([41]))
  })

  it('stands against the higher level, in the middle of the stretch that the two share', () => {
    // from 4 ft to 18 ft: its middle is at 132 in, and 48 in wide it lies from 108 to 156
    expect(boards.map(({ box }) => [box.x0 / 32, box.x1 / 32])).toEqual([
      [108, 156],
      [108, 156],
    ])
    expect(Math.min(...frames.map(({ box }) => box.y0 / 32))).toBe(120)
  })

  it('is framed of boards ripped to the riser less its tread, with bearers 16 in apart at most', () => {
    // 7 − 1 = 6 in, of 2x8; (48 − 1.5) ÷ 16 = 2.9: 3 bays, 4 bearers of 11 1/8 − 3 in
    expect(frames.map(({ product, ripTo }) => `${product.size} ${(ripTo ?? 0) / 32}`)).toEqual(
      Array(6).fill('2x8 6'),
    )
    expect(frames.map(({ length }) => length / 32)).toEqual([48, 48, 8.125, 8.125, 8.125, 8.125])
  })

  it('has treads of two boards: 11 1/8 in, less the inch that the higher level’s decking overhangs', () => {
    expect(boards.map(({ length }) => length / 32)).toEqual([48, 48])
    expect(frame.steps[0]?.tread).toBe(10.125 * 32)
  })

  it('is checked, cut and counted with its screws', () => {
    const check = made.checks.find(({ id }) => id === 'level-step-1')
    expect(check?.status).toBe('passes')
    expect(check?.message).toContain('2 risers of 7 in')
    const pieces = made.takeoff.pieces.filter(({ memberId }) => memberId.startsWith('step-1'))
    expect(pieces).toHaveLength(8)
    const screws = made.takeoff.goods.find(({ sku }) => sku === 'screw-deck-2-1/2')
    // 2 boards × 4 bearers
    expect(screws?.cause.rule).toContain('8 crossings of step boards and bearers × 2')
    expect(made.takeoff.tasks.find(({ rateId }) => rateId === 'tread')?.thousandths).toBe(2000)
  })

  it('leaves the guard open, and asks for none at the lower level’s edge against the higher one', () => {
    const { guard } = made
    const along = guard?.stretches.filter(({ edge }) => edge.id === 'edge-3')
    expect(along?.map(({ from, to }) => [from / 32, to / 32])).toEqual([
      [0, 108],
      [156, 240],
    ])
    expect(guard?.edges.map(({ edge }) => edge.id)).not.toContain('edge-201')
  })

  it('can be left out', () => {
    const without = levelsAt('34 in', { steps: 'none' })
    expect(without.frame.steps).toEqual([])
    expect(without.checks.find(({ id }) => id === 'level-2')?.status).toBe('outside scope')
  })
})

describe('other drops', () => {
  it('need no box for one riser', () => {
    const made = levelsAt('41 in')
    expect(made.frame.steps).toEqual([])
    expect(made.checks.find(({ id }) => id === 'level-2')?.status).toBe('passes')
  })

  it('of three risers take two boxes, the lower one two boards deeper', () => {
    const { frame } = levelsAt('28 in')
    // 20 in: 3 risers of 6 2/3; treads at 34 2/3 and 41 1/3
    expect(frame.steps[0]?.risers).toBe(3)
    const fronts = ofRole(frame, 'step frame').filter(({ id }) => id.endsWith('-front'))
    // 4 boards and 3 gaps: 22 3/8; 2 and 1: 11 1/8
    expect(fronts.map(({ box }) => box.y1 / 32)).toEqual([120 + 22.375, 120 + 11.125])
    const tops = new Set(ofRole(frame, 'step tread').map(({ box }) => (box.z1 / 32).toFixed(2)))
    expect([...tops]).toEqual(['34.67', '41.33'])
  })

  it('of four risers are stairs, which are not framed between levels: the drop is told', () => {
    // 60 − 34 = 26 in, over 3 × 7 3/4
    const made = levelsAt('34 in', {}, '60 in')
    expect(made.frame.steps).toEqual([])
    const check = made.checks.find(({ id }) => id === 'level-2')
    expect(check?.status).toBe('outside scope')
    expect(check?.message).toContain('4 risers')
  })

  it('onto a level too narrow for a landing do not pass', () => {
    const made = design({
      size: { height: '48 in' },
      shape: {
        outline: "0, 0; 20', 0; 20', 10'; 0, 10'",
        levels: "34 in: 4', 10'; 18', 10'; 18', 13' 6\"; 4', 13' 6\"",
      },
      frame: { beams: { front: { setback: '6 in' }, rear: { setback: '6 in' } } },
      ground: { base: 0, tube: '10 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    expect(made.value.frame.steps[0]?.landing).toBe(false)
    expect(made.value.checks.find(({ id }) => id === 'level-step-1')?.status).toBe('outside scope')
  })
})

describe('of three levels', () => {
  /** What is told of the ways between them: a platform at the deck's right, and one before the deck. */
  const ways = (right: string, front: string) => {
    const outline = "0, 0; 18', 0; 18', 11'; 0, 11'"
    const levels = `${right}: 18', 0; 28', 0; 28', 12'; 18', 12' | ${front}: 6', 11'; 18', 11'; 18', 21'; 6', 21'`
    return levelsAt('', { outline, levels }, '66 in')
      .checks.filter(({ title }) => title === 'Step between levels')
      .map(({ status, message }) => `${status}: ${message.split(':')[0]}`)
  }

  it('each box step is checked, though a third level is nearer in height', () => {
    // 66 − 50 = 16 in along 11 ft: a box; 50 − 36 = 14 in along 1 ft, too short for one; 66 − 36 = 30 in: no box
    expect(ways('50 in', '36 in')).toEqual([
      'outside scope: Level 3 lies 1\'-2" from level 2',
      'passes: A box step leads from level 1 to level 2',
    ])
    // 66 − 52 = 14 in, a box to either of the others
    expect(ways('50 in', '52 in')).toEqual([
      'passes: One step of 2" leads to level 2.',
      'passes: One step of 2" leads to level 3.',
      'passes: A box step leads from level 1 to level 2',
      'passes: A box step leads from level 1 to level 3',
    ])
  })
})
