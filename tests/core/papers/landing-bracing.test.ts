import { describe, expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

describe('the bracing of a landing on posts', () => {
  const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
  const { estimate } = source
  const told = (id: 'steps' | 'cutting') => JSON.stringify(makeSheets(source, [id]))
  const members = estimate.stairs.flatMap((one) => one.members)
  const braces = members.filter(({ role }) => role === 'landing brace')

  test('is in the steps with how many, from which post to which, and how long', () => {
    const words =
      /3 diagonals of 2x6.*?LK1 from LP3 up to LP1, (\d)'-(\d+).*?LK2 from LP4 up to LP2.*?LK3 from LP1 up to LP2/
    const found = words.exec(told('steps'))
    expect(found).not.toBeNull()
    // two posts of 5-1/2 in: over both faces, and from 6 in over the foot to the post's top, by Pythagoras; 5-1/2 in for the ends
    const posts = members.filter(({ role }) => role === 'landing post')
    const [one, other] = [posts[0], posts[2]]
    if (one === undefined || other === undefined) throw new Error('a landing has four posts')
    const across = (other.box.y1 - one.box.y0) / 32
    const long = Math.ceil(Math.hypot(across, one.length / 32 - 6) + 5.5)
    expect(Number(found?.[1]) * 12 + Number(found?.[2])).toBe(long)
  })

  test('is cut, ordered and bolted: three pieces of 2x6, two bolts each, half an hour or more of work', () => {
    expect(braces.map(({ mark }) => mark)).toEqual(['LK1', 'LK2', 'LK3'])
    const cut = estimate.plans.flatMap(({ product, plan }) =>
      plan.boards.flatMap(({ cuts }) => cuts.map(({ mark }) => `${product.size} ${mark}`)),
    )
    for (const { mark } of braces) expect(cut.filter((one) => one === `2x6 ${mark}`)).toHaveLength(1)
    const [stairs] = estimate.stairs
    const count = (kind: string) => stairs?.connectors.find((one) => one.kind === kind)?.count ?? 0
    expect(count('landing brace bolt')).toBe(6)
    const bolts = estimate.takeoff.goods.find(({ sku }) => sku === 'ledger-bolt-1/2')
    expect(bolts?.thousandths).toBe(1000 * (count('header bolt') + 6))
    const hours = estimate.takeoff.tasks.find(({ id }) => id.includes('post-brace'))
    expect(hours?.thousandths).toBe(3000)
  })

  test('lies in no wood of the landing, its stairs or its posts', () => {
    for (const a of braces)
      for (const b of members) {
        // stringers are told by the box around them, and slope over the braces
        if (a === b || b.role === 'stringer') continue
        const meets =
          a.box.x0 < b.box.x1 - 1 &&
          b.box.x0 < a.box.x1 - 1 &&
          a.box.y0 < b.box.y1 - 1 &&
          b.box.y0 < a.box.y1 - 1 &&
          a.box.z0 < b.box.z1 - 1 &&
          b.box.z0 < a.box.z1 - 1
        expect(meets, `${a.mark} in ${b.mark}`).toBe(false)
      }
  })

  test('is not spoken of where there is no landing', () => {
    const plain = paperSource({ ...smallJob() })
    expect(JSON.stringify(makeSheets(plain, ['steps', 'order']))).not.toContain('diagonals of 2x6')
  })
})
