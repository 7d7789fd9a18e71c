import { describe, expect, it } from 'vitest'
import {
  allHoles,
  footingSchedule,
  isBeforeOneWall,
  layoutStrings,
  tubePlan,
} from '../../../core/ground/index.ts'
import { footingLayout, makeSheets, type SHEET_IDS } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { engine } from '../../fixtures/engine.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

/** Five posts under the deck's beam; stairs of two flights over a landing of 4 ft, on four posts of its own. */
const source = paperSource({
  site: { frostDepth: '36 in', soilBearing: 1500 },
  size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
  frame: {
    joists: { size: '2x10', spacing: '16 in' },
    postSize: '6x6',
    beams: { front: { size: '2x10', plies: 2, setback: '20 in', posts: 5, inset: '12 in' } },
  },
  stairs: { kind: 'landing', side: 'front', align: 'near', width: '4 ft' },
  guard: { where: 'where needed' },
} as never)
const { estimate } = source
const nine = [1, 2, 3, 4, 5, 6, 7, 8, 9]
const words = (id: (typeof SHEET_IDS)[number]): string => JSON.stringify(makeSheets(source, [id]))

describe('holes under a landing', () => {
  it('are numbered on after those of the deck, each with the post that stands on it', () => {
    expect(allHoles(estimate).map(({ number }) => number)).toEqual(nine)
    expect(allHoles(estimate).flatMap(({ under, post }) => (under === 'stairs' ? [post?.mark] : []))).toEqual(
      ['LP1', 'LP2', 'LP3', 'LP4'],
    )
  })

  it('stand in the schedule with their concrete, all of which makes up what is poured beside the pad', () => {
    const rows = footingSchedule(estimate)
    expect(rows.map(({ number }) => number)).toEqual(nine)
    const [pad] = estimate.stairs.flatMap(({ pad: one }) => (one === null ? [] : [one]))
    const inPad = pad === undefined ? 0 : (pad.width * pad.depth * pad.thickness) / 384 ** 3
    const inHoles = rows.reduce((sum, { cubicFeet }) => sum + cubicFeet, 0)
    expect(inHoles + inPad).toBeCloseTo(estimate.takeoff.volumes.concrete, 9)
    // a landing's beams are not reckoned as continuous ones: its posts have no greatest reaction
    expect(rows.map(({ carries }) => carries?.worst ?? null).map((worst) => worst === null)).toEqual(
      nine.map((number) => number > 5),
    )
    expect(rows.every(({ carries }) => carries !== null && carries.load > 0)).toBe(true)
    for (const { topOfConcrete, groundLevel } of rows)
      expect(topOfConcrete - groundLevel).toBe(estimate.job.ground.projection)
  })

  it('each lie under the two strings that are named for it, between their batter boards', () => {
    const { strings, crossings } = layoutStrings(estimate)
    expect(isBeforeOneWall(estimate)).toBe(true)
    expect(crossings.map(({ number }) => number)).toEqual(nine)
    for (const hole of allHoles(estimate)) {
      const over = strings.filter(({ edge, holes }) => !edge && holes.includes(hole.number))
      expect(over).toHaveLength(2)
      for (const { x1, y1, x2, y2 } of over) {
        expect(Math.min(x1, x2) - 2).toBeLessThanOrEqual(hole.x)
        expect(Math.max(x1, x2) + 2).toBeGreaterThanOrEqual(hole.x)
        expect(Math.min(y1, y2) - 2).toBeLessThanOrEqual(hole.y)
        expect(Math.max(y1, y2) + 2).toBeGreaterThanOrEqual(hole.y)
      }
    }
  })

  it('are drawn, and get a tube each', () => {
    const drawn = new Set(footingLayout(estimate).primitives.map(({ id }) => id))
    for (const { id } of allHoles(estimate)) expect(drawn).toContain(id)
    const tubes = tubePlan(estimate, SAMPLE_BOOK, engine)
    if (tubes === null || !tubes.ok) throw new Error('no plan')
    const marks = tubes.value.plan.boards.flatMap(({ cuts }) => cuts.map(({ mark }) => mark))
    expect(marks.toSorted()).toEqual(nine.map((number) => `F${number}`))
  })

  it('are in every count that a crew, an inspector and a customer read', () => {
    expect(words('steps')).toContain('Lay out the 9 holes')
    expect(words('steps')).toContain('9 bases')
    expect(words('steps')).toContain('landing post LP4')
    expect(words('details')).toContain('9 of them')
    expect(words('inspections')).toContain('Hole 9, landing post LP4')
    expect(words('quote')).toContain('on 9 posts')
    expect(words('footings')).toContain('(hole 9)')
    expect(words('checks')).toContain('4 landing post bases')
  })
})

describe('a landing more than 30 in above the ground', () => {
  it('is guarded on its sides, which the check says', () => {
    const [check] = estimate.checks.filter(({ id }) => id === 'guard')
    expect(check?.status).toBe('passes')
    expect(check?.message).toContain('those of the stairs’ landing with them')
    expect(estimate.guard?.stretches.filter(({ landing }) => landing === 1)).toHaveLength(2)
  })

  it('needs none where it lies lower', () => {
    const low = paperSource({
      ...({ size: { width: '18 ft', depth: '12 ft', height: '4 ft' } } as object),
      stairs: { kind: 'landing', side: 'front' },
      guard: { where: 'where needed' },
    } as never)
    const [check] = low.estimate.checks.filter(({ id }) => id === 'guard')
    expect(check?.status).toBe('passes')
  })
})
