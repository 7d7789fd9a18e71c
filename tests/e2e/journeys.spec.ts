import { readFileSync } from 'node:fs'
import type { Locator, Page } from '@playwright/test'
import ExcelJS from 'exceljs'
import { expect, testAlone as test } from './program.ts'
import { dollars, figure, open, place, plan, saved, settled } from './window.ts'

/** How many checks fail, as the sill counts them. */
const failing = async (page: Page) =>
  Number(/▲\D*(\d+)/.exec((await figure(page, 'Checks').textContent()) ?? '')?.[1])

/** Goes on by Tab until a control has the focus. */
async function tabTo(page: Page, control: Locator, key = 'Tab'): Promise<void> {
  for (let presses = 0; presses < 90; presses += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press(key)
  }
  throw new Error(`${control} was not reached by ${key}`)
}

async function typeInto(page: Page, control: Locator, text: string): Promise<void> {
  await tabTo(page, control)
  await page.keyboard.press('ControlOrMeta+A')
  await page.keyboard.type(text)
}

test('a first job: five questions, checks read, sizes found, a margin set, the papers saved', async ({
  page,
  program,
}) => {
  test.setTimeout(240_000)
  await open(page, program.link)
  await page.keyboard.press('Control+Alt+n')
  const asked = page.getByRole('dialog', { name: 'New job: five questions' })
  await asked.getByRole('textbox', { name: 'Name' }).fill('Pine Court')
  await asked.getByRole('textbox', { name: 'Width' }).fill('16 ft')
  await asked.getByRole('textbox', { name: 'Depth', exact: true }).fill('12 ft')
  await asked.getByRole('textbox', { name: 'Height' }).fill('36 in')
  await asked.getByRole('textbox', { name: 'Frost depth' }).fill('36 in')
  await asked.getByRole('combobox', { name: 'Soil' }).selectOption('clay or silt')
  await asked.getByRole('textbox', { name: 'Snow load' }).fill('0')
  await asked.getByRole('button', { name: 'Make the deck' }).click()
  await expect(page.getByRole('button', { name: /^Job Pine Court/ })).toBeVisible()
  await expect(plan(page)).toHaveAccessibleName(/16'-0" along the house, 12'-0" deep/)

  await place(page, 'Frame').click()
  await settled(page)
  const panel = page.getByRole('region', { name: 'Sizes' })
  await panel.getByRole('button', { name: 'Size it' }).click()
  const use = panel.getByRole('button', { name: 'Use these sizes' })
  await expect(
    use.or(panel.getByText(/are the cheapest that pass|than the sizes as stated/)).first(),
  ).toBeVisible({ timeout: 60_000 })
  if (await use.isVisible()) await use.click()
  await settled(page)

  await place(page, 'Price').click()
  const margin = page.getByRole('textbox', { name: 'Margin', exact: true })
  await margin.fill('25 %')
  await margin.press('Enter')
  await settled(page)
  const cost = Number((await dollars(page, 'Cost')).replace(/[$,]/g, ''))
  const price = Number((await dollars(page, 'Price')).replace(/[$,]/g, ''))
  // a margin is a share of the price; both are shown in whole dollars
  expect(Math.abs(price - cost / 0.75)).toBeLessThan(2)

  await place(page, 'Papers').click()
  await page.getByLabel('Date on them').fill('2026-11-30')
  const [paper] = await Promise.all([
    page.waitForEvent('download', { timeout: 90_000 }),
    page.getByRole('button', { name: 'Save as PDF' }).click(),
  ])
  expect(
    readFileSync(await paper.path())
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-')
  await saved(page)
})

test('a joist that fails is told with its clause, found a size, and passes', async ({ page, program }) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  const size = page.locator('#field-frame-joists-size')
  await size.selectOption('2x6')
  await settled(page)
  expect(await failing(page)).toBeGreaterThan(0)
  const check = page.getByRole('listitem').filter({ hasText: 'Joist span' }).first()
  await check.locator('summary').click()
  await expect(check).toContainText('R507.6')

  const panel = page.getByRole('region', { name: 'Sizes' })
  await panel.getByRole('button', { name: 'Size it' }).click()
  await panel.getByRole('button', { name: 'Use these sizes' }).click({ timeout: 60_000 })
  await settled(page)
  expect(await failing(page)).toBe(0)
  await expect(size).not.toHaveValue('2x6')
  await page.keyboard.press('Control+z')
  await settled(page)
  await expect(size).toHaveValue('2x6')
})

test('by keyboard alone: a new job, a size changed, its price read, the workbook saved', async ({
  page,
  program,
}) => {
  test.setTimeout(240_000)
  await open(page, program.link)
  await page.keyboard.press('Control+Alt+n')
  const asked = page.getByRole('dialog', { name: 'New job: five questions' })
  await typeInto(page, asked.getByRole('textbox', { name: 'Name' }), 'By keys')
  await typeInto(page, asked.getByRole('textbox', { name: 'Width' }), '14 ft')
  await page.keyboard.press('Enter')
  await expect(asked).toHaveCount(0)
  await expect(plan(page)).toHaveAccessibleName(/14'-0" along the house/)

  await page.keyboard.press('Control+Alt+2')
  await expect(place(page, 'Frame')).toHaveAttribute('aria-current', 'page')
  const spacing = page.getByRole('textbox', { name: 'Spacing' })
  await typeInto(page, spacing, '12')
  await page.keyboard.press('Enter')
  await expect(spacing).toHaveValue('12 in')
  await settled(page)
  await expect(page.getByRole('button', { name: /^Undo “Joist spacing/ })).toBeEnabled()

  const cost = figure(page, 'Cost')
  await tabTo(page, cost, 'F6')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('complementary', { name: 'Why' })).toBeVisible()
  const shown = Number((await dollars(page, 'Cost')).replace(/[$,]/g, ''))

  await page.keyboard.press('Control+k')
  await expect(page.getByRole('textbox', { name: 'Find anything' })).toBeFocused()
  await page.keyboard.type('save the workbook')
  const [file] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.keyboard.press('Enter'),
  ])
  const bytes = readFileSync(await file.path())
  const book = new ExcelJS.Workbook()
  await book.xlsx.load(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  )
  const sums = book.worksheets.flatMap((sheet) =>
    (sheet.getSheetValues() as unknown[][]).flat().map((cell) => {
      const value = typeof cell === 'object' && cell !== null && 'result' in cell ? cell.result : cell
      return typeof value === 'number' ? Math.round(value) : null
    }),
  )
  expect(sums).toContain(shown)
})

