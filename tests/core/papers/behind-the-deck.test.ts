import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { deckElevation } from '../../../core/papers/drawings/upright-views.ts'

function of(side: 'left' | 'right') {
  const made = design({
    version: 1,
    size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
    frame: { beams: { front: { setback: '20 in', posts: 5 } } },
    stairs: { kind: 'landing right', side, width: '4 ft' },
    guard: { where: 'where needed' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

/** Where each thing comes in the order in which a view is drawn: what comes later lies over what came before. */
function order(side: 'left' | 'right', from: 'front' | 'side') {
  const made = of(side)
  const { primitives } = deckElevation(made, from)
  const built = new Set(made.stairs.flatMap(({ members }) => members.map(({ id }) => id)))
  const onLanding = made.guard?.stretches.filter(({ landing }) => landing !== null) ?? []
  const posts = new Set(onLanding.flatMap(({ posts }) => posts.map(({ id }) => id)))
  const wood = new Set(made.frame.members.map(({ id }) => id))
  const places = (isMeant: (id: string) => boolean) =>
    primitives.flatMap((one, at) =>
      isMeant(one.id) && (one.kind === 'rect' || one.kind === 'polygon') ? [at] : [],
    )
  return {
    stairs: places((id) => built.has(id)),
    guard: places((id) => posts.has(id) || id.startsWith('stair-guard-')),
    deck: places((id) => wood.has(id)),
  }
}

describe('an elevation from the left', () => {
  test('has stairs that leave at the right behind the deck, with their landing and their guard', () => {
    const { stairs, guard, deck } = order('right', 'side')
    expect(Math.min(stairs.length, guard.length)).toBeGreaterThan(4)
    expect(Math.max(...stairs, ...guard)).toBeLessThan(Math.min(...deck))
  })

  test('has stairs that leave at the left before it', () => {
    const { stairs, guard, deck } = order('left', 'side')
    expect(Math.min(...stairs, ...guard)).toBeGreaterThan(Math.max(...deck))
  })
})
