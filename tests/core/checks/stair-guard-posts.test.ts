import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

it('posts bolted to stringers are in no table, and are told where they pull more than a hold-down bears', () => {
  const made = design(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const check = made.value.checks.find(({ id }) => id === 'guard-stair-posts')
  // SG1-2, the last of the upper flight, stands on the landing 58-7/8 in from the head: the nosings there are
  // 54 − 57-7/8 × 0.7526 = 10.44 in over its lower end, the guard 36 in over them, its bolts 2 and 5-7/32 in over it:
  // 200 × (36 + 10.44 − 2) ÷ 3-7/32 = 2,762 lb of 1,800, and 2 lb for lengths up to the 1/32 in
  expect(check?.status).toBe('outside scope')
  expect(check?.message).toContain('2764 lb at the upper bolt of SG1-2')
  // in words and steps lengths are those of a tape, 5-7/32 − 2 in and 10-7/16 − 5-7/32 up to 5-1/4 in
  expect(check?.message).toContain('3 7/32 in over the lower one')
  expect(check?.findings[0]?.steps.join(' ')).toContain('200 lb × (36 in + 5 1/4 in) ÷ 3 7/32 in + 200 lb')
  expect(`${check?.message} ${check?.findings.flatMap(({ steps }) => steps).join(' ')}`).not.toMatch(
    /\.\d+ in/,
  )
  expect(check?.subjects).toHaveLength(made.value.guard?.stairPosts ?? 0)
})