test('a quote is sent, prices change after it: the job follows, the quote stays, and the difference is told', async ({
  page,
  program,
}) => {
  test.setTimeout(240_000)
  await open(page, program.link)
  const quoted = await dollars(page, 'Price')
  await place(page, 'Papers').click()
  await page.getByLabel('Date on them').fill('2026-03-31')
  const [quote] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: 'Number this quote and save its PDF' }).click(),
  ])
  const sent = readFileSync(await quote.path())

  await place(page, 'Price').click()
  await page.getByLabel('File of a list of prices').setInputFiles({
    name: 'yard.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('code;item;price\n30210-16;;46.98\n'),
  })
  const taking = page.getByRole('dialog', { name: 'Prices from a list' })
  await taking.getByLabel('Prices of').fill('2026-11-20')
  await taking.getByRole('button', { name: /^Take 1 price/ }).click()
  await expect(taking).toBeHidden()
  await expect.poll(() => dollars(page, 'Price')).not.toBe(quoted)
  await expect(page.getByText(/revision 1/i).first()).toBeVisible()

  await page.reload()
  await settled(page)
  await place(page, 'Papers').click()
  const list = page.getByRole('list', { name: 'Quotes sent' })
  // the list has the cents, the foot of the window whole dollars
  await expect
    .poll(async () => {
      const [, sum = ''] = /\$([\d,]+\.\d\d)/.exec((await list.textContent()) ?? '') ?? []
      return `$${Math.round(Number(sum.replaceAll(',', ''))).toLocaleString('en-US')}`
    })
    .toBe(quoted)
  const [again] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Revision 1 as it was sent' }).click(),
  ])
  expect(readFileSync(await again.path()).equals(sent)).toBe(true)
})
