import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expect, test } from './program.ts'
import { dollars, open, place, settled } from './window.ts'

const book = (page: Page) => page.getByRole('region', { name: 'Price book' })

/** The prices in use, as the file that the window saves. */
async function savedFile(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    book(page).getByRole('button', { name: 'Save as a file to edit' }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/^prices \d{4}-\d\d-\d\d\.json$/)
  return readFileSync(await download.path(), 'utf8')
}

async function give(page: Page, text: string): Promise<void> {
  const file = { name: 'yard.json', mimeType: 'application/json', buffer: Buffer.from(text) }
  await page.getByLabel('File of a price book').setInputFiles(file)
}

test('a price book is saved, changed and taken: the price follows, stays after a reload, and goes back', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  await expect(book(page)).toContainText('Sample prices (invented)')
  await expect(book(page)).toContainText('They are invented')
  const before = await dollars(page, 'Price')
  const text = (await savedFile(page))
    .replace('"name": "Sample prices (invented)"', '"name": "Prices of the yard"')
    .replace(/"date": "[^"]*"/, '"date": "2020-02-01"')
    .replace('"invented": true', '"invented": false')
    .replace('"rate": "$60.00"', '"rate": "$75.00"')
  await give(page, text)
  await expect(book(page)).toContainText('Prices of the yard')
  await expect(book(page)).toContainText('older than 60 days')
  await expect(book(page)).not.toContainText('They are invented')
  await settled(page)
  await expect(page.getByRole('region', { name: 'Lines of the cost' })).toContainText('$75.00')
  const after = await dollars(page, 'Price')
  expect(Number(after.replace(/\D/g, ''))).toBeGreaterThan(Number(before.replace(/\D/g, '')))

  await page.reload()
  await settled(page)
  expect(await dollars(page, 'Price')).toBe(after)
  await place(page, 'Price').click()
  expect(await savedFile(page)).toBe(text)
  await book(page).getByRole('button', { name: 'Use the sample prices' }).click()
  await expect(book(page)).toContainText('Sample prices (invented)')
  await settled(page)
  expect(await dollars(page, 'Price')).toBe(before)
})

test('a faulty price book shows every fault with its place and changes nothing', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  const before = await dollars(page, 'Price')
  const text = (await savedFile(page))
    .replace('"supplier"', '"suplier"')
    .replace('"rate": "$60.00"', '"rate": "sixty"')
    .replace('"crew": 2', '"crew": "two"')
  await give(page, text)
  const told = book(page).getByRole('alert')
  await expect(told).toContainText('The file was not taken, and the prices are as they were.')
  for (const words of ['"suplier"', '"rate": "sixty"', '"crew": "two"']) {
    const line = text.slice(0, text.indexOf(words)).split('\n').length
    await expect(told).toContainText(`Line ${line}, column`)
  }
  await expect(book(page)).toContainText('Sample prices (invented)')
  await settled(page)
  expect(await dollars(page, 'Price')).toBe(before)
  await give(page, await savedFile(page))
  await expect(told).toHaveCount(0)
})
