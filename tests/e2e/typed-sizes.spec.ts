import { expect, test } from './program.ts'
import { flag, open, place, settled } from './window.ts'

test('a bare number in a deck’s width or depth is feet, and the field says so before it is taken', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Site').click()
  const depth = page.locator('#field-size-depth')
  await depth.fill('12')
  await expect(page.getByText(`read as feet: 12'-0"`)).toBeVisible()
  await depth.press('Enter')
  await expect(depth).toHaveValue(`12'-0"`)
  await flag(page).fill('16')
  await expect(page.getByText(`read as feet: 16'-0"`).first()).toBeVisible()
  await flag(page).press('Enter')
  await expect(flag(page)).toHaveValue(`16'-0"`)
  // above 60 a bare number is inches, as everywhere else
  await flag(page).fill('216')
  await flag(page).press('Enter')
  await expect(flag(page)).toHaveValue(`18'-0"`)
  await expect(page.getByText(/^read as feet/)).toHaveCount(0)
})

test('the way back to a default takes no Tab stop, and is there for the keyboard in the field itself', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  const spacing = page.locator('#field-frame-joists-spacing')
  await spacing.fill('12')
  await spacing.press('Enter')
  await expect(spacing).toHaveClass('stated')
  const reset = page.getByRole('button', { name: 'Spacing: back to the default' })
  await expect(reset).toHaveAttribute('tabindex', '-1')
  await spacing.fill('')
  await spacing.press('Enter')
  await expect(spacing).toHaveClass('default')
  await expect(spacing).toHaveValue('16 in')
  await page.keyboard.press('Control+z')
  await expect(spacing).toHaveValue('12 in')
  const size = page.locator('#field-frame-joists-size')
  await size.selectOption('2x12')
  await settled(page)
  await size.press('Delete')
  await expect(size).toHaveClass('default')
})

test('sizes compared show the whole cost and price too', async ({ page, program }) => {
  await open(page, program.link)
  await place(page, 'Site').click()
  await page.getByRole('button', { name: 'Compare other sizes' }).click()
  const own = page.getByRole('button', { name: /, the deck’s size: \$/ })
  await expect(own).toHaveText(/\$\d+\.\d\d/)
  await page.getByRole('radio', { name: 'Cost', exact: true }).check({ force: true })
  await expect(page.getByRole('heading', { name: 'Cost of the deck in other sizes' })).toBeVisible()
  await expect(own).toHaveText(/\$\d+,\d{3}(?!\.)/)
  await page.getByRole('radio', { name: 'Price', exact: true }).check({ force: true })
  await expect(page.getByRole('heading', { name: 'Price of the deck in other sizes' })).toBeVisible()
})
