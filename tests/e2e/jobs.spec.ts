import AxeBuilder from '@axe-core/playwright'
import { expect, test, testAlone } from './program.ts'
import { flag, open, place, saved, settled } from './window.ts'

const allJobs = async (page: Parameters<typeof open>[0]) => {
  await page.keyboard.press('Control+Alt+o')
  const dialog = page.getByRole('dialog', { name: 'Jobs' })
  await expect(dialog).toBeVisible()
  return dialog
}

async function widen(page: Parameters<typeof open>[0], width: string) {
  await flag(page).fill(width)
  await flag(page).press('Enter')
  await settled(page)
  await saved(page)
}

testAlone('undo and redo reach back over a power cut', async ({ page, program }) => {
  await open(page, program.link)
  const was = await flag(page).inputValue()
  await widen(page, '18 ft')
  await widen(page, '20 ft')
  await page.keyboard.press('Control+z')
  await expect(flag(page)).toHaveValue('18\'-0"')
  await settled(page)
  await saved(page)
  await program.kill()
  await program.start()
  await open(page, program.link)
  await expect(flag(page)).toHaveValue('18\'-0"')
  await page.keyboard.press('Control+y')
  await expect(flag(page)).toHaveValue('20\'-0"')
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+z')
  await expect(flag(page)).toHaveValue(was)
})

test('a job is copied, taken off the list, found off it and brought back', async ({ page, program }) => {
  await open(page, program.link)
  const dialog = await allJobs(page)
  await dialog.getByRole('button', { name: /^Copy / }).click()
  await expect(dialog).toBeHidden()
  await settled(page)
  await expect(page).toHaveTitle(/, copy · Kerfwright$/)
  const again = await allJobs(page)
  await again.getByLabel('Find a job').fill('copy')
  await expect(again.getByRole('list', { name: 'Jobs', exact: true }).getByRole('listitem')).toHaveCount(1)
  await again.getByRole('button', { name: /^Take off the list: .*, copy$/ }).click()
  await expect(again.getByText('No job’s name holds “copy”.')).toBeVisible()
  await again.getByText('Off the list (1)').click()
  expect((await new AxeBuilder({ page }).include('[role=dialog]').analyze()).violations).toEqual([])
  await again.getByRole('button', { name: /^Bring back / }).click()
  await expect(again.getByRole('list', { name: 'Jobs', exact: true }).getByRole('listitem')).toHaveCount(1)
})

test('an earlier state comes back as one step that can be undone', async ({ page, program }) => {
  await open(page, program.link)
  const was = await flag(page).inputValue()
  await widen(page, '18 ft')
  const dialog = await allJobs(page)
  await dialog.getByText('Earlier states of the open job').click()
  await dialog
    .getByRole('button', { name: /^Go back to / })
    .last()
    .click()
  await expect(flag(page)).toHaveValue(was)
  await page.keyboard.press('Control+z')
  await expect(flag(page)).toHaveValue('18\'-0"')
})

test('everything is saved as one file and taken in by an empty program; a bad file changes nothing', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await widen(page, '18 ft')
  const dialog = await allJobs(page)
  const download = page.waitForEvent('download')
  await dialog.getByRole('button', { name: 'Save everything as one file' }).click()
  const path = await (await download).path()
  await dialog.getByLabel('File of everything').setInputFiles({
    name: 'bad.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"kind": "something else"}'),
  })
  await expect(dialog.getByRole('alert')).toContainText('Nothing was taken from the file')
  await dialog.getByLabel('File of everything').setInputFiles(path)
  await expect(
    page.getByText(/^Taken in: 0 jobs, 0 quotes, 0 offcuts.* 1 were here already\.$/),
  ).toBeVisible()
})

test('one job is saved as a file and opened again as a job of its own; a bad file is told and changes nothing', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await widen(page, '18 ft')
  const download = page.waitForEvent('download')
  await page.keyboard.press('Control+Shift+s')
  const saved = await download
  expect(saved.suggestedFilename()).toMatch(/\.kerfwright$/)
  const dialog = await allJobs(page)
  await dialog.getByLabel('Job file').setInputFiles({
    name: 'bad.kerfwright',
    mimeType: 'application/json',
    buffer: Buffer.from('{ "size": { "width": "wide" } }'),
  })
  await expect(dialog.getByRole('alert')).toContainText('Line 1')
  await dialog.getByLabel('Job file').setInputFiles(await saved.path())
  await expect(dialog).toHaveCount(0)
  await expect(flag(page)).toHaveValue('18\'-0"')
})

test('jobs, members and boards stand in the order that is asked for', async ({ page, program }) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  await page.getByText(/^Members, posts and footings/).click()
  const members = page.getByRole('listbox', { name: 'Members, posts and footings' }).getByRole('option')
  await expect(members.first()).toContainText('Footing 1')
  await page.getByLabel('Members, posts and footings: Order').selectOption('longest first')
  // ledger and rim are the longest: 23 ft 6 in
  await expect(members.first()).toContainText(`23'-`)

  await place(page, 'Boards').click()
  await settled(page)
  const strips = page.getByRole('img', { name: /^Board \d/ })
  // by product and length, the ledger's board first
  await expect(strips.first()).toHaveAccessibleName(/, 24 ft:/)
  const left = async () =>
    (await strips.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''))).slice(0, 2)
  const before = await left()
  await page.getByLabel('Boards: Order').selectOption('most left over first')
  await expect.poll(left).not.toEqual(before)

  const dialog = await allJobs(page)
  await dialog
    .getByRole('button', { name: /^Copy / })
    .first()
    .click()
  await expect(dialog).toHaveCount(0)
  const again = await allJobs(page)
  const names = () =>
    again.getByRole('list', { name: 'Jobs', exact: true }).locator('.jobs-name').allTextContents()
  await expect.poll(async () => (await names()).length).toBe(2)
  const saved = await names()
  await again.getByLabel('Jobs: Order').selectOption('saved longest ago, first')
  expect(await names()).toEqual(saved.toReversed())
  await again.getByLabel('Jobs: Order').selectOption('by name')
  expect(await names()).toEqual(saved.toSorted())
})
