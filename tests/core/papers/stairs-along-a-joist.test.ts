import { describe, expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const of = (side: 'front' | 'right') =>
  paperSource({
    version: 1,
    size: { width: '18 ft', depth: '12 ft', height: '5 ft' },
    stairs: { kind: 'straight', side, width: '4 ft' },
  })

describe('stairs that leave where the end joist runs along the edge', () => {
  // joists run away from the house: at the right side stands the last end joist, and no joist ends there
  const source = of('right')
  const last = source.estimate.frame.members
    .filter(({ role }) => role === 'end joist')
    .toSorted((a, b) => a.box.x1 - b.box.x1)
    .at(-1)
  const told = (id: 'stairs' | 'details' | 'steps' | 'inspections' | 'checks') =>
    JSON.stringify(makeSheets(source, [id]))

  test('hang on it by its mark, and on no rim', () => {
    for (const id of ['stairs', 'details', 'steps', 'inspections'] as const) {
      expect(told(id), id).toContain(`right under end joist ${last?.mark} and in its plane`)
      expect(told(id), id).toContain('its own two ends hold the head of the stairs')
      expect(told(id), id).not.toContain('right under the rim')
      expect(told(id), id).not.toContain('bolts through the rim')
    }
    expect(told('checks')).toContain(
      `No joist ends at the head of the stairs: end joist ${last?.mark} runs along the edge`,
    )
    expect(told('checks')).not.toContain('have an angle at every joist under the head of the stairs')
  })

  test('are drawn without a joist that ends at it', () => {
    const drawn = (one: typeof source) =>
      makeSheets(one, ['details']).flatMap(({ blocks }) =>
        blocks.flatMap((block) =>
          block.kind === 'drawing' && block.drawing.id === 'detail-stair-head-1'
            ? block.drawing.primitives
            : [],
        ),
      )
    expect(drawn(source).some(({ id }) => id === 'joist')).toBe(false)
    expect(drawn(of('front')).some(({ id }) => id === 'joist')).toBe(true)
  })
})
