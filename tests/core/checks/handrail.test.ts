import { describe, expect, it } from 'vitest'
import { scopeWords } from '../../../core/papers/quote/scope-words.ts'
import { designed } from '../../fixtures/designed.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

// 29 in high: 4 risers of 7-1/4 in, which want a handrail (IRC 2021 R311.7.8), and no guard (R312.1.1: more than 30 in)

const LOW = { size: { width: '13 ft', depth: '11 ft', height: '29 in' }, stairs: { kind: 'straight' } }

function handrailOf(statement: object) {
  const made = designed(statement)
  return made.checks.find(({ id }) => id === 'stair-handrail')
}

describe('a handrail', () => {
  it('does not pass where no guard’s posts stand beside the stairs: nothing else that holds it is counted', () => {
    for (const where of ['none', 'where needed']) {
      const check = handrailOf({ ...LOW, guard: { where } })
      expect([where, check?.status]).toEqual([where, 'outside scope'])
      expect(check?.message).toContain('nothing to be fixed to')
    }
  })

  it('passes with a guard down the stairs, and where others build one', () => {
    expect(handrailOf({ ...LOW, guard: { where: 'all open edges' } })?.status).toBe('passes')
    expect(handrailOf({ ...LOW, scope: { guard: { included: true } } })?.status).toBe('passes')
  })

  it('on stairs of less than four risers may be left out, and is told so', () => {
    const two = {
      ...LOW,
      size: { ...LOW.size, height: '15 in' },
      ground: { projection: '0 in', standoff: '0 in' },
    }
    const flush = { joists: { size: '2x6' }, beams: { front: { set: 'flush', size: '2x6' } } }
    const check = handrailOf({ ...two, frame: flush })
    expect(check?.remedy).toContain('leave the handrail out: 2 risers need none')
  })

  it('is named in the quote on the sides that have one', () => {
    const said = (handrail: string) =>
      scopeWords(paperSource({ ...LOW, stairs: { ...LOW.stairs, handrail } }).estimate).join(' ')
    expect(said('one side')).toContain('with a handrail on one side')
    expect(said('none')).not.toContain('handrail')
  })
})
