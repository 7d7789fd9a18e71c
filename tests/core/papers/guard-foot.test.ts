import { expect, test } from 'vitest'
import { postBolts } from '../../../core/papers/build/guard-post-bolts.ts'
import { guardFootDetail } from '../../../core/papers/details/guard-foot-detail.ts'
import { guardPostDetail } from '../../../core/papers/details/guard-post-detail.ts'
import { orderNote } from '../../../core/papers/tables/order-notes.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const { estimate } = paperSource(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
const foot = guardFootDetail(estimate)
const INCH = 32

// 2x10: 9 1/4 in deep; 2 in off either edge leaves 5 1/4 in between the bolts
test('the foot of a guard post has the heights of its bolts in figures, drawn where they are', () => {
  const drawn = foot?.drawing.primitives ?? []
  const bolts = drawn.flatMap((p) => (p.kind === 'line' && p.id === 'guard-bolt' ? [p] : []))
  expect(bolts.map(({ y1 }) => y1 / INCH)).toEqual([2, 7.25])
  const upright = drawn.flatMap((p) => (p.kind === 'dimension' && p.x1 === p.x2 ? [p] : []))
  expect(upright.map(({ text, y1, y2 }) => [text, y1 / INCH, y2 / INCH])).toEqual([
    ['2"', 0, 2],
    ['5 1/4"', 2, 7.25],
    ['2"', 7.25, 9.25],
    ['9 1/4"', 0, 9.25],
  ])
  for (const id of ['guard-block', 'guard-hold-down'])
    expect(
      drawn.some((p) => p.id === id),
      id,
    ).toBe(true)
})

// board 1 1/2 + post 3 1/2 + nut and washer 1 = 6; a hold-down 1/2 more, bought as 7; a block behind 1 1/2 more:
// 7 1/2 and 8, both bought as 8
test('each bolt is as long as what it goes through asks', () => {
  const bolts = postBolts(estimate)
  const of = (post: string) => {
    const id = estimate.guard?.members.find(({ mark }) => mark === post)?.id
    const one = bolts.find(({ post: { id: own } }) => own === id)
    return [one?.upper, one?.lower].map((length) => (length ?? 0) / INCH)
  }
  // GP4's block runs beside it, square to the end joist; GP8's stands behind it, along the rim
  expect(of('GP4')).toEqual([7, 6])
  expect(of('GP8')).toEqual([8, 8])
  const said = foot?.notes.join(' ') ?? ''
  expect(said).toContain('7 in above and 6 in below at GP1 to GP6; 8 in at GP7 to GP17')
  expect(said).toContain('holes 9/16 in')
  expect(said).toContain('common practice, no source')
  expect(orderNote(['good-carriage-bolt-1/2'], estimate)).toContain('8 in at GP7 to GP17')
})

test('a guard post is drawn as it is sawn, from the joists’ lower edge to under the cap', () => {
  const post = guardPostDetail(estimate)?.drawing.primitives.find(
    (p) => p.kind === 'rect' && p.id === 'guard-post',
  )
  const sawn = estimate.guard?.members.find(({ role }) => role === 'guard post')?.length
  expect(post?.kind === 'rect' ? post.h : 0).toBe(sawn)
})

// the stairs' guard of the deck nine feet up has 8 posts of its own, two on each side of a flight of 60-5/8 in, a 2x6 between the stringers at each
test('blocks between stringers are not counted among those of the joists’ size behind the posts', () => {
  const high = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
  const said = guardFootDetail(high.estimate)?.notes.find((one) => one.includes('Blocks 2x10')) ?? ''
  const scheduled = high.estimate.guard?.members.filter(({ role }) => role === 'guard blocking') ?? []
  const behind = said.slice(0, said.indexOf('2 nails')).matchAll(/(\d+) of /g)
  const sum = [...behind].reduce((all, [, count]) => all + Number(count), 0)
  expect(sum).toBe(scheduled.filter(({ product }) => product.size === '2x10').length)
  expect(said).toContain('between the stringers, 2x6: 8 of 1\'-2"')
})
