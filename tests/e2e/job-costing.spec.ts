import type { Page } from '@playwright/test'
import { expect, test, testAlone } from './program.ts'
import { open, place, saved } from './window.ts'

const sheet = (page: Page) => page.getByRole('region', { name: 'Job costing' }).first()
const line = (page: Page, name: RegExp) =>
  page.getByRole('grid', { name: 'Lines of the estimate and what they took' }).getByRole('row', { name })
const HANGERS = /^Joist hanger for a 2x10, galvanised/
const JOISTS = /^Crown, cut, set and fasten joists/

async function begun(page: Page, link: string): Promise<void> {
  await open(page, link)
  await place(page, 'Price').click()
  await page.getByRole('radio', { name: 'Job costing' }).check({ force: true })
  await page.getByRole('button', { name: 'Begin the job on this estimate' }).click()
  await expect(sheet(page)).toContainText('Held against the estimate of that day')
}

testAlone(
  'purchases are written down by keys alone beside their lines, and each is one step that survives a restart',
  async ({ page, program }) => {
    await begun(page, program.link)
    await page.getByLabel('What', { exact: true }).focus()
    await page.keyboard.type('Joist hanger for a 2x10, galvanised')
    await page.keyboard.press('Tab')
    await page.keyboard.type('10')
    await page.keyboard.press('Enter')
    // nothing is taken without its sum, and the text stays
    await expect(page.getByRole('alert')).toHaveText(/What was paid is missing: write a sum such as \$62\.40/)
    await expect(page.getByLabel('Amount', { exact: true })).toBeFocused()
    await page.keyboard.type('25')
    await page.keyboard.press('Enter')
    await expect(page.getByLabel('What', { exact: true })).toBeFocused()
    // 17 at $2.39 estimated; 7 of them are open
    await expect(line(page, HANGERS)).toContainText('$40.63')
    await expect(line(page, HANGERS)).toContainText('$25.00')
    await expect(line(page, HANGERS)).toContainText('$16.73')
    await page.keyboard.type('Tarp')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    await page.keyboard.type('19.99')
    await page.keyboard.press('Enter')
    await expect(line(page, /^Tarp/)).toContainText('$19.99')

    await saved(page)
    await program.kill()
    await program.start()
    await open(page, program.link)
    await place(page, 'Price').click()
    await page.getByRole('radio', { name: 'Job costing' }).check({ force: true })
    await expect(page.getByText('2 purchases, $44.99')).toBeVisible()
    await page.keyboard.press('Control+z')
    await expect(page.getByText('1 purchase, $25.00')).toBeVisible()
    await expect(line(page, HANGERS)).toContainText('$16.73')
  },
)

test('an entry is changed in its place and taken away, and a line that is done leaves nothing open', async ({
  page,
  program,
}) => {
  await begun(page, program.link)
  await line(page, HANGERS).getByRole('gridcell').first().click()
  await expect(page.getByLabel('Quantity', { exact: true })).toBeFocused()
  await page.getByLabel('Quantity', { exact: true }).fill('17')
  await page.getByLabel('Amount', { exact: true }).fill('50')
  await page.keyboard.press('Enter')
  await expect(line(page, HANGERS)).toContainText('+$9.37, +23.1 %')
  await page.getByRole('button', { name: /^Change Joist hanger/ }).click()
  await expect(page.getByLabel('Amount', { exact: true })).toHaveValue('50')
  await page.getByLabel('Amount', { exact: true }).fill('40.63')
  await page.keyboard.press('Enter')
  await expect(page.getByText('1 purchase, $40.63')).toBeVisible()
  await page.getByRole('button', { name: /^Take away Joist hanger/ }).click()
  await expect(line(page, HANGERS)).toContainText('$40.63')
  const done = page.getByRole('button', { name: 'Joist hanger for a 2x10, galvanised: done' })
  await done.click()
  await expect(done).toHaveAttribute('aria-pressed', 'true')
  await expect(line(page, HANGERS).getByRole('gridcell').nth(4)).toHaveText('')
})

