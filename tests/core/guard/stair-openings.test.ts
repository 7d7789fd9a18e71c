import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkGuardBuilt } from '../../../core/checks/guard-build.ts'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

type Member = NonNullable<Design['guard']>['members'][number]
const BALL = 4

/** From face to face of two pieces square to the axes, inches, as one measures on the plan. */
function apart({ box: a }: Member, { box: b }: Member): number {
  const gap = (a0: number, a1: number, b0: number, b1: number) => Math.max(0, a0 - b1, b0 - a1)
  return Math.hypot(gap(a.x0, a.x1, b.x0, b.x1), gap(a.y0, a.y1, b.y0, b.y1)) / 32
}

/** Every post beside stairs with what stands by it, reckoned from the pieces alone: openings through which a ball passes. */
function passed({ guard, stairs }: Design): readonly string[] {
  if (guard === null) return []
  const upright = guard.members.filter(
    ({ role, id }) => role === 'guard post' || id.startsWith('guard-filler-'),
  )
  return guard.stairs.flatMap((side) => {
    const flight = stairs.flatMap(({ flights }) => flights).find(({ number }) => number === side.flight)
    const level = flight?.topLevel ?? 0
    const own = upright.find(({ id }) => id === side.posts[0]?.id)
    const beside = guard.stretches.filter(({ edge }) => Math.abs(edge.top - level) < 8)
    const ids = new Set(beside.flatMap(({ posts }) => posts.map(({ id }) => id)))
    // a side that begins at a post of the deck, or of the flight above, has a bay before its first own one
    const begins = (side.bays[0]?.from ?? 0) > (side.posts[0]?.at ?? 0)
    if (own === undefined || !begins || ids.size === 0) return []
    const near = upright
      .filter(({ id, cause }) => ids.has(id) || cause.ids.some((one) => ids.has(one)))
      .map((one) => apart(own, one))
    const clear = Math.min(...near)
    return clear >= BALL && clear < 36 ? [`${own.mark}: ${clear}`] : []
  })
}

function designOf(job: object): Design {
  const made = design(job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe('between the guard of a landing and that of the stairs', () => {
  const deck = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')
  const made = designOf(deck?.job ?? {})

  it('an upright closes what a beam of three boards leaves open, by hand', () => {
    // a landing 36 in deep, a beam of 4-1/2 in at its foot: the last post ends at 31-1/2; the post beside the stairs begins at
    // 36 and 1-1/2 in further out: √(4.5² + 1.5²) = 4.74 in. One 2x4 flat on its face: √(3² + 1.5²) = 3.35 in.
    const fillers = made.guard?.members.filter(({ id }) => id.startsWith('guard-filler-')) ?? []
    expect(fillers.map(({ mark }) => mark)).toEqual(['GF14-1', 'GF12-1'])
    // 36 in high, a cap of 1-1/2 in, 3-1/2 in over the boards: 31 in
    for (const { length } of fillers) expect(length / 32).toBe(31)
    const last = made.guard?.openings.filter(({ level }) =>
      ['guard-post-12', 'guard-post-14'].includes(level),
    )
    for (const { clear } of last ?? []) expect(clear / 32).toBeCloseTo(Math.hypot(3, 1.5), 9)
    expect(last).toHaveLength(2)
  })

  it('the check tells it, and the uprights are pieces that are cut', () => {
    const check = made.checks.find(({ id }) => id === 'guard-make')
    expect(check?.message).toContain('3 3/8" at most from a post of the stairs')
    expect(made.takeoff.pieces.filter(({ memberId }) => memberId.startsWith('guard-filler-'))).toHaveLength(2)
  })
})

describe('an opening of 4 3/4 in that nothing closes', () => {
  it('fails, and is named by its two posts', () => {
    const { job, guard } = designOf(
      CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {},
    )
    if (guard === null) throw new Error('a guard was asked for')
    const openings = guard.openings.map((one) =>
      one.level === 'guard-post-14' ? { ...one, clear: 4.75 * 32 } : one,
    )
    const check = checkGuardBuilt(job, { ...guard, openings }, []).find(({ id }) => id === 'guard-make')
    expect(check?.status).toBe('fails')
    expect(check?.message).toBe('the opening between GP14 and SG3-1 is not at most 4 in.')
    expect(check?.remedy).toContain('Close the opening')
  })
})

describe('no 4 in ball passes between posts where stairs begin', () => {
  it.each(CATALOGUE)('on $file', ({ job }) => {
    expect(passed(designOf(job))).toEqual([])
  })

  it('beside any stairs, or the check fails and names the posts', () => {
    let closed = 0
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constantFrom('straight', 'full width', 'landing', 'landing left', 'landing right'),
          side: fc.constantFrom('front', 'left', 'right'),
          align: fc.constantFrom('near', 'middle', 'far'),
          width: fc.integer({ min: 36, max: 96 }),
          landingDepth: fc.integer({ min: 36, max: 60 }),
        }),
        fc.integer({ min: 40, max: 160 }),
        fc.constantFrom('4x4', '6x6'),
        fc.constantFrom('2x8', '2x10', '2x12'),
        fc.constantFrom('balusters', 'panels'),
        (stairs, height, postSize, size, infill) => {
          const made = design({
            version: 1,
            size: { width: '17 ft', depth: '12 ft', height },
            frame: { joists: { size }, beams: { front: { posts: 4 } } },
            stairs,
            guard: { where: 'where needed', postSize, infill },
          })
          if (!made.ok) return
          const open = passed(made.value)
          const check = made.value.checks.find(({ id }) => id === 'guard-make')
          if (open.length > 0) expect(check?.status, open.join()).toBe('fails')
          for (const one of open) expect(check?.message).toContain(one.split(':')[0])
          closed += made.value.guard?.openings.length ?? 0
        },
      ),
      { numRuns: 60 },
    )
    expect(closed).toBeGreaterThan(30)
  })
})

describe('a post that stands between two stairs', () => {
  it('has uprights on the faces towards both, each a piece of its own and none in the place of another', () => {
    const made = design({
      size: { width: '60 in', depth: '60 in', height: '39 in' },
      frame: { beams: { front: { posts: 2 } } },
      stairs: {
        kind: 'straight',
        side: 'front',
        align: 'far',
        width: '30 in',
        run: '9 in',
        foot: 'pad',
        landingDepth: '30 in',
        second: { kind: 'landing left', side: 'right', align: 'middle' },
      },
      guard: { where: 'where needed', postSpacing: '36 in', height: '36 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const fillers = made.value.guard?.members.filter(({ id }) => id.startsWith('guard-filler-')) ?? []
    expect(fillers.length).toBeGreaterThan(0)
    expect(new Set(fillers.map(({ id }) => id)).size).toBe(fillers.length)
    expect(new Set(fillers.map(({ box }) => `${box.x0} ${box.y0}`)).size).toBe(fillers.length)
  })
})
