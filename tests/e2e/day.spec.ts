import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test, testAlone } from './program.ts'
import { openAt, settled } from './settled.ts'

const product = (page: Page, size: string) =>
  page.getByRole('region', { name: new RegExp(`^${size} Southern Pine`) })

async function goToSaw(page: Page, link: string) {
  await openAt(page, link, 'Boards')
  await page.getByRole('button', { name: 'At the saw' }).click()
}

/** The text beside a label of the rest's sums. */
const sum = (page: Page, label: string) =>
  page.getByRole('region', { name: /^The rest of/ }).locator('.rest-sums > div', { hasText: label })

test('a board is culled, the rest is planned, and it says what to buy and what that costs', async ({
  page,
  program,
}) => {
  await goToSaw(page, program.link)
  // the demonstration's four posts come from one 8 ft 6x6: without it, another one is bought at its price
  const posts = product(page, '6x6')
  await expect(posts.getByText('0 of 1 sawn')).toBeVisible()
  await posts.getByRole('button', { name: 'Wrong? Board 1' }).click()
  await posts.getByRole('button', { name: 'Cull the whole board' }).click()
  await expect(posts.getByText('culled')).toBeVisible()
  await posts.getByRole('button', { name: 'Plan the rest again' }).click()
  await expect(sum(page, 'Boards that change')).toContainText('no. 1')
  await expect(sum(page, 'More than planned')).toContainText("1 × 8'")
  await expect(sum(page, 'Extra cost')).toContainText('$39.75')
  await expect(posts.getByText(/^No other way to finish costs less/)).toBeVisible()
  await expect(posts.getByRole('img', { name: /^Board 1, 8 ft: P1 .*P4/ })).toHaveCount(2)
  const { violations } = await new AxeBuilder({ page }).include('.sheet-pane').analyze()
  expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([])

  await posts.getByRole('button', { name: 'Take back what is wrong with board 1' }).click()
  await expect(posts.getByText('Something was marked since')).toBeVisible()
  await posts.getByRole('button', { name: 'Plan the rest again' }).click()
  await expect(posts.getByText('Everything is still sawn as planned.')).toBeVisible()
  await expect(sum(page, 'Extra cost')).toContainText('$0.00')
})

test('boards are marked by keyboard, and stay marked when one looks elsewhere', async ({ page, program }) => {
  await goToSaw(page, program.link)
  const joists = product(page, '2x10')
  await joists.getByRole('checkbox', { name: /^Board 1, .* is sawn$/ }).focus()
  await page.keyboard.press('Space')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Space')
  await expect(joists.getByRole('checkbox', { name: /^Board 2, .* is sawn$/ })).toBeChecked()
  await expect(joists.getByText(/^2 of \d+ sawn$/)).toBeVisible()
  const places = page.getByRole('navigation', { name: 'Work places' })
  await places.getByRole('button', { name: 'Frame' }).click()
  await places.getByRole('button', { name: 'Boards' }).click()
  await expect(joists.getByText(/^2 of \d+ sawn$/)).toBeVisible()

  await page.getByRole('main').getByRole('textbox', { name: 'Width' }).fill('20 ft')
  await page.keyboard.press('Enter')
  await settled(page)
  await expect(joists.getByText(/boards have changed since the first of these was marked/)).toBeVisible()
  await joists.getByRole('button', { name: 'Start the day again' }).click()
  await expect(joists.getByText(/^0 of \d+ sawn$/)).toBeVisible()
})

testAlone(
  'marks at the saw are there after the program was killed, and are taken back one by one',
  async ({ page, program }) => {
    await goToSaw(page, program.link)
    const joists = () => product(page, '2x10')
    const box = (board: number) =>
      joists().getByRole('checkbox', { name: new RegExp(`^Board ${board}, .* is sawn$`) })
    await box(1).check()
    await box(2).check()
    await expect(joists().getByText(/^2 of \d+ sawn$/)).toBeVisible()
    // a mark is in the store once its call is answered
    await page.waitForLoadState('networkidle')
    await program.kill()
    await program.start()
    await goToSaw(page, program.link)
    await expect(box(2)).toBeChecked()
    await joists().getByRole('button', { name: 'Take back the last mark' }).click()
    await expect(box(2)).not.toBeChecked()
    await expect(box(1)).toBeChecked()
  },
)

test('a yard that is out of a length, and a wrong entry told beside it', async ({ page, program }) => {
  await goToSaw(page, program.link)
  const posts = product(page, '6x6')
  await posts.getByText(/^The yard:/).click()
  await posts.getByRole('checkbox', { name: 'The whole order has come' }).uncheck()
  const left = posts.getByRole('textbox', { name: "Boards of 8' left at the yard" })
  await left.fill('some')
  await left.press('Enter')
  await expect(posts.getByText(/"some" is no number of boards/)).toBeVisible()
  await left.fill('0')
  await left.press('Enter')
  await posts.getByRole('button', { name: 'Plan the rest again' }).click()
  await expect(sum(page, 'No longer to be bought')).toContainText("1 × 8'")
  await expect(sum(page, 'Still to buy')).not.toContainText("× 8'")
  await expect(sum(page, 'Still to buy')).toContainText(/\d × \d+'/)
})

test('where the cheapest way changes many boards, the one that changes fewer stands beside it with what it costs more', async ({
  page,
  program,
}) => {
  await goToSaw(page, program.link)
  const joists = product(page, '2x10')
  const wrong = (board: number) => joists.getByRole('button', { name: `Wrong? Board ${board}`, exact: true })
  // an end joist with its blocks is gone; what is left of the other one takes blocks, if others are cut otherwise
  await wrong(3).click()
  await joists.getByRole('button', { name: 'Cull the whole board' }).click()
  await wrong(4).click()
  await joists.getByRole('textbox', { name: 'Bad from' }).fill('8 ft')
  await joists.getByRole('button', { name: 'Cull this stretch' }).click()
  await joists.getByRole('button', { name: 'Plan the rest again' }).click()
  await expect(joists.getByRole('heading', { name: 'The cheapest way' })).toBeVisible({ timeout: 30_000 })
  const fewer = joists.getByText(/^Fewer changes: \d+ boards? instead of \d+, for \$[\d.]+ more$/)
  const [few = '', many = ''] = ((await fewer.textContent()) ?? '').match(/\d+(?= board| *, for)/g) ?? []
  expect(Number(few)).toBeLessThan(Number(many))
  await fewer.click()
  await expect(joists.getByRole('heading', { name: 'Fewer changes' })).toBeVisible()
  await expect(sum(page, 'Extra cost')).toHaveCount(2)
})
