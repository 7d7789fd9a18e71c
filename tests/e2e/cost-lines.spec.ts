import type { Page } from '@playwright/test'
import { expect, test, testAlone } from './program.ts'
import { dollars, open, place, saved, settled } from './window.ts'

const lines = (page: Page) => page.getByRole('grid', { name: 'Lines of the cost by group' })
const cell = (page: Page, name: RegExp) => lines(page).getByRole('gridcell', { name })
const HANGERS = /^Joist hanger for a 2x10, galvanised: quantity/
const HANGER_PRICE = /^Joist hanger for a 2x10, galvanised: price/

testAlone(
  'a quantity and a price are stated by keys alone, marked, kept over a restart and put back',
  async ({ page, program }) => {
    await open(page, program.link)
    await place(page, 'Price').click()
    const before = await dollars(page, 'Cost')
    const quantity = cell(page, HANGERS)
    await quantity.focus()
    await page.keyboard.press('F2')
    const entry = lines(page).getByRole('textbox')
    await expect(entry).toHaveValue('17')
    await page.keyboard.press('Escape')
    await expect(quantity).toBeFocused()
    await page.keyboard.type('5.5')
    await page.keyboard.press('Enter')
    await expect(lines(page).getByRole('alert')).toHaveText(
      /5\.5 each cannot be had\. State a whole number\./,
    )
    await expect(entry).toHaveValue('5.5')
    await entry.fill('517')
    await page.keyboard.press('Enter')
    await expect(quantity).toBeFocused()
    await expect(quantity).toHaveAccessibleName(/517 each stated by hand, computed 17/)
    await page.keyboard.press('ArrowRight')
    await page.keyboard.type('3')
    await page.keyboard.press('Enter')
    await expect(cell(page, HANGER_PRICE)).toHaveAccessibleName(/\$3\.00 stated by hand, in the book \$2\.39/)
    await settled(page)
    await expect(lines(page).getByRole('row', { name: /^Joist hanger for a 2x10/ })).toContainText(
      '$1,551.00',
    )
    const stated = await dollars(page, 'Cost')
    expect(stated).not.toBe(before)

    await saved(page)
    await program.kill()
    await program.start()
    await open(page, program.link)
    await place(page, 'Price').click()
    expect(await dollars(page, 'Cost')).toBe(stated)
    await expect(cell(page, HANGERS)).toHaveAccessibleName(/stated by hand/)
    await page.keyboard.press('Control+z')
    await expect(cell(page, HANGER_PRICE)).not.toHaveAccessibleName(/stated by hand/)
    await cell(page, HANGERS).focus()
    await page.keyboard.press('Delete')
    await expect(cell(page, HANGERS)).not.toHaveAccessibleName(/stated by hand/)
    await settled(page)
    expect(await dollars(page, 'Cost')).toBe(before)
  },
)

test('what is stated for a line that goes is told and kept, and counts again when the line is back', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  await cell(page, HANGERS).click()
  await lines(page).getByRole('textbox').fill('40')
  await page.keyboard.press('Enter')
  await settled(page)
  const sheet = page.getByRole('region', { name: 'Lines of the cost' })
  await expect(sheet).toContainText('1 line is stated by hand: +$54.97')
  await place(page, 'Frame').click()
  await page.locator('#field-frame-joists-size').selectOption('2x12')
  await place(page, 'Price').click()
  await settled(page)
  await expect(sheet).toContainText(
    'stated for “Joist hanger for a 2x10, galvanised”, and the price has no such line now',
  )
  await page.keyboard.press('Control+z')
  await settled(page)
  await expect(cell(page, HANGERS)).toHaveAccessibleName(/40 each stated by hand/)
  await sheet.getByRole('button', { name: 'All as computed' }).click()
  await settled(page)
  await expect(sheet).not.toContainText('line is stated by hand')
})

test('the lines have one Tab stop, and a block from a spreadsheet is pasted as one step', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  await cell(page, HANGERS).focus()
  await page.keyboard.press('Control+End')
  await expect(
    lines(page)
      .getByRole('button', { name: /^Why\?/ })
      .last(),
  ).toBeFocused()
  await page.keyboard.press('Tab')
  expect(await lines(page).evaluate((table) => table.contains(document.activeElement))).toBe(false)
  await cell(page, HANGERS).focus()
  const paste = (text: string) =>
    page.evaluate((plain) => {
      const clipboardData = new DataTransfer()
      clipboardData.setData('text/plain', plain)
      document.activeElement?.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true }))
    }, text)
  await paste('7\t$2\n3\t$1.5')
  await expect(cell(page, HANGERS)).toHaveAccessibleName(/7 each stated by hand/)
  await expect(lines(page).getByRole('gridcell', { name: /stated by hand/ })).toHaveCount(4)
  await page.keyboard.press('Control+z')
  await expect(lines(page).getByRole('gridcell', { name: /stated by hand/ })).toHaveCount(0)
  await cell(page, HANGERS).focus()
  await paste('7\nmany')
  await expect(page.getByText(/Nothing was pasted\. Row 2/)).toBeVisible()
  await expect(lines(page).getByRole('gridcell', { name: /stated by hand/ })).toHaveCount(0)
})

test('the price place tells line by line what changed since the quote that was sent last', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  const since = page.getByRole('region', { name: 'Since the last quote' })
  await expect(since).toContainText('No quote of this job was sent yet')
  await place(page, 'Papers').click()
  await page.getByLabel('Date on them').fill('2026-03-31')
  const send = page.getByRole('button', { name: 'Number this quote and save its PDF' })
  await Promise.all([page.waitForEvent('download'), send.click()])
  await place(page, 'Price').click()
  await expect(since).toContainText('Nothing has changed since')
  await cell(page, HANGERS).click()
  await lines(page).getByRole('textbox').fill('27')
  await page.keyboard.press('Enter')
  const row = since.getByRole('row', { name: /^Joist hanger for a 2x10/ })
  await expect(row).toContainText('17 each × $2.39')
  await expect(row).toContainText('27 each × $2.39')
  // ten more at $2.39
  await expect(row).toContainText('+$23.90')
  await expect(since.getByRole('row', { name: /^What the customer pays/ })).toContainText(/\+\$\d/)
})
