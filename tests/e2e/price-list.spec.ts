import type { Page } from '@playwright/test'
import { axeFaults } from '../a11y/axe.ts'
import { expect, test } from './program.ts'
import { dollars, open, place } from './window.ts'

const book = (page: Page) => page.getByRole('region', { name: 'Price book' })

async function give(page: Page, bytes: Buffer): Promise<void> {
  await page
    .getByLabel('File of a list of prices')
    .setInputFiles({ name: 'yard.csv', mimeType: 'text/csv', buffer: bytes })
}

test('a yard’s list with faults and foreign rows is looked at, mended by its columns, taken whole and taken back', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  const before = await dollars(page, 'Cost')
  // semicolons, Windows-1252, a heading that nobody knows, a row of something else
  await give(
    page,
    Buffer.from(
      'Art;Bezeichnung \xbd;Betrag\n30210-16;2x10;46.98\n30546-16;;41,92\nP-77;White paint;30\n',
      'latin1',
    ),
  )
  const dialog = page.getByRole('dialog', { name: 'Prices from a list' })
  await expect(dialog).toContainText('Read as Windows-1252')
  await expect(dialog.getByRole('status')).toContainText('no column is known to hold the prices')
  const take = dialog.getByRole('button', { name: /^Take/ })
  await expect(take).toBeDisabled()
  await dialog.getByLabel('Column A holds').selectOption('code')
  await dialog.getByLabel('Column C holds').selectOption('price')
  const told = dialog.getByRole('status')
  await expect(told).toContainText('the list is of no day')
  await expect(told).toContainText('row 3, column C (Betrag): “41,92”')
  await expect(told).toContainText('row 4, column A (Art): the price book has no “P-77”')
  expect(await axeFaults(page, { withDrawing: false })).toEqual([])
  await dialog.getByRole('button', { name: 'Leave the prices as they are' }).click()

  await give(page, Buffer.from('code;item;price\n30210-16;;46.98\n51010;;4\nP-77;White paint;30\n'))
  await dialog.getByLabel('Prices of').fill('2026-01-02')
  await dialog.getByLabel('Supplier').fill('Yard of the north')
  await dialog.getByLabel('Leave out what the price book does not know').check()
  await expect(dialog).toContainText('1 row left out, of nothing in the price book: White paint')
  await expect(dialog.getByRole('row', { name: /^2x10 Southern Pine/ })).toContainText('$23.49')
  await dialog.getByRole('button', { name: 'Take 2 prices' }).click()
  await expect(dialog).toBeHidden()
  await expect(book(page)).toContainText('older than 60 days, the oldest of 2026-01-02, Yard of the north')
  await expect.poll(() => dollars(page, 'Cost')).not.toBe(before)
  await expect(page.getByRole('row', { name: /^Joist hanger for a 2x10/ })).toContainText(
    'of 2026-01-02, Yard of the north',
  )
  await book(page).getByRole('button', { name: 'Look through the prices' }).click()
  await page
    .getByRole('group', { name: 'Parts of the price book' })
    .getByRole('button', { name: 'Goods' })
    .click()
  await page.getByLabel('Find', { exact: true }).fill('hanger 51010')
  await expect(page.getByRole('row', { name: /^Joist hanger/ })).toContainText('Yard of the north')
  await expect(page.getByRole('row', { name: /^Joist hanger/ })).toContainText('$4.00')
  await expect(page.getByRole('row', { name: /^Joist hanger/ })).toContainText('◐ 2026-01-02')
  expect(await axeFaults(page, { withDrawing: false })).toEqual([])
  await book(page).getByRole('button', { name: 'Take back “2 prices from Yard of the north”' }).click()
  await expect(book(page)).not.toContainText('older than 60 days')
  await expect.poll(() => dollars(page, 'Cost')).toBe(before)
})
