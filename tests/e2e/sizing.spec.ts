import { expect, test } from './program.ts'
import { dollars, figure, open, place, plan, settled } from './window.ts'

test('sizes are shown with what they cost before they are used, and one undo takes them back', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  const before = await dollars(page, 'Cost')
  const panel = page.getByRole('region', { name: 'Sizes' })
  await panel.getByRole('button', { name: 'Size it' }).click()
  await expect(panel.getByRole('row', { name: /Joist size 2x10 2x8/ })).toBeVisible({ timeout: 30_000 })
  await expect(panel.getByText(/^Cost \$[\d,.]+ → \$[\d,.]+, \$[\d,.]+ less\./)).toBeVisible()
  // nothing has changed yet
  expect(await dollars(page, 'Cost')).toBe(before)
  await panel.getByText('Why these').click()
  await expect(panel.getByText(/Nothing that passes is cheaper/)).toBeVisible()

  await panel.getByRole('button', { name: 'Use these sizes' }).click()
  await settled(page)
  expect(await dollars(page, 'Cost')).not.toBe(before)
  await expect(plan(page)).toBeVisible()
  await page.getByRole('button', { name: /^Undo “sizes of the frame”/ }).click()
  await settled(page)
  await expect(figure(page, 'Cost')).toContainText(before)
})

test('a part that is kept stays as it is', async ({ page, program }) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  const panel = page.getByRole('region', { name: 'Sizes' })
  await panel.getByText('Keep as they are').click()
  await panel.getByRole('checkbox', { name: 'Joists' }).check()
  await panel.getByRole('checkbox', { name: 'Post size' }).check()
  await panel.getByRole('button', { name: 'Size it' }).click()
  await expect(panel.getByRole('button', { name: 'Use these sizes' })).toBeVisible({ timeout: 30_000 })
  await expect(panel.getByRole('row', { name: /Joist size|Post size/ })).toHaveCount(0)
})
