import { expect, it } from 'vitest'
import { differencesText } from './differences.ts'

it('the page of differences is what the tables and equations give today', async () => {
  await expect(differencesText()).toMatchFileSnapshot('../../docs/table-differences.md')
})
