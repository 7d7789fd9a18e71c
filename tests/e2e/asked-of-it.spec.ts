import { expect, test } from './program.ts'
import { figure, flag, open, place, settled } from './window.ts'

test('a deck just over a stock length is told where boards are chosen too, and the size that drops it is one click', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await flag(page).fill(`12'-1"`)
  await flag(page).press('Enter')
  await settled(page)
  await place(page, 'Boards').click()
  const fields = page.getByRole('complementary', { name: 'Fields' })
  const drop = fields.getByRole('button', { name: /^Width \d+'/ }).first()
  await expect(drop).toBeVisible()
  // inches over, and what they cost in dollars
  await expect(fields.getByText(/over|longer/).first()).toContainText(/\$\d/)
  const smaller = /\d+'-.*$/.exec((await drop.textContent()) ?? '')?.[0] ?? 'no size'
  await drop.click()
  await settled(page)
  await expect(flag(page)).toHaveValue(smaller)
  await page.keyboard.press('Control+z')
  await settled(page)
  await expect(flag(page)).toHaveValue(`12'-1"`)
})

test('what builders forget is each priced or said not to be included', async ({ page, program }) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  const left = page.getByRole('region', { name: 'Left out?' })
  for (const topic of [
    'Stairs',
    'Guard',
    'Taking away',
    'Hauling',
    'Delivery',
    'Permit',
    'Flashing',
    'Fasteners',
    'Hire',
    'Clean-up',
  ])
    await expect(left.getByText(topic, { exact: true })).toBeVisible()
  await expect(left).toContainText('not included')
  await expect(left).toContainText(/\$\d/)
})

test('spares are boards of a size and a length, chosen for a chance of finishing, and pieces may run wild', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Boards').click()
  await page.locator('#field-cutting-unusableShare').fill('8 %')
  await page.locator('#field-cutting-unusableShare').press('Enter')
  await settled(page)
  await place(page, 'Price').click()
  const lines = page.getByRole('grid', { name: 'Lines of the cost by group' })
  await expect(lines.getByRole('row', { name: /^Spare .*, \d+ ft/ }).first()).toBeVisible()
  await place(page, 'Boards').click()
  await page.locator('#field-cutting-joistsWild').fill('2 in')
  await page.locator('#field-cutting-joistsWild').press('Enter')
  await settled(page)
  await expect(page.locator('#field-cutting-joistsWild')).toHaveClass('stated')
})

test('a margin is told as a markup too, apart from the overhead', async ({ page, program }) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  const totals = page.getByRole('table', { name: 'From cost to price' })
  // a 30 % margin is 30 ÷ 70 of the cost
  await expect(
    totals.getByRole('row', { name: /^Price, 30 % margin, which is 42\.9 % markup/ }),
  ).toBeVisible()
  await expect(totals.getByRole('row', { name: /^Overhead/ })).toBeVisible()
})

test('materials are priced side by side, each against the deck as it is, and one is taken as one step', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  await page.getByRole('button', { name: 'Price 4 materials' }).click()
  const table = page.getByRole('table', { name: 'Materials and their price' })
  await expect(table).not.toContainText('working it out', { timeout: 60_000 })
  const row = table.getByRole('row', { name: /^2x6 Southern Pine/ })
  // told to the cent here, in whole dollars at the foot of the window
  const told = (await row.getByRole('cell').first().textContent()) ?? ''
  const dollars = Math.round(Number(told.replace(/[$,]/g, '')))
  const price = `$${dollars.toLocaleString('en-US')}`
  await row.getByRole('button', { name: /^Take 2x6/ }).click()
  await settled(page)
  await expect(figure(page, 'Price')).toContainText(price)
  await page.keyboard.press('Control+z')
  await settled(page)
  await expect(figure(page, 'Price')).not.toContainText(price)
})

test('what is missing for the permit is named before printing, and whom it is built for stands on the quote', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Papers').click()
  await expect(page.getByText(/^Missing: a site plan/)).toBeVisible()
  await expect(page.getByText(/^Missing: the address of the site/)).toBeVisible()
  // a permit office asks for 1/4 in to the foot
  await page.getByLabel('Scale of drawings').selectOption({ label: '1/8 in = 1 ft' })
  await expect(page.getByText(/^Smaller than 1\/4 in = 1 ft .*the framing plan \(1:96\)/)).toBeVisible()
  await page.getByLabel('Scale of drawings').selectOption({ label: 'as large as fits' })
  await place(page, 'Site').click()
  await page.getByLabel('Customer', { exact: true }).fill('Ida Berg')
  await page.getByRole('textbox', { name: 'Address of the site' }).fill('7 Heron Lane, Ashbrook')
  await page.getByRole('textbox', { name: 'Address of the site' }).press('Enter')
  await settled(page)
  await place(page, 'Papers').click()
  await expect(page.getByText(/^Missing: the address of the site/)).toBeHidden()
  await page.getByLabel('Date on them').fill('2026-03-31')
  const save = page.getByRole('button', { name: 'Number this quote and save its PDF' })
  await Promise.all([page.waitForEvent('download'), save.click()])
  await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Revision 1 as it was sent' }).click(),
  ])
  await expect(page.getByText(/^Saved: .+\.pdf$/)).toBeVisible()
})

test('decking laid wet is forecast beside decking laid dry: courses and the gap that opens', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  await page.getByText('Decking', { exact: true }).click()
  await expect(
    page.getByText(/^Dry boards with gaps of .+: \d+ courses\. Wet from treatment and tight: \d+ courses/),
  ).toBeVisible()
})
