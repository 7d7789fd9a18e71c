import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

/** A deck whose side leans in by 1/100 of its length, so that a strip along it hardly reaches in. */
function leaning(zones: string) {
  const made = design({
    shape: { outline: '0, 0; 200, 0; 202, 200; 0, 200', joists: 'along', zones },
    size: { height: '60 in' },
    frame: { joists: { size: '2x8', spacing: 16 }, beams: { front: { setback: 6 }, rear: { setback: 6 } } },
    ground: { base: '16 in' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe('a part framed another way that hardly reaches into the deck', () => {
  it('takes nothing off the part beside it where it is too small to be one', () => {
    // by hand: from 201 in on, the deck is a triangle 1 in by 100 in, a third of a square foot
    const [own, ...others] = leaning('201, 0, 48, 200: along').layout.zones
    expect(others).toEqual([])
    expect(own?.outline.map(({ x, y }) => [x / 32, y / 32])).toEqual([
      [0, 0],
      [200, 0],
      [202, 200],
      [0, 200],
    ])
  })
})
