import { expect, test } from './program.ts'
import { open, place, plan } from './window.ts'

test('second stairs are asked for beside the first; where both would stand, the field that moves them is there', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  const group = (name: string) =>
    page.locator('details').filter({ has: page.locator('summary', { hasText: new RegExp(`^${name}$`) }) })
  await group('Stairs').locator('summary').click()
  await group('Stairs').getByRole('combobox', { name: 'Stairs', exact: true }).selectOption('straight')
  const second = group('Second stairs')
  const side = second.getByRole('combobox', { name: 'Side of the deck' })
  await second.locator('summary').click()
  await second.getByRole('combobox', { name: 'Second stairs', exact: true }).selectOption('straight')
  await expect(plan(page).getByText(/(^|, )down/)).toHaveCount(2)

  await side.selectOption('front')
  const told = second.getByRole('alert').filter({ hasText: 'They stand where the first stairs do' })
  await expect(told).toBeVisible()
  await expect(side).toBeVisible()
  await side.selectOption('left')
  await expect(told).toBeHidden()
  await expect(plan(page).getByText(/(^|, )down/)).toHaveCount(2)
})
