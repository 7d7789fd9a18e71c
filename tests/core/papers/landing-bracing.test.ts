import { describe, expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

describe('the bracing of a landing on posts', () => {
  const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
  const told = (id: 'steps' | 'order') => JSON.stringify(makeSheets(source, [id]))

  test('is in the steps with how many, from which post to which, and the board that each takes', () => {
    const words = /3 diagonals of 2x6.*?LP3 to LP1, (\d)'-(\d+).*?LP4 to LP2.*?LP1 to LP2/
    const found = words.exec(told('steps'))
    expect(found).not.toBeNull()
    // two posts of 5-1/2 in: over both faces, and from 6 in over the foot to the post's top, by Pythagoras; 5-1/2 in for the ends
    const posts = source.estimate.stairs.flatMap(({ members }) =>
      members.filter(({ role }) => role === 'landing post'),
    )
    const [one, other] = [posts[0], posts[2]]
    if (one === undefined || other === undefined) throw new Error('a landing has four posts')
    const across = (other.box.y1 - one.box.y0) / 32
    const long = Math.ceil(Math.hypot(across, one.length / 32 - 6) + 5.5)
    expect(Number(found?.[1]) * 12 + Number(found?.[2])).toBe(long)
  })

  test('is told to be on no list where the order is written', () => {
    expect(told('order')).toContain('Not on this list: the braces of the landing’s posts, 3 pieces of 2x6')
  })

  test('is not spoken of where there is no landing', () => {
    const plain = paperSource({ ...smallJob() })
    expect(JSON.stringify(makeSheets(plain, ['steps', 'order']))).not.toContain('diagonals of 2x6')
  })
})
