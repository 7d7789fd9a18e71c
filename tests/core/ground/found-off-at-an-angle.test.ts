import { describe, expect, it } from 'vitest'
import { foundOff } from '../../../core/ground/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { inches } from '../../../core/units/index.ts'
import { engine } from '../../fixtures/engine.ts'
import { shaped } from './shaped.ts'

/** One corner cut off at 45 degrees: hole 4 under the mitre, holes 5 and 6 under the beam along the cut, which falls back. */
const CUT = "0, 0; 20', 0; 20', 8'; 14', 14'; 0, 14'"
const planned = shaped(CUT)

const options = (post: number, dx: number, dy: number) =>
  new Map(
    foundOff(planned, SAMPLE_BOOK, engine, { post, dx: inches(dx), dy: inches(dy), barred: false }).map(
      (one) => [one.kind, one],
    ),
  )

describe('a hole found off under a beam at an angle', () => {
  it('moves its post along that beam, not along the house', () => {
    // by hand: 2 in right and 2 in back are √8 = 2.828 in along the cut, 90.5 thirty-seconds
    const kept = options(5, 2, -2).get('keep')
    expect(kept).toMatchObject({
      cannot: '',
      edit: { 'ground.moved': `5: 2 27/32"`, 'ground.found': `5: keep, 2" right, 2" back` },
    })
    const [was, is] = [planned, shaped(CUT, kept?.edit?.['ground.moved'])].map(({ frame }) => frame.posts[4])
    // of its own grid the post stands within a thirty-second of where its hole is
    expect(Math.abs((is?.x ?? 0) - (was?.x ?? 0) - inches(2))).toBeLessThanOrEqual(1)
    expect(Math.abs((is?.y ?? 0) - (was?.y ?? 0) + inches(2))).toBeLessThanOrEqual(1)
    expect(kept?.checks.every(({ id }) => /front-b|footing-front/.test(id))).toBe(true)
  })

  it('is off the beam by what is square to it', () => {
    // by hand: 2 in right and 2 in out are 2.828 in square to the cut, and a 6x6 has 1-1/4 in beside two plies
    const off = options(5, 2, 2)
    expect(off.get('keep')?.cannot).toBe('The beam would stand out 1 19/32" past the side of the post.')
    expect(off.get('move along the beam')?.cannot).toBe('It is not off along the beam.')
    // half an inch each way is 0.707 in: it stays under the beam
    expect(options(5, 0.5, 0.5).get('keep')).toMatchObject({ cannot: '', edit: { 'ground.moved': '' } })
  })

  it('widens the hole across the beam where the post moves along it', () => {
    // by hand: 3 in right is 3 ÷ √2 = 2.121 in along the cut and as much across it; along the house 3 in of hole less
    const angled = options(5, 3, 0).get('move along the beam')
    expect(angled?.edit?.['ground.moved']).toBe(`5: 2 1/8"`)
    const straight = options(2, 3, 0).get('move along the beam')
    expect(straight?.edit?.['ground.moved']).toBe(`2: 3"`)
    expect(angled?.cost).toBeGreaterThan(straight?.cost ?? 0)
  })

  it('does not move a post that two beams meet over', () => {
    expect(options(4, 2, 0).get('keep')?.cannot).toBe(
      'Two beams meet over post 4, which cannot move along one of them.',
    )
    expect(options(4, 0, 4).get('shift the base')).toMatchObject({ cannot: '' })
  })

  it('leaves the posts under the mitre in peace where another is moved', () => {
    expect(shaped(CUT, '2: 2 in').frame.posts[1]?.x).toBe(inches(66))
  })
})
