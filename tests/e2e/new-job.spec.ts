import { expect, test } from './program.ts'
import { flag, open } from './window.ts'

test('a new job is made by five questions with the keyboard alone; what is not answered is shown as a default', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.keyboard.press('Control+Alt+n')
  const dialog = page.getByRole('dialog', { name: 'New job: five questions' })
  const make = dialog.getByRole('button', { name: 'Make the deck' })
  const width = dialog.getByRole('textbox', { name: 'Width' })
  await expect(width).toHaveAccessibleDescription(/^Default\./)
  await expect(dialog.getByText(/Sample prices/)).toBeVisible()

  await width.fill('18 feets')
  await page.keyboard.press('Enter')
  await expect(width).toHaveAttribute('aria-invalid', 'true')
  await expect(width).toBeFocused()
  await expect(dialog.getByRole('alert')).toContainText('feets')

  await page.keyboard.press('Escape')
  await expect(dialog).toHaveCount(0)
  await expect(flag(page), 'nothing was made').toHaveValue(`23'-6"`)

  await page.keyboard.press('Control+Alt+n')
  await expect(width, 'what was typed is still there').toHaveValue('18 feets')
  await width.fill('18 ft')
  await dialog.getByRole('combobox', { name: 'Held by the house' }).selectOption('freestanding')
  await dialog.getByRole('combobox', { name: 'Who builds' }).selectOption('owner')
  const unknown = dialog.getByRole('checkbox', { name: 'Frost depth: I do not know' })
  await expect(unknown).toBeChecked()
  await dialog.getByRole('textbox', { name: 'Frost depth' }).fill('48 in')
  await expect(unknown).not.toBeChecked()
  await make.press('Enter')

  await expect(page.getByRole('button', { name: /^Job New deck/ })).toBeVisible()
  await expect(flag(page)).toHaveValue(`18'-0"`)
  const bench = page.getByRole('complementary')
  await expect(bench.getByRole('textbox', { name: 'Depth', exact: true })).toHaveAccessibleDescription(
    /^Default\./,
  )
  await expect(bench.getByRole('textbox', { name: 'Frost depth', exact: true })).toHaveValue('48 in')
  await page.getByRole('button', { name: 'Undo “the answers to the questions”' }).click()
  await expect(flag(page)).toHaveValue(`20'-0"`)
})
