import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

it('posts bolted to stringers are in no table, and are told where they pull more than a hold-down bears', () => {
  const made = design(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const check = made.value.checks.find(({ id }) => id === 'guard-stair-posts')
  // SG1-2: bolts 4-1/4 and 7-1/8 in over its lower end, which is 18 in under the nosings; the guard 36 in over them:
  // 200 × (36 + 18 − 4-1/4) ÷ 2-7/8 = 3,461 lb of 1,800
  expect(check?.status).toBe('outside scope')
  expect(check?.message).toContain('3461 lb at the upper bolt of SG1-2')
  expect(check?.subjects).toHaveLength(made.value.guard?.stairPosts ?? 0)
})
