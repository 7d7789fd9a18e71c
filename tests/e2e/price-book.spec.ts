import type { Page } from '@playwright/test'
import { axeFaults } from '../a11y/axe.ts'
import { expect, test } from './program.ts'
import { dollars, open, place } from './window.ts'

const HILL = 'Hill Top Lumber'
const sheet = (page: Page) => page.getByRole('region', { name: 'Prices and rates' })
const part = (page: Page, name: string) =>
  page.getByRole('group', { name: 'Parts of the price book' }).getByRole('button', { name })
const split = (page: Page) => page.getByRole('region', { name: /^Suppliers of / })

async function find(page: Page, words: string): Promise<void> {
  await page.getByLabel('Find', { exact: true }).fill(words)
}

async function addSupplier(page: Page, name: string, delivery: string): Promise<void> {
  await part(page, 'Suppliers').click()
  const add = page.getByRole('form', { name: 'Another supplier' })
  await add.getByLabel('Name').fill(name)
  await add.getByLabel('One delivery').fill(delivery)
  await add.getByRole('button', { name: 'Add' }).click()
}

/** The price cell of the row whose text begins so. */
const price = (page: Page, row: RegExp) => page.getByRole('row', { name: row }).getByRole('gridcell').nth(2)

test('a supplier is added with prices, the job is bought where the whole is cheapest, and all of it is taken back', async ({
  page,
  program,
}) => {
  test.setTimeout(240_000)
  await open(page, program.link)
  await expect.poll(() => dollars(page, 'Cost')).toMatch(/^\$/)
  const before = await dollars(page, 'Cost')
  await place(page, 'Price book').click()
  await addSupplier(page, HILL, 'sixty')
  await expect(page.getByRole('form').getByRole('alert')).toContainText('The delivery is "sixty"')
  await addSupplier(page, HILL, '60')
  await expect(page.getByRole('row', { name: /^Hill Top Lumber/ })).toContainText('$60.00')
  // what the yard's own delivery costs is typed into its cell
  await page
    .getByRole('row', { name: /^An invented yard/ })
    .getByRole('gridcell')
    .nth(1)
    .focus()
  await page.keyboard.type('40')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('row', { name: /^An invented yard/ })).toContainText('$40.00')

  await part(page, 'Boards').click()
  await find(page, '5/4x6 Southern 16')
  await price(page, /^5\/4x6 Southern Pine/).focus()
  const add = page.getByRole('form', { name: /^Price of 5\/4x6 .* at another supplier/ })
  await add.getByLabel('Price').fill('9.90')
  await add.getByLabel('Code').fill('HT-5416')
  await add.getByRole('button', { name: 'Add' }).click()
  await expect(page.getByRole('row', { name: /HT-5416/ })).toContainText('$9.90')

  await expect(split(page)).toContainText(`Bought from An invented yard and ${HILL}`, { timeout: 90_000 })
  await expect(split(page)).toContainText('No other split of what is needed costs less.')
  await expect(split(page)).toContainText(/All of it from An invented yard: \$[\d,.]+, \$[\d,.]+ more\./)
  await expect(split(page)).toContainText(`${HILL} alone does not sell all of it`)
  expect(await axeFaults(page)).toEqual([])

  // an order for each, and their deliveries in the price
  await place(page, 'Price').click()
  await expect(page.getByRole('row', { name: `Delivery, ${HILL}` })).toContainText('$60.00')
  await expect(page.getByRole('row', { name: /^5\/4x6 .*HT-5416/ })).toContainText(HILL)
  await place(page, 'Papers').click()
  await page.getByRole('button', { name: 'None', exact: true }).click()
  await page.getByRole('checkbox', { name: 'Order for the yard' }).check()
  await expect(page.getByRole('img', { name: /: Order 1 of 2: An invented yard$/ }).first()).toBeVisible({
    timeout: 60_000,
  })
  await expect(page.getByRole('img', { name: new RegExp(`: Order 2 of 2: ${HILL}$`) }).first()).toBeAttached()

  // three changes, three steps back, and the cost is what it was
  await place(page, 'Price book').click()
  for (const said of ['Price of 5/4x6', 'An invented yard: delivery', `Supplier ${HILL}`]) {
    await expect(page.getByRole('button', { name: `Undo “${said}` })).toBeVisible()
    await page.keyboard.press('Control+z')
  }
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled()
  await page.keyboard.press('Control+y')
  await expect(page.getByRole('button', { name: `Undo “Supplier ${HILL}` })).toBeVisible()
  await page.keyboard.press('Control+z')
  await expect.poll(() => dollars(page, 'Cost'), { timeout: 60_000 }).toBe(before)
})

