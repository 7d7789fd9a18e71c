import { readFileSync } from 'node:fs'
import { expect, test } from './program.ts'
import { open, place } from './window.ts'

const pageOf = (title: string) => new RegExp(`^Page \\d+ of \\d+: ${title}$`)

test('the papers are shown as they will be printed, follow the choice of sheets and paper, and are saved as a PDF', async ({
  page,
  program,
}) => {
  // the set is laid out and shaped anew several times, on whatever machine this is
  test.setTimeout(180_000)
  await open(page, program.link)
  await place(page, 'Papers').click()
  await expect(page.getByRole('img', { name: pageOf('Framing plan') }).first()).toBeVisible({
    timeout: 60_000,
  })

  await page.getByRole('button', { name: 'None', exact: true }).click()
  await expect(page.getByText('No sheet is chosen')).toBeVisible()
  await page.getByRole('checkbox', { name: 'Quote' }).check()
  await page.getByRole('textbox', { name: 'Revision' }).fill('C')
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Plumb & <Level>')
  await page.getByRole('textbox', { name: 'Name', exact: true }).blur()
  const quote = page.getByRole('img', { name: 'Page 1 of 1: Quote' })
  await expect(quote).toBeVisible({ timeout: 30_000 })
  await expect(quote.getByText('Plumb & <Level>').first()).toBeVisible()
  await expect(quote.getByText(/revision C/).first()).toBeVisible()

  await page.getByRole('combobox', { name: 'Paper' }).selectOption('a4')
  await expect(quote.getByText('Page 1 of 1 · A4')).toBeVisible({ timeout: 30_000 })

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as PDF' }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/heron.*\.pdf$/i)
  expect(
    readFileSync(await download.path())
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-')
})
