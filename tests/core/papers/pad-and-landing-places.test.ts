import { describe, expect, test } from 'vitest'
import {
  type Drawing,
  deckElevation,
  deckSection,
  footingLayout,
  framingPlan,
  makeSheets,
} from '../../../core/papers/index.ts'
import { printLength, ticks } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
const { estimate } = source
const IN = 32

const figures = ({ primitives }: Drawing, id: string) =>
  primitives.flatMap((p) => (p.kind === 'dimension' && p.id.startsWith(id) ? [p.text] : []))

describe('the pad at the foot of the stairs on the footing layout', () => {
  const drawing = footingLayout(estimate)
  const sheet = makeSheets(source, ['footings'])[0]
  const table = (sheet?.blocks ?? []).flatMap((block) =>
    block.kind === 'table' && block.table.id === 'layout-pads' ? [block.table] : [],
  )[0]

  test('is drawn with its four corners marked', () => {
    const lines = drawing.primitives.filter(({ id, kind }) => id === 'stair-pad' && kind === 'line')
    expect(lines).toHaveLength(4)
    const texts = drawing.primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : []))
    expect(texts).toEqual(expect.arrayContaining(['Q1', 'Q2', 'Q3', 'Q4']))
  })

  test('has in a table where each corner lies and two distances that prove it', () => {
    expect(table?.rows.map(({ corner }) => corner)).toEqual(['Q1', 'Q2', 'Q3', 'Q4'])
    // 4 ft by 4 ft, at the deck's left end, 12 ft deep
    const pad = estimate.stairs[0]?.pad
    const near = ((pad?.corner.y ?? 0) / IN).toFixed(3)
    for (const row of table?.rows ?? []) {
      const inch = (text = '') => {
        const [, feet = '0', rest = '0', , top = '0', under = '1'] =
          /^(?:(\d+)'-)?(\d+)?( ?(\d+)\/(\d+))?"$/.exec(text) ?? []
        return Number(feet) * 12 + Number(rest) + Number(top) / Number(under)
      }
      const [x, y] = [inch(row.along), inch(row.away)]
      expect([0, 48]).toContain(x)
      expect([Number(near), Number(near) + 48]).toContain(y)
      // by Pythagoras from the deck's two corners at the wall, 18 ft apart; sixteenths
      expect(Math.abs(inch(row.left) - Math.hypot(x, y))).toBeLessThanOrEqual(1 / 32 + 1e-9)
      expect(Math.abs(inch(row.right) - Math.hypot(216 - x, y))).toBeLessThanOrEqual(1 / 32 + 1e-9)
    }
  })

  test('has no drawing and no table where there is none', () => {
    const plain = paperSource({ ...smallJob() })
    expect(JSON.stringify(makeSheets(plain, ['footings']))).not.toContain('layout-pads')
  })
})

describe('a landing', () => {
  const { members, pad, footings } = estimate.stairs[0] ?? {}
  // by the boards of its frame and by its holes, as they stand in the model
  const beams = (members ?? []).filter(({ role }) => role === 'landing beam').map(({ box }) => box)
  const FRONT = 12 * 12 * IN
  const [near, far] = [Math.min(...beams.map(({ y0 }) => y0)), Math.max(...beams.map(({ y1 }) => y1))]
  const foot = pad?.corner.y ?? 0
  const told = (...stops: number[]) =>
    stops.slice(1).map((to, i) => printLength(ticks(Math.round(to - (stops[i] ?? 0)))))

  test('stands on plan at its distance from the deck, with its depth and the pad’s', () => {
    expect(figures(framingPlan(estimate), 'stair-out-')).toEqual(told(FRONT, near, far, foot, foot + 48 * IN))
    expect(figures(framingPlan(estimate), 'stair-along-')).toEqual([`4'-0"`])
  })

  test('stands so in the section and in the elevation from beside, and not in the one from the yard', () => {
    for (const drawing of [deckSection(estimate), deckElevation(estimate, 'side')])
      expect(figures(drawing, 'stair-out-').slice(0, 2)).toEqual(told(FRONT, near, far))
    expect(figures(deckElevation(estimate, 'front'), 'stair-out-')).toEqual([])
  })

  test('has on its own drawing where each of its posts stands, over its hole', () => {
    const [stairs] = makeSheets(source, ['stairs'])
    const plan = (stairs?.blocks ?? []).flatMap((block) =>
      block.kind === 'drawing' && block.drawing.id === 'landing-plan' ? [block.drawing] : [],
    )[0]
    if (plan === undefined) throw new Error('the landing is drawn')
    const holes = (pick: 'x' | 'y') =>
      [...new Set((footings ?? []).map((hole) => hole[pick]))].sort((a, b) => a - b)
    expect(figures(plan, 'landing-post-along-')).toEqual(told(0, ...holes('x'), 48 * IN))
    expect(figures(plan, 'landing-post-away-')).toEqual(told(near, ...holes('y'), far))
  })
})
