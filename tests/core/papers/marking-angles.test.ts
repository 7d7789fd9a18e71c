import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { carriers } from '../../../core/frame/index.ts'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const CLIPPED = { shape: { outline: "0, 0; 12', 0; 12', 8'; 10', 10'; 0, 10'" } }

const cautions = (shape: object) =>
  makeSheets(paperSource({ ...smallJob(), ...shape }), ['marking']).flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'caution' ? [block.text] : [])),
  )

test('what stands at an angle is named on the marking sheet, with how its figures run', () => {
  expect(cautions({})).toEqual([])
  const [caution] = cautions(CLIPPED)
  expect(caution).toMatch(/^rim R\d.*: at an angle\. Figures run along (its|their) own middle line/)
})

test('joists on a rim at 45 degrees are marked √2 times as far along it as they stand along the wall', () => {
  const { estimate } = paperSource({ ...smallJob(), ...CLIPPED })
  const slanting = carriers(estimate, estimate.plans).filter((carrier) => carrier.slanting === true)
  expect(slanting.length).toBeGreaterThan(0)
  for (const { id, marks, length } of slanting) {
    const { members, beams } = estimate.frame
    const { line } = [...members, ...beams].find((one) => one.id === id) ?? {}
    if (line === undefined) throw new Error('what stands at an angle has a line')
    const left = Math.min(line[0].x, line[1].x)
    const right = Math.max(line[0].x, line[1].x)
    expect(length).toBe(Math.round(Math.hypot(line[1].x - line[0].x, line[1].y - line[0].y)))
    expect(marks.length).toBeGreaterThan(0)
    for (const { memberId, at, wide } of marks) {
      const joist = estimate.frame.members.find((member) => member.id === memberId)
      if (joist === undefined) throw new Error('a mark is of a joist')
      const edge = line[0].x < line[1].x ? joist.box.x0 - left : right - joist.box.x1
      expect(Math.abs(at - Math.max(0, Math.round(edge * Math.SQRT2)))).toBeLessThanOrEqual(1)
      expect(Math.abs(wide - (joist.box.x1 - joist.box.x0) * Math.SQRT2)).toBeLessThanOrEqual(1)
    }
  }
})

test('each ply of a hip is marked from the end at the left of those who face its joists’ side', () => {
  const job = CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job
  const made = design(job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const hips = carriers(made.value, []).filter(({ label }) => label.startsWith('hip'))
  expect(hips.map(({ from }) => from)).toEqual(['left', 'left'])
  // joists in front of the hip are faced from the front: the outside corner, at 0, 288, is at the left; those behind it
  // from behind, where the inside corner, at 96, 192, is at the left
  expect(hips.map(({ hookedAt }) => hookedAt)).toEqual(['rims', 'house'])
  // the one beside the inside corner hangs there too: six on either half, as it has skewed hangers
  expect(hips.map(({ marks }) => marks.length)).toEqual([6, 6])
  for (const { id, marks } of hips)
    for (const { memberId, at } of marks) {
      const box = made.value.frame.members.find((member) => member.id === memberId)?.box
      if (box === undefined) throw new Error('a mark is of a joist')
      // the nearer edge of a joist from the corner, on the hip's middle line, which starts within 4 in of the corner
      const off = id === 'hip-1' ? box.x0 : box.y0 - 192 * 32
      expect(Math.abs(at - off * Math.SQRT2), memberId).toBeLessThanOrEqual(4 * 32)
    }
})
