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

  // what goes to the permit office has no costs in it
  await page.getByRole('button', { name: 'Only the sheets for the permit office' }).click()
  await expect(page.getByRole('checkbox', { name: 'Checks for the plan reviewer' })).toBeChecked()
  await expect(page.getByRole('checkbox', { name: 'Cost breakdown, internal' })).not.toBeChecked()

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

test('the order is saved as text to paste and as a table, with the same sum', async ({ page, program }) => {
  test.setTimeout(120_000)
  await open(page, program.link)
  await place(page, 'Papers').click()
  const saved = async (name: string) => {
    const button = page.getByRole('button', { name })
    await expect(button).toBeEnabled({ timeout: 60_000 })
    const [download] = await Promise.all([page.waitForEvent('download'), button.click()])
    return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') }
  }
  const text = await saved('Save it as text')
  expect(text.name).toMatch(/ order\.txt$/)
  const sum = Number(
    /All of it by this list, before tax: \$([\d,.]+)/.exec(text.text)?.[1]?.replaceAll(',', ''),
  )
  const table = await saved('Save it as CSV')
  expect(table.name).toMatch(/ order\.csv$/)
  // the amounts of all lines, which are dollars with two places at a line's end or before what may come instead
  const amounts = [...table.text.matchAll(/\$[\d,]+\.\d+"?,"?\$([\d,]+\.\d\d)|,"?\$([\d,]+\.\d\d)"?\r?$/gm)]
  const all = amounts.reduce(
    (cents, [, board, good]) => cents + Math.round(Number((board ?? good ?? '').replaceAll(',', '')) * 100),
    0,
  )
  expect(all).toBe(Math.round(sum * 100))
})

test('a quote with an option is sent, kept, and told apart from what the job became since', async ({
  page,
  program,
}) => {
  test.setTimeout(180_000)
  await open(page, program.link)
  await place(page, 'Papers').click()
  await page.getByRole('button', { name: 'None', exact: true }).click()
  await page.getByRole('checkbox', { name: 'Quote', exact: true }).check()

  await page.getByText('Offer an option').click()
  await page.getByRole('textbox', { name: 'What it is called' }).fill('Thicker boards')
  await page.getByRole('combobox', { name: 'What changes' }).selectOption('decking.size')
  await page.getByRole('combobox', { name: 'What it would be' }).selectOption('2x6')
  await page.getByRole('button', { name: 'Offer it' }).click()
  const options = page.getByRole('list', { name: 'Options' })
  await expect(options.getByText('Thicker boards')).toBeVisible()
  await expect(options.getByText(/^[+-]?\$[\d,.]+$/)).toBeVisible({ timeout: 60_000 })

  const send = page.getByRole('button', { name: 'Number this quote and save its PDF' })
  await expect(send).toBeDisabled()
  await page.getByLabel('Date on them').fill('2026-03-31')
  const [first] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), send.click()])
  expect(first.suggestedFilename()).toBe('quote 1 revision 1.pdf')
  const sent = readFileSync(await first.path())
  const list = page.getByRole('list', { name: 'Quotes sent' })
  await expect(list.getByText('Quote 1, revision 1')).toBeVisible()

  await page.getByRole('button', { name: 'Take the option Thicker boards off the quote' }).click()
  await expect(page.getByRole('heading', { name: 'Changed since revision 1' })).toBeVisible({
    timeout: 60_000,
  })
  const [again] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Revision 1 as it was sent' }).click(),
  ])
  expect(readFileSync(await again.path()).equals(sent)).toBe(true)
})
