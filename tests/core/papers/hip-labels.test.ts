import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { carriers } from '../../../core/frame/index.ts'
import { framingPlan } from '../../../core/papers/drawings/framing-plan.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

test('the framing plan names each half of a hip on the side of the joists that the marking sheet gives to it', () => {
  const made = design(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
  if (!made.ok) throw new Error('wrap-hip')
  const texts = framingPlan(made.value).primitives.flatMap((p) => (p.kind === 'text' ? [p] : []))
  const [hip] = made.value.frame.hips
  const place = (mark: string) => texts.find(({ text, layer }) => layer === 'marks' && text === mark)
  const side = ({ x, y } = { x: 0, y: 0 }) =>
    hip === undefined
      ? 0
      : Math.sign(
          (hip.outside.x - hip.inside.x) * (y - hip.inside.y) -
            (hip.outside.y - hip.inside.y) * (x - hip.inside.x),
        )
  for (const half of ['HP1', 'HP2']) {
    const hung = carriers(made.value, []).find(({ mark }) => mark === half)?.marks ?? []
    expect(hung.length).toBe(6)
    for (const { mark } of hung) expect(side(place(half)), `${half} ${mark}`).toBe(side(place(mark)))
  }
  expect(side(place('HP1'))).not.toBe(side(place('HP2')))
})
