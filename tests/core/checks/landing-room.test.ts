import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

function roomOf(stairs: object) {
  const made = design({
    version: 1,
    size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
    frame: { beams: { front: { setback: '20 in', posts: 5 } } },
    guard: { where: 'where needed' },
    stairs: { side: 'front', align: 'middle', width: '4 ft', ...stairs },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.checks.find(({ id }) => id === 'landing-room')
}

it('what guard posts leave of a landing that turns is told, with the depth that would leave 36 in clear', () => {
  const check = roomOf({ kind: 'landing right', landingDepth: '37 in' })
  expect(check?.status).toBe('outside scope')
  // 37 in less a riser's board of 1 in, two plies of beam, 3 in, and a post of 3-1/2 in are 29-1/2 in: 6-1/2 in short of
  // the 36 in of R311.7.6; the lower flight, 37 in wide, has 37 − 6-1/2 = 30-1/2 in between its head's posts
  expect(check?.message).toContain('3\'-1" deep, 29 1/2 in are clear')
  expect(check?.message).toContain('where R311.7.6 asks for 36 in')
  expect(check?.message).toMatch(/GP\d+, GP\d+ stand inside the lower flight’s width of 3'-1" at its head/)
  expect(check?.message).toContain('leave 2\'-6 1/2" there')
  expect(check?.remedy).toContain('A landing 3\'-7 1/2" deep would leave 36 in clear.')
  expect(check?.remedy).toContain('building official')
  expect(check?.subjects.length).toBeGreaterThan(0)
})

it('a landing deep enough for its posts is not told to be too shallow, nor is its guard held up', () => {
  const check = roomOf({ kind: 'landing right', landingDepth: '44 in' })
  // the lower flight, 44 in wide, has 44 − 6-1/2 = 37-1/2 in between its head's posts: more than the 36 in of R311.7.1,
  // and near it: 36 ÷ 37-1/2 is 96 %
  expect(check?.status).toBe('near')
  expect(check?.message).toContain('36 1/2 in are clear')
  expect(check?.remedy).not.toContain('would leave')
  expect(check?.subjects).toEqual([])
})

it('posts on both sides of a straight landing stand inside the width of the flight below it', () => {
  // 48 in less twice an outermost joist, 1-1/2 in, and a post, 3-1/2 in
  const check = roomOf({ kind: 'landing', landingDepth: '37 in' })
  expect(check?.message).toContain('leave 3\'-2" there')
  expect(check?.message).toContain('36 in are clear from the riser at it to its edge;')
})
