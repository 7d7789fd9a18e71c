import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { connectorLegend } from '../../../core/papers/tables/connector-legend.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

test('the framing plan names every metal that holds the frame, with its count and by the marks of what it holds', () => {
  const made = design(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const rows = connectorLegend(made.value).rows.map(({ what, count, at }) => `${count} ${what} at ${at}`)
  // six joists on either half of the hip hang from it, J1 to J6 and J32 to J37; nine posts; one hanger for the hip itself
  expect(rows).toContain('12 joist hanger, 2x10, skewed 45° at J1 to J6, J32 to J37')
  expect(rows).toContain('9 post base, 6x6 at P1 to P9')
  expect(rows).toContain('1 joist hanger for two 2x10, skewed 45° at HP1, HP2')
  // the hip's halves are nailed face to face
  expect(rows.join(' ')).not.toContain('pair')
})
