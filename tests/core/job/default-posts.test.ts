import { describe, expect, it } from 'vitest'
import { type JobStatement, readJob } from '../../../core/job/index.ts'
import { toInches } from '../../../core/units/index.ts'

function front(statement: JobStatement): readonly [posts: number, inset: number] {
  const read = readJob(statement)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const { posts, inset } = read.value.job.frame.beams.front
  return [posts, toInches(inset)]
}

describe('posts and insets that are not stated', () => {
  // by hand: an overhang is a quarter of the span beside it at most (IRC 2021 R507.5)
  it.each<[string, string, number, number]>([
    // (192 − 24) / 3 = 56 in; a quarter is 14
    ['16 ft: four as usual', '16 ft', 4, 12],
    // four would stand 32 in apart, three 48 in: a quarter is 12
    ['10 ft: three', '10 ft', 3, 12],
    // three would stand 36 in apart, two 72 in
    ['8 ft: two', '8 ft', 2, 12],
    // two with 12 in beyond stand 24 in apart; with 8 in 32 in: a quarter is 8
    ['4 ft: two, and a smaller inset', '4 ft', 2, 8],
    // five would stand 8 ft 6 in apart, six 6 ft 9 3/5 in
    ['36 ft: so many that they stand 8 ft apart at most', '36 ft', 6, 12],
  ])('follow the width: %s', (_, width, posts, inset) => {
    expect(front({ size: { width } })).toEqual([posts, inset])
  })

  it('leave what is stated as it is, and take the other for what that leaves', () => {
    // 96 / (4 × 3 + 2) = 6 6/7 in
    expect(front({ size: { width: '8 ft' }, frame: { beams: { front: { posts: 4 } } } })).toEqual([4, 6])
    expect(front({ size: { width: '8 ft' }, frame: { beams: { front: { inset: '6 in' } } } })).toEqual([4, 6])
  })
})
