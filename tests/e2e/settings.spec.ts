import type { Page } from '@playwright/test'
import { axeFaults } from '../a11y/axe.ts'
import { expect, test, testAlone } from './program.ts'
import { flag, open, place } from './window.ts'

const kept = (page: Page) =>
  page.waitForResponse((answer) => answer.request().postData()?.includes('"window.keep"') ?? false)

testAlone(
  'light or dark, the way of looking at the deck and the template of new jobs are there after a restart',
  async ({ page, program }) => {
    await open(page, program.link)
    await page.keyboard.press('Control+,')
    const settings = page.getByRole('dialog', { name: 'Settings' })
    await settings.getByRole('combobox', { name: 'Light or dark' }).selectOption('dark')
    await settings
      .getByRole('combobox', { name: 'New jobs start from' })
      .selectOption({ label: 'Heron Lane' })
    await expect(page.locator('html')).toHaveAttribute('data-mantine-color-scheme', 'dark')
    expect(await axeFaults(page, { within: '[role=dialog]' })).toEqual([])
    await page.keyboard.press('Escape')
    await expect(settings).toHaveCount(0)
    await page.getByRole('radio', { name: 'Solid' }).check()
    await kept(page)
    await program.kill()
    await program.start()

    await open(page, program.link)
    await expect(page.locator('html')).toHaveAttribute('data-mantine-color-scheme', 'dark')
    await expect(page.getByRole('radio', { name: 'Solid' })).toBeChecked()
    // the sample asks for a margin of 30 %; its frost depth is a fact of its own place
    await page.keyboard.press('Control+Alt+n')
    const dialog = page.getByRole('dialog', { name: 'New job: five questions' })
    await expect(dialog.getByRole('combobox', { name: 'New jobs start from' })).toHaveValue(/.+/)
    await dialog.getByRole('button', { name: 'Make the deck' }).click()
    await place(page, 'Price').click()
    await expect(page.getByRole('textbox', { name: 'Margin', exact: true })).toHaveValue('30 %')
    await place(page, 'Site').click()
    await expect(
      page.getByRole('complementary').getByRole('textbox', { name: 'Frost depth', exact: true }),
    ).toHaveAccessibleDescription(/^Default\./)
  },
)

test('the sample job can be spoilt and put back, as one step', async ({ page, program }) => {
  await open(page, program.link)
  const run = async (name: string) => {
    await page.keyboard.press('Control+k')
    await page.getByPlaceholder('A command, a field, a member').fill(name)
    await page.keyboard.press('Enter')
  }
  await flag(page).fill(`19'`)
  await page.keyboard.press('Enter')
  await run('put the sample job back')
  await expect(flag(page)).toHaveValue(`23'-6"`)
  await page.keyboard.press('Control+z')
  await expect(flag(page)).toHaveValue(`19'-0"`)

  // what was chosen last stands first
  await page.keyboard.press('Control+k')
  const menu = page.getByRole('dialog', { name: 'Find anything' })
  await expect(menu.getByRole('button').first()).toContainText('Put the sample job back as it was')
  await page.keyboard.press('Escape')
})

test('F6 goes round the parts of the window, and Shift F6 back', async ({ page, program }) => {
  await open(page, program.link)
  const part = () =>
    page.evaluate(() => document.activeElement?.closest('header, main, aside.bench, footer')?.tagName ?? '')
  await page.getByRole('button', { name: /^Job Heron Lane/ }).focus()
  const round: string[] = []
  for (let press = 0; press < 4; press += 1) {
    await page.keyboard.press('F6')
    round.push(await part())
  }
  expect(round).toEqual(['MAIN', 'ASIDE', 'FOOTER', 'HEADER'])
  await page.keyboard.press('Shift+F6')
  expect(await part()).toBe('FOOTER')
})
