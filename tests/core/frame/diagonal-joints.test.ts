import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

it('boards at an angle are jointed over wood alone, and not past the end of a joist that they graze', () => {
  const made = design({
    shape: { outline: '0, 0; 148, 0; 148, 109; 78, 109; 78, 157; 0, 157' },
    size: { height: '60 in' },
    frame: {
      joists: { spacing: 16 },
      beams: { front: { setback: 14 }, rear: { setback: 14 } },
    },
    ground: { base: '14 in' },
    decking: { angle: 30, leans: 'left' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { members, runs } = made.value.frame
  const wood = members.filter(({ role }) => ['joist', 'end joist', 'rim', 'ledger'].includes(role))
  let seen = 0
  let grazing = 0
  for (const run of runs.filter(({ kind }) => kind === 'decking')) {
    grazing += run.refused.filter(({ why }) => why.includes('a joint would hang')).length
    const board = members.find(({ id }) => id === run.memberIds[0])
    const { plan = [], line } = board ?? {}
    if (line === undefined) throw new Error('a board at an angle has a line')
    const [from, to] = line
    const long = Math.hypot(to.x - from.x, to.y - from.y)
    const way = { x: (to.x - from.x) / long, y: (to.y - from.y) / long }
    // measured from the long point of its left end
    const start = Math.min(...plan.map(({ x, y }) => (x - from.x) * way.x + (y - from.y) * way.y))
    for (const { at } of run.points) {
      seen += 1
      const [x, y] = [from.x + way.x * (start + at), from.y + way.y * (start + at)]
      const under = wood.some(({ box }) => x > box.x0 && x < box.x1 && y > box.y0 && y < box.y1)
      expect(under, `${run.label} at ${at}`).toBe(true)
    }
  }
  expect(seen).toBeGreaterThan(3)
  expect(grazing).toBeGreaterThan(0)
})
