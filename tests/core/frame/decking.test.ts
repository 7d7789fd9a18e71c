import { describe, expect, it } from 'vitest'
import { courseWidths } from '../../../core/frame/course-widths.ts'
import { inches, toInches } from '../../../core/units/index.ts'

function laid(cover: number, board: number, gap: number) {
  const { widths, short } = courseWidths(inches(cover), inches(board), inches(gap))
  return { widths: widths.map(toInches), short: toInches(short) }
}

describe('courses of decking', () => {
  it('rips the last course to what is left', () => {
    expect(laid(20, 5.5, 0.125)).toEqual({ widths: [5.5, 5.5, 5.5, 3.125], short: 0 })
  })

  it('rips none where boards and gaps fill the depth', () => {
    expect(laid(16.75, 5.5, 0.125)).toEqual({ widths: [5.5, 5.5, 5.5], short: 0 })
  })

  it('keeps a last course of just half a board', () => {
    expect(laid(19.625, 5.5, 0.125)).toEqual({ widths: [5.5, 5.5, 5.5, 2.75], short: 0 })
  })

  it('rips the first and the last equal where the last would be under half a board', () => {
    // 1 1/2 in left over: (5 1/2 + 1 1/2) / 2
    expect(laid(18.375, 5.5, 0.125)).toEqual({ widths: [3.5, 5.5, 5.5, 3.5], short: 0 })
  })

  it('gives an odd 1/32 to the overhang, so that the two rips stay equal', () => {
    expect(laid(18.40625, 5.5, 0.125)).toEqual({ widths: [3.5, 5.5, 5.5, 3.5], short: 0 })
  })

  it('leaves out a course under 1/4 in and says by how much the overhang is short', () => {
    expect(laid(17.09375, 5.5, 0.125)).toEqual({ widths: [5.5, 5.5, 5.5], short: 0.34375 })
    expect(laid(17.125, 5.5, 0.125).widths).toHaveLength(4)
  })

  it('has no course of no width', () => {
    expect(laid(16.8125, 5.5, 0.125)).toEqual({ widths: [5.5, 5.5, 5.5], short: 0.0625 })
  })

  it('lays tight boards without gaps', () => {
    expect(laid(22, 5.5, 0)).toEqual({ widths: [5.5, 5.5, 5.5, 5.5], short: 0 })
  })
})