test('a cell is typed over by keys alone, keeps what cannot be taken, and a block from a spreadsheet is taken whole or not at all', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price book').click()
  await find(page, '2x10 16')
  const cell = price(page, /^2x10 Southern Pine/)
  await cell.focus()
  await expect(cell).toHaveAttribute('tabindex', '0')
  expect(await sheet(page).locator('[role=grid] [tabindex="0"]').count()).toBe(1)
  await page.keyboard.type('lots')
  await page.keyboard.press('Enter')
  const entry = sheet(page).locator('input[aria-invalid=true]')
  await expect(entry).toHaveValue('lots')
  await expect(entry).toHaveAccessibleDescription(/The price is "lots"/)
  await page.keyboard.press('Escape')
  await expect(cell).toBeFocused()
  await expect(cell).toContainText('$23.49')
  await page.keyboard.press('F2')
  await page.keyboard.press('End')
  await page.keyboard.press('Backspace')
  await page.keyboard.type('5')
  await page.keyboard.press('Enter')
  await expect(cell).toContainText('$23.45')
  await expect(cell).toBeFocused()
  await page.keyboard.press('ArrowRight')
  // a price that was typed is of today
  await expect(page.locator(':focus')).not.toContainText('2026-11-01')

  await find(page, '2x10 Southern')
  await price(page, /^2x10 Southern Pine No\.2, treated, 6'/).focus()
  const paste = (text: string) =>
    page.evaluate((given) => {
      const data = new DataTransfer()
      data.setData('text/plain', given)
      document.activeElement?.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      )
    }, text)
  await paste('9.10\n11.50\nmuch\n')
  await expect(page.getByRole('status').filter({ hasText: 'Nothing was pasted' })).toContainText('“much”')
  await expect(price(page, /^2x10 Southern Pine No\.2, treated, 6'/)).toContainText('$8.99')
  await paste('9.10\n11.50\n')
  await expect(price(page, /^2x10 Southern Pine No\.2, treated, 8'/)).toContainText('$11.50')
  await expect(page.getByRole('button', { name: 'Undo “2 changes of the price book”' })).toBeVisible()
})

test('a board that is not in the book is added beside the table, gets another length, and is taken out with all of them', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price book').click()
  await page.getByText('A board that is not in the book').click()
  const board = page.getByRole('form', { name: 'Another board' })
  await board.getByLabel('Size').selectOption('5/4x6')
  await board.getByLabel('Species').selectOption({ label: 'western cedar' })
  await board.getByLabel('Treatment').selectOption('untreated')
  await board.getByLabel('First length').fill('12')
  await board.getByLabel('Price').fill('much')
  await board.getByRole('button', { name: 'Add' }).click()
  await expect(board.getByRole('alert')).toContainText('The price is "much"')
  await board.getByLabel('Price').fill('31.20')
  await board.getByRole('button', { name: 'Add' }).click()
  await find(page, 'cedar')
  await expect(price(page, /^5\/4x6 western cedar No\.2, untreated, 12'/)).toContainText('$31.20')
  await price(page, /^5\/4x6 western cedar/).focus()
  const length = page.getByRole('form', { name: /^Another length of 5\/4x6 western cedar/ })
  await length.getByLabel('Length').fill('16 ft')
  await length.getByLabel('Price').fill('42')
  await length.getByRole('button', { name: 'Add' }).click()
  await expect(price(page, /^5\/4x6 western cedar No\.2, untreated, 16'/)).toContainText('$42.00')
  expect(await axeFaults(page)).toEqual([])
  await page
    .getByRole('button', { name: /^Remove 5\/4x6 western cedar No\.2, untreated, all 2 lengths/ })
    .click()
  await expect(page.getByText('Nothing here holds “cedar”.')).toBeVisible()
  await page.keyboard.press('Control+z')
  await expect(price(page, /^5\/4x6 western cedar No\.2, untreated, 16'/)).toContainText('$42.00')
})

test('the table is sorted by any of its columns, by keys too, and says which way', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price book').click()
  const heading = page.getByRole('columnheader', { name: 'Price', exact: true })
  const prices = async () =>
    (
      await page
        .getByRole('row')
        .getByRole('gridcell')
        .and(page.locator('[data-column="2"]'))
        .allTextContents()
    ).map((text) => Number(/\$([\d,.]+)/.exec(text)?.[1]?.replace(',', '')))
  const before = await prices()
  await price(page, /^2x4 Southern Pine/)
    .first()
    .focus()
  await page.keyboard.press('ArrowUp')
  await expect(heading.getByRole('button')).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(heading).toHaveAttribute('aria-sort', 'ascending')
  expect(await prices()).toEqual(before.toSorted((a, b) => a - b))
  await page.keyboard.press('Enter')
  await expect(heading).toHaveAttribute('aria-sort', 'descending')
  expect(await prices()).toEqual(before.toSorted((a, b) => b - a))
  await page.keyboard.press('Enter')
  await expect(heading).toHaveAttribute('aria-sort', 'none')
  expect(await prices()).toEqual(before)
})