test('a finished job proposes the rate of a task; it is taken into the book by name and taken back', async ({
  page,
  program,
}) => {
  await begun(page, program.link)
  await page.getByLabel('Task', { exact: true }).fill('Crown, cut, set and fasten joists')
  await page.getByLabel('Worker hours', { exact: true }).fill('20')
  await page.keyboard.press('Enter')
  await expect(line(page, JOISTS)).toContainText('20 h')
  await expect(page.getByText('Rates that finished jobs propose')).toBeHidden()
  await page.getByRole('button', { name: 'The job is finished' }).click()
  await expect(sheet(page)).toContainText('have nothing written down: they count as nothing paid')
  const rates = page.getByRole('table', { name: 'Rates proposed by finished jobs' })
  await expect(rates).toContainText('1 job')
  const inBook = await rates.getByRole('row', { name: JOISTS }).getByRole('cell').nth(2).textContent()
  await page.getByRole('button', { name: /^Take the rate of Crown/ }).click()
  await expect(rates).toContainText('taken')
  expect(await rates.getByRole('row', { name: JOISTS }).getByRole('cell').nth(2).textContent()).not.toBe(
    inBook,
  )
  // what the job is held against stays as it was
  const estimated = page.getByRole('table', { name: /^Estimated, so far/ })
  await expect(estimated.getByRole('row', { name: /^Labour, 20 of/ })).toBeVisible()
  await sheet(page)
    .getByRole('button', { name: /^Take back “Rate of/ })
    .click()
  await expect(rates.getByRole('row', { name: JOISTS }).getByRole('cell').nth(2)).toHaveText(inBook ?? '')
})

test('boards that were unusable and left are counted by line', async ({ page, program }) => {
  await begun(page, program.link)
  const unusable = page.getByLabel('2x10 Southern Pine No.2, treated, 16 ft: boards unusable')
  await unusable.fill('one')
  await unusable.press('Enter')
  await expect(page.getByText('“one” is no count of boards')).toBeVisible()
  await unusable.fill('1')
  await unusable.press('Enter')
  await expect(page.getByText(/^0 bought, 1 unusable, 0 left\./)).toBeVisible()
})

test('a board culled at the saw is told where unusable boards are counted, and is counted by one button and one step', async ({
  page,
  program,
}) => {
  await begun(page, program.link)
  await place(page, 'Boards').click()
  await page.getByRole('button', { name: 'At the saw' }).click()
  const posts = page.getByRole('region', { name: /^6x6 Southern Pine/ })
  await posts.getByRole('button', { name: 'Wrong? Board 1' }).click()
  await posts.getByRole('button', { name: 'Cull the whole board' }).click()
  await place(page, 'Price').click()
  await expect(
    page.getByText(/^Marked as unusable at the saw: 1 of 6x6 Southern Pine No\.2, treated, 8 ft\./),
  ).toBeVisible()
  await page.getByRole('button', { name: 'Count them here' }).click()
  const unusable = page.getByLabel('6x6 Southern Pine No.2, treated, 8 ft: boards unusable')
  await expect(unusable).toHaveValue('1')
  await expect(page.getByRole('button', { name: 'Count them here' })).toHaveCount(0)
  await page.keyboard.press('Control+z')
  await expect(unusable).toHaveValue('')
})

test('hours booked on all work of a stage are shared by its tasks', async ({ page, program }) => {
  await begun(page, program.link)
  await page.getByLabel('Task', { exact: true }).fill('All work: frame')
  await page.getByLabel('Worker hours', { exact: true }).fill('30')
  await page.keyboard.press('Enter')
  await expect(line(page, JOISTS)).toContainText(/\d h/)
  await expect(page.getByText('1 entry, 30 worker hours')).toBeVisible()
  const sums = page.getByRole('table', { name: /^Estimated, so far/ })
  await expect(sums.getByRole('row', { name: /^Labour, 30 of/ })).toBeVisible()
})
