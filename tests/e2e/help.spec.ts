import { axeFaults } from '../a11y/axe.ts'
import { expect, test, testAlone } from './program.ts'
import { open, place } from './window.ts'

test('the help is there by F1 without a network, is found by words, and leads to the place and the field', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const asked: string[] = []
  page.on('request', (request) => {
    if (new URL(request.url()).origin !== new URL(program.link).origin) asked.push(request.url())
  })
  await page.keyboard.press('F1')
  const help = page.getByRole('dialog', { name: 'Help' })
  await expect(help.getByRole('searchbox', { name: 'Find in the help' })).toBeFocused()
  await page.keyboard.type('diagonals')
  await expect(help.getByRole('list', { name: 'Topics' }).getByRole('listitem')).toHaveCount(1)
  await help.getByRole('button', { name: /^Ground:/ }).click()
  await expect(help.getByRole('heading', { name: /^Ground:/ })).toBeVisible()
  await help.getByRole('button', { name: 'Go there' }).click()
  await expect(place(page, 'Ground')).toHaveAttribute('aria-current', 'page')

  await page.keyboard.press('F1')
  await help.getByRole('searchbox').fill('frost depth told')
  expect(await axeFaults(page, { within: '[role=dialog]' })).toEqual([])
  await help.getByRole('button', { name: 'Frost depth told by' }).click()
  await expect(page.getByRole('textbox', { name: 'Frost depth told by' })).toBeFocused()

  await page.keyboard.press('F1')
  await help.getByRole('searchbox').fill('submarine')
  await expect(help.getByText('Nothing in the help speaks of “submarine”.')).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(help).toHaveCount(0)
  expect(asked, 'nothing was asked of anybody else').toEqual([])
})

test('About tells version, editions and licence, and copies details in which nobody is named', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.keyboard.press('Control+k')
  await page.getByPlaceholder('A command, a field, a member').fill('about kerf')
  await page.keyboard.press('Enter')
  const help = page.getByRole('dialog', { name: 'Help' })
  await expect(help).toContainText(/Kerfwright \d+\.\d+\.\d+/)
  await expect(help).toContainText('IRC 2021')
  await expect(help).toContainText('GNU General Public License, version 3')
  const details = help.getByRole('textbox', { name: 'Details for a report' })
  await expect(details).toHaveValue(/\d+ members, 4 posts/)
  await expect(details).not.toHaveValue(/Heron|\$/)
  await help.getByRole('button', { name: 'Copy the details' }).click()
  await expect(help.getByText('Copied.')).toBeVisible()
})

testAlone(
  'each work place says what it is for, to an owner with dangers and steps, and is told to stop for good',
  async ({ page, program }) => {
    await open(page, program.link)
    const note = page.getByRole('complementary', { name: 'What this place is for' })
    await place(page, 'Ground').click()
    await expect(note).toContainText('Footings and layout.')
    await place(page, 'Price').click()
    await page.getByRole('combobox', { name: 'Who builds' }).selectOption('owner')
    await expect(note).toContainText('Step 5 of 6')
    await place(page, 'Ground').click()
    await expect(note).toContainText('do not pour before')
    await note.getByRole('button', { name: 'Hide these notes' }).click()
    await expect(note).toHaveCount(0)
    // kept with the program: the next start has another address
    await page.waitForResponse((answer) => answer.request().postData()?.includes('"window.keep"') ?? false)
    await program.kill()
    await program.start()
    await open(page, program.link)
    await place(page, 'Ground').click()
    await expect(note).toHaveCount(0)
  },
)
