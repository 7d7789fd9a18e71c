import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { expect, test, testAlone } from './program.ts'

const pieces = (page: Page) => page.getByRole('textbox', { name: 'Pieces' })
const stock = (page: Page) => page.getByRole('textbox', { name: /^Stock/ })
const plan = (page: Page) => page.getByRole('button', { name: 'Plan the cuts' })

async function open(page: Page, link: string) {
  await page.goto(link)
  await goTo(page)
}

async function goTo(page: Page) {
  // the work places move aside when the job's name arrives
  await page.getByRole('button', { name: /^Job .+: other jobs$/ }).waitFor()
  await page
    .getByRole('navigation', { name: 'Work places' })
    .getByRole('button', { name: 'Cut list' })
    .click()
  await expect(pieces(page)).toBeVisible()
}

test('pasted cells are planned from the stock given, drawn, and saved as CSV without a formula', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await expect(plan(page)).toBeDisabled()
  await pieces(page).fill(`Qty\tLength\tMark\n2\t8 ft\t=A1\n3\t12'-6"\tJ1\n`)
  await stock(page).fill('Length,Price\n14 ft,$10\n16 ft,$11.50\n')
  await plan(page).click()
  // by hand: with the kerf two 8 ft pieces do not fit a 16, so every piece takes a 14
  await expect(page.getByText('$50.00')).toHaveCount(2)
  await expect(page.getByText('Proven: no order of these lengths costs less.')).toBeVisible()
  await expect(page.getByRole('img', { name: /^Board .*: J1 12'-6"; left over 1'-5 7\/8"/ })).toBeVisible()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save order and pieces as CSV' }).click()
  const text = readFileSync(await (await download).path(), 'utf8')
  expect(text).toContain("'=A1")
  expect(text).not.toMatch(/(^|[,"\n])=/)

  await page.getByRole('textbox', { name: 'Kerf' }).fill('0')
  await expect(page.getByText('The list has changed since this plan.')).toBeVisible()
  await plan(page).click()
  await expect(page.getByText('$41.50')).toBeVisible()
})

test('a bad row is told with row and column while it is typed, and nothing is planned of it', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await pieces(page).fill('Qty,Length,Product\n4,9 ft,2x6\n3,12 fot,2x6\n0,3 ft,2x6\n')
  await expect(
    page.getByText(/row 3, column B \(Length\): "12 fot": "fot" is not a unit of length/),
  ).toBeVisible()
  await expect(page.getByText(/row 4, column A \(Qty\): there are 0 of them/)).toBeVisible()
  await plan(page).click()
  await expect(page.getByRole('heading', { name: '2x6' })).toHaveCount(0)
  await pieces(page).fill('Qty,Length,Product\n4,9 ft,2x6\n')
  await plan(page).click()
  await expect(page.getByRole('heading', { name: '2x6' })).toBeVisible()
  await expect(page.getByText(/they are invented/)).toBeVisible()
})

test('columns that cannot be told are named by hand, and what was typed stays when one looks elsewhere', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await pieces(page).fill('4,96,2x6\n2,48,2x6\n')
  await expect(page.getByText(/no column can be told to hold the lengths/)).toBeVisible()
  await page.getByRole('combobox', { name: 'Column A holds' }).selectOption('quantity')
  await page.getByRole('combobox', { name: 'Column B holds' }).selectOption('length')
  await expect(page.getByText(/no column can be told/)).toHaveCount(0)
  const places = page.getByRole('navigation', { name: 'Work places' })
  await places.getByRole('button', { name: 'Frame' }).click()
  await places.getByRole('button', { name: 'Cut list' }).click()
  await expect(pieces(page)).toHaveValue('4,96,2x6\n2,48,2x6\n')
  await plan(page).click()
  await expect(page.getByRole('img', { name: /^Board / }).first()).toBeVisible()
})

test('a file is taken, and one that is no text is refused in a sentence', async ({ page, program }) => {
  await open(page, program.link)
  const file = page.getByLabel('File of: Pieces')
  await file.setInputFiles({ name: 'list.csv', mimeType: 'text/csv', buffer: Buffer.from('Length\n9 ft\n') })
  await expect(pieces(page)).toHaveValue('Length\n9 ft\n')
  const bytes = Buffer.from([0xff, 0xfe, 0x00])
  await file.setInputFiles({ name: 'list.xlsx', mimeType: 'application/octet-stream', buffer: bytes })
  await expect(page.getByText('list.xlsx is not text in UTF-8.')).toBeVisible()
  await expect(pieces(page)).toHaveValue('Length\n9 ft\n')
})

test('on paper stand the order and the boards, not the inputs nor the deck', async ({ page, program }) => {
  await open(page, program.link)
  await pieces(page).fill('Length,Product\n9 ft,2x6\n')
  await plan(page).click()
  const board = page.getByRole('img', { name: /^Board 1/ })
  await expect(board).toBeVisible()
  await page.emulateMedia({ media: 'print' })
  await expect(board).toBeVisible()
  await expect(page.getByText('Proven: no order of these lengths costs less.')).toBeVisible()
  await expect(pieces(page)).toBeHidden()
  await expect(page.getByText('Heron Lane').filter({ visible: true })).toHaveCount(0)
})

testAlone(
  'the list stays over a reload and a restart, with packs and price breaks in its stock',
  async ({ page, program }) => {
    await open(page, program.link)
    await pieces(page).fill('Qty,Length\n5,9 ft\n')
    await stock(page).fill('Length,Price,Pack,Break from,Break price\n10 ft,6,4,8,4\n')
    await plan(page).click()
    // by hand: five boards come in two packs of four, and from eight on each costs $4
    await expect(page.getByText('$32.00').first()).toBeVisible()
    await page.waitForTimeout(1_000)
    await page.reload()
    await goTo(page)
    await expect(pieces(page)).toHaveValue('Qty,Length\n5,9 ft\n')
    await program.kill()
    await program.start()
    await open(page, program.link)
    await expect(stock(page)).toHaveValue(/Break price/)
    await stock(page).fill('Length,Price,Break from\n10 ft,6,8\n')
    await expect(page.getByText(/row 2, column C \(Break from\): .*no such price/)).toBeVisible()
  },
)

test('a long plan shows how far it is, and stopped keeps the best so far', async ({ page, program }) => {
  await open(page, program.link)
  // lengths with little in common keep the proof busy
  const rows = Array.from({ length: 160 }, (_, n) => `${3 + (n % 4)},${31.25 + ((n * 7919) % 1009) / 8}`)
  await pieces(page).fill(`Qty,Length\n${rows.join('\n')}\n`)
  await stock(page).fill(
    'Length,Price\n8 ft,7.13\n10 ft,9.29\n12 ft,11.41\n14 ft,13.97\n16 ft,15.83\n20 ft,21.11\n',
  )
  await plan(page).click()
  const list = page.getByRole('main')
  const stop = list.getByRole('button', { name: 'Stop here' })
  await expect(stop).toBeVisible({ timeout: 30_000 })
  await expect(list.getByText(/best \$[\d,.]+, at least \$[\d,.]+, [\d.]+ % apart/)).toBeVisible()
  await stop.click()
  await expect(page.getByText(/^Stopped before its proof: up to \$/)).toBeVisible()
})
