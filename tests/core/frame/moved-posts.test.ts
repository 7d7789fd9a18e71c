import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB, setField } from '../../../core/job/index.ts'

/** What is said of posts moved along the demo deck's beam: 282 in, four 6x6 at 12, 98, 184 and 270 in, bases of 20 in. */
function saidOf(moved: string): readonly string[] {
  const made = design(setField(DEMO_JOB, 'ground.moved', moved))
  return made.ok ? [] : made.error.map(({ path, message }) => `${path}: ${message}`)
}

describe('a post that is moved along its beam', () => {
  it('stays on it with its whole width: half of 5-1/2 in from the end', () => {
    expect(saidOf('1: -9.25 in')).toEqual([])
    expect(saidOf('1: -9.5 in')).toEqual(['ground.moved: post 1 would stand past the end of its beam'])
    expect(saidOf('4: 9.25 in')).toEqual([])
    expect(saidOf('4: 9.5 in')).toEqual(['ground.moved: post 4 would stand past the end of its beam'])
  })

  it('keeps its footing clear of its neighbours’, on whichever side it comes near', () => {
    const near = (a: number, b: number) =>
      `ground.moved: posts ${a} and ${b} would be less than 1'-8" apart, and their footings would meet`
    expect(saidOf('2: -66 in')).toEqual([])
    expect(saidOf('2: -66.5 in')).toContain(near(1, 2))
    expect(saidOf('1: 66.5 in')).toContain(near(1, 2))
    expect(saidOf('3: 66.5 in')).toContain(near(3, 4))
  })
})
