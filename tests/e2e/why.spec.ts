import type { Page } from '@playwright/test'
import { expect, test } from './program.ts'
import { figure, open, place } from './window.ts'

const panel = (page: Page) => page.getByRole('complementary', { name: 'Why' })
/** A step of the chain, opened by a click on it. */
const step = (page: Page, text: RegExp) => panel(page).locator('summary').filter({ hasText: text }).first()
const field = (page: Page, text: RegExp) => panel(page).getByRole('button', { name: text }).first()

test('each figure of the estimate says why', async ({ page, program }) => {
  await open(page, program.link)
  const answers = {
    Cost: 'Direct cost',
    Price: 'margin',
    Order: 'Proven: no order of these lengths costs less.',
    Joints: 'Where the joints are',
    Waste: 'Saw kerfs',
    Checks: 'Joist span',
    'Crew hours': 'paid worker hours',
  }
  for (const [name, text] of Object.entries(answers)) {
    await figure(page, name).click()
    await expect(panel(page)).toContainText(text)
  }
  await page.getByRole('button', { name: 'Back to the fields' }).click()
  await expect(page.getByRole('complementary', { name: 'Fields' })).toBeVisible()
})

test('the cost is followed down to a share of the job, and a click goes to its field', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await figure(page, 'Cost').click()
  await step(page, /^Overhead: \$/).click()
  await field(page, /^Overhead: /).click()
  await expect(place(page, 'Price')).toHaveAttribute('aria-current', 'page')
  await expect(page.getByRole('textbox', { name: 'Overhead' })).toBeFocused()
})

test('a line of the price leads through what it counts to the fields of the deck', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Price').click()
  await page
    .getByRole('button', { name: /^Why\? .*[Hh]anger/ })
    .first()
    .click()
  const closed = panel(page).locator('details:not([open]) > summary')
  for (let opened = 0; opened < 12; opened++) {
    if (await field(page, /^Joist spacing: /).isVisible()) break
    await closed.first().click()
  }
  await field(page, /^Joist spacing: /).click()
  await expect(place(page, 'Frame')).toHaveAttribute('aria-current', 'page')
  await expect(page.getByRole('textbox', { name: 'Spacing' })).toBeFocused()
})

test('a check says its clause and leads to the fields it hangs on', async ({ page, program }) => {
  await open(page, program.link)
  await figure(page, 'Checks').click()
  await page.locator('.check summary').filter({ hasText: 'Joist span' }).first().click()
  await page.getByRole('button', { name: 'Why? Joist span' }).first().click()
  await expect(panel(page)).toContainText(/IRC 2021 .*R507\.6/)
  await field(page, /^Joist size: /).click()
  await expect(page.getByRole('combobox', { name: 'Size' }).first()).toBeFocused()
})

test('a chosen member says why it is there; a field that is folded away is opened', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await page.getByText(/^Members, posts and footings/).click()
  await page.getByRole('option', { name: /^Beam ply B1a/ }).click()
  await page.getByRole('button', { name: /^Why\? Beam ply B1a/ }).click()
  await expect(panel(page)).toContainText('B1a')
  await panel(page).getByRole('button', { name: /: / }).first().click()
  await expect(page.getByRole('complementary', { name: 'Fields' }).locator(':focus')).toBeVisible()
})
