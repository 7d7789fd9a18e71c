import type { Page } from '@playwright/test'
import { expect, test } from './program.ts'

async function openBoards(page: Page, link: string) {
  await page.goto(link)
  await page.getByRole('navigation', { name: 'Work places' }).getByRole('button', { name: 'Boards' }).click()
  await expect(page.getByText('Proven: no order of these lengths costs less.').first()).toBeVisible()
}

const sum = (text: string | null) => Number(/\+\$([\d.]+) for boards/.exec(text ?? '')?.[1])

test('a run is held in one piece after its price was seen, costs what was said, and is taken back', async ({
  page,
  program,
}) => {
  await openBoards(page, program.link)
  const beam = page.getByRole('list', { name: 'Joints' }).getByRole('listitem').filter({ hasText: 'Beam B1' })
  await expect(beam).toContainText('2 joints')
  await beam.getByRole('button', { name: /^One piece\?/ }).click()
  const offer = page.getByText(/^Beam B1 in one piece: \+\$/)
  await expect(offer).toBeVisible()
  const said = sum(await offer.textContent())
  expect(said).toBeGreaterThan(0)
  await page.getByRole('button', { name: 'Hold in one piece' }).click()
  await expect(beam).toContainText('held in one piece')

  const wishes = page.getByRole('region', { name: 'Wishes' })
  const wish = wishes.getByText(/for boards and joints/)
  await expect(wish).toBeVisible()
  expect(sum(await wish.textContent())).toBe(said)
  await expect(page.getByRole('textbox', { name: 'Held in one piece' })).toHaveValue('Beam B1')
  await wishes.getByRole('button', { name: 'Take back: Beam B1 in one piece' }).click()
  await expect(beam).toContainText('2 joints')
  await page.keyboard.press('Control+z')
  await expect(beam).toContainText('held in one piece')
})

test('a length is done without, and a name that is no run’s is told at its field with the nearest', async ({
  page,
  program,
}) => {
  await openBoards(page, program.link)
  const without = page.getByRole('button', { name: /^Without\? .*No 18' 2x12$/ })
  await without.click()
  await page.getByRole('button', { name: 'Do without', exact: true }).click()
  await expect(without).toHaveCount(0)
  await expect(page.getByRole('textbox', { name: 'Lengths to do without' })).toHaveValue('2x12: 18')

  const held = page.getByRole('textbox', { name: 'Held in one piece' })
  await held.fill('Beam B2')
  await held.press('Enter')
  await expect(
    page.getByText(/No run of this deck is called "Beam B2": the nearest is "Beam B1"/).first(),
  ).toBeVisible()
})

test('every point of a run says why it is jointed or not, and what another would cost', async ({
  page,
  program,
}) => {
  await openBoards(page, program.link)
  const rim = page
    .getByRole('list', { name: 'Joints' })
    .getByRole('listitem')
    .filter({ hasText: 'Front rim' })
  await rim.locator('summary').click()
  await expect(rim.getByText(/there is nothing to join/).first()).toBeVisible()
  // the one that is made is priced by itself
  await expect(rim.getByText(/1 joint\. In one piece the order would cost \$/)).toBeVisible()
  await rim.getByRole('button', { name: /^What would it cost: Front rim, J3$/ }).click()
  await expect(rim.getByText(/It may be jointed there; the order would cost/)).toBeVisible()
  const place = rim.getByRole('button', { name: /^J3, / })
  await place.focus()
  await expect(page.locator('.joint-spot')).toHaveCount(1)
})
