import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function stripsOf(statement: unknown): readonly string[] {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.frame.layoutNotes.filter((note) => note.includes('too narrow for screws'))
}

const deck = (file: string) => CATALOGUE.find((one) => one.file === file)?.job

describe('a strip of a board that an edge leaves', () => {
  it('is told where a wing ends just past a joint of two courses', () => {
    // boards of 5-1/2 and gaps of 1/8 in begin 1/4 in off the wall: the 18th at 17 × 5-5/8 + 1/4 = 95-7/8; the wing's
    // decking ends at 8 ft and 1 in over, 97 in
    expect(stripsOf(deck('l-shape.json'))).toEqual([
      expect.stringContaining(`Along 10'-0" course D18 is only 1 1/8" wide`),
    ])
  })

  it('is none on a rectangle, whose last course is ripped', () => {
    expect(stripsOf(DEMO_JOB)).toEqual([])
  })

  it('is none where boards lie at an angle, whose corners are cut', () => {
    expect(stripsOf(deck('diagonal.json'))).toEqual([])
  })
})
