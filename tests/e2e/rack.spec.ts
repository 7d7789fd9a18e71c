import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './program.ts'
import { dollars, openAt, settled } from './settled.ts'

const rack = (page: Page) => page.getByRole('region', { name: 'Offcuts on hand' })

test('an offcut put on the rack makes the job cheaper, and taken off again dearer', async ({
  page,
  program,
}) => {
  await openAt(page, program.link, 'Boards')
  await expect(rack(page).getByText(/^None\./)).toBeVisible()
  const before = await dollars(page, 'Cost')
  await rack(page).getByRole('combobox', { name: 'Product' }).selectOption('6x6 SP No.2 treated')
  await rack(page).getByRole('textbox', { name: 'Length' }).fill('8 fot')
  await rack(page).getByRole('button', { name: 'Put on the rack', exact: true }).click()
  await expect(rack(page).getByRole('alert')).toContainText('fot')
  await rack(page).getByRole('textbox', { name: 'Length' }).fill('8 ft')
  await rack(page).getByRole('button', { name: 'Put on the rack', exact: true }).click()
  await expect(rack(page).getByRole('listitem')).toContainText(`1 × 8'-0" 6x6`)
  await expect.poll(() => dollars(page, 'Cost')).not.toBe(before)
  const { violations } = await new AxeBuilder({ page }).include('.bench').analyze()
  expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([])
  await rack(page)
    .getByRole('button', { name: /^Take one off the rack: 6x6/ })
    .click()
  await expect(rack(page).getByText(/^None\./)).toBeVisible()
  await expect.poll(() => dollars(page, 'Cost')).toBe(before)
})

test('a job’s offcuts come onto the rack once, after they were asked for by the verb, and change nothing in it', async ({
  page,
  program,
}) => {
  await openAt(page, program.link, 'Boards')
  await page.getByRole('textbox', { name: 'Keep offcuts from' }).fill('6 in')
  await page.keyboard.press('Enter')
  await settled(page)
  await expect(page.getByText(/^saved \d\d:\d\d$/)).toBeVisible()
  const before = await dollars(page, 'Cost')
  const put = rack(page).getByRole('button', { name: 'Put this job’s offcuts on the rack' })
  await put.click()
  await rack(page).getByRole('button', { name: 'Not now' }).click()
  await expect(rack(page).getByText(/^None\./)).toBeVisible()
  await put.click()
  await rack(page)
    .getByRole('button', { name: /^Put \d+ offcuts? on the rack$/ })
    .click()
  await expect(rack(page).getByRole('listitem').first()).toContainText('of Heron Lane')
  await settled(page)
  expect(await dollars(page, 'Cost')).toBe(before)
  const lines = await rack(page).getByRole('listitem').allTextContents()
  await put.click()
  await rack(page)
    .getByRole('button', { name: /^Put \d+ offcuts? on the rack$/ })
    .click()
  await expect(page.getByText(/The offcuts of Heron Lane are on the rack already/)).toBeVisible()
  expect(await rack(page).getByRole('listitem').allTextContents()).toEqual(lines)
})
