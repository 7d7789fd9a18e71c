import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'

// Stairs that leave the deck's side at the wall run along the house: its wall stands where their guard's posts would be.
// By hand: a deck 84 in high, stairs 48 in wide, whose guard's posts of 3-1/2 in stand outside of the stringers.

function designOf(stairs: object, more: object = {}): Design {
  const made = design({
    size: { height: '84 in' },
    frame: { joists: { size: '2x10', spacing: '16 in' }, postSize: '6x6' },
    ground: { base: '20 in' },
    guard: { where: 'all open edges' },
    ...more,
    stairs: { width: '4 ft', foot: 'pad', handrail: 'both sides', ...stairs },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

const sides = ({ guard }: Design) => guard?.stairs.map(({ flight, across }) => [flight, across / 32])
const told = ({ checks }: Design) => checks.find(({ id }) => id === 'guard')?.remedy ?? ''

describe('stairs along the house', () => {
  it('have a guard on the side away from the wall only, and nothing of it in the wall', () => {
    for (const side of ['left', 'right']) {
      const made = designOf({ kind: 'straight', side, align: 'near' })
      // the far side: 48 in and half a post
      expect(sides(made)).toEqual([[1, 49.75]])
      expect(made.guard?.members.filter(({ box }) => box.y0 < 0)).toEqual([])
      expect(made.guard?.house).toEqual([{ stairs: 1, flight: 1, closes: 'wall going on' }])
      expect(told(made)).toContain(
        'Along the house no guard stands beside flight 1: the wall closes that side, and a handrail there is fixed to the wall.',
      )
      expect(told(made)).toContain('where it ends sooner, that side needs a guard')
    }
  })

  it('have one on both sides as soon as a post has room between them and the wall', () => {
    expect(sides(designOf({ kind: 'straight', side: 'left', align: 'stated', place: '3 in' }))).toHaveLength(
      1,
    )
    const off = designOf({ kind: 'straight', side: 'left', align: 'stated', place: '3 1/2 in' })
    expect(sides(off)).toEqual([
      [1, -1.75],
      [1, 49.75],
    ])
    expect(off.guard?.house).toEqual([])
    expect(told(off)).not.toContain('Along the house')
  })

  it('have one on both sides of a deck that stands free of the house', () => {
    const made = designOf(
      { kind: 'straight', side: 'left', align: 'near' },
      { site: { attachment: 'freestanding' } },
    )
    expect(sides(made)).toHaveLength(2)
  })

  it('have none along the wall on a landing either, be it straight on or turned away from the house', () => {
    const straight = designOf({ kind: 'landing', side: 'right', align: 'near' })
    expect(sides(straight)).toEqual([
      [1, 49.75],
      [2, 49.75],
    ])
    expect(straight.guard?.house.map(({ flight }) => flight)).toEqual([1, 2, null])
    expect(
      straight.guard?.stretches.filter(({ landing, edge }) => landing !== null && edge.out.y < 0),
    ).toEqual([])
    const turned = designOf({ kind: 'landing left', side: 'left', align: 'near' })
    expect(sides(turned)?.map(([flight]) => flight)).toEqual([1, 2, 2])
    expect(turned.guard?.house.map(({ flight }) => flight)).toEqual([1, null])
    expect(turned.guard?.members.filter(({ box }) => box.y0 < 0)).toEqual([])
  })

  it('show that the wall ends where they turn past it', () => {
    const made = designOf({ kind: 'landing right', side: 'left', align: 'near' })
    expect(sides(made)).toHaveLength(4)
    expect(made.guard?.house).toEqual([])
  })
})
