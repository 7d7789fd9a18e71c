import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { nailedJoints } from '../../../core/takeoff/nails.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// two ends of ledgers, each lapped by one end joist; a hip of two halves that ends at the rims
test('nails through the rims into a hip are not counted as those of end joists at the ledgers', () => {
  const made = design(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
  if (!made.ok) throw new Error('no deck')
  const nails = nailedJoints(made.value.frame).filter(({ joint }) => /^(end joist|hip) into/.test(joint))
  expect(nails.map(({ joint, count, each }) => [joint, count, each])).toEqual([
    ['end joist into ledger', 6, '3 each'],
    ['hip into the rims', 6, '3 into each half'],
  ])
})
