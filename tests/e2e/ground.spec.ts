import { expect, test } from './program.ts'
import { dollars, figure, open, place, settled } from './window.ts'

test('a hole found off is asked about in the window, each way with its cost, and choosing one is one step', async ({
  page,
  program,
}) => {
  test.setTimeout(90_000)
  await open(page, program.link)
  await place(page, 'Ground').click()
  await expect(page.getByRole('img', { name: /^Footing layout to scale/ })).toBeVisible()
  const before = await dollars(page, 'Cost')
  await page.getByRole('button', { name: 'Hole 3' }).first().click()

  const panel = page.getByRole('region', { name: 'Hole 3 is not where the plan has it' })
  await panel.getByRole('button', { name: 'What can be done' }).click()
  await expect(panel.getByRole('alert')).toContainText('Say how far off it is')
  await panel.getByLabel('Off along the house').fill('two')
  await panel.getByRole('button', { name: 'What can be done' }).click()
  await expect(panel.getByRole('alert')).toBeVisible()

  await panel.getByLabel('Off along the house').fill('3 in')
  await panel.getByRole('button', { name: 'What can be done' }).click()
  const options = panel.getByRole('listitem')
  const shift = options.filter({ hasText: 'Shift the base' }).first()
  await expect(shift).toContainText(/\$\d+\.\d\d more/, { timeout: 30_000 })
  // the post moves with its pier: its beam is checked anew, and its joint is cut elsewhere
  await expect(options.filter({ hasText: 'The post stands on the pier where it is' })).toContainText(
    'Beam span',
  )
  await expect(options.filter({ hasText: 'undisturbed ground' })).toContainText('cannot be done')
  // nothing has changed yet
  expect(await dollars(page, 'Cost')).toBe(before)

  await panel.getByRole('button', { name: 'Shift the base at hole 3' }).click()
  await settled(page)
  expect(await dollars(page, 'Cost')).not.toBe(before)
  await page.getByText('Noted on site').click()
  await expect(page.getByRole('textbox', { name: 'Holes found off, and what was done' })).toHaveValue(
    '3: shift the base, 3" right',
  )

  await page.getByRole('button', { name: /^Undo “hole 3: shift the base”/ }).click()
  await settled(page)
  await expect(figure(page, 'Cost')).toContainText(before)
})

test('a place that is barred leaves the beam, and the post is moved in the drawing', async ({
  page,
  program,
}) => {
  test.setTimeout(90_000)
  await open(page, program.link)
  await place(page, 'Ground').click()
  await page.getByRole('button', { name: 'Hole 2' }).first().click()
  const panel = page.getByRole('region', { name: 'Hole 2 is not where the plan has it' })
  await panel.getByLabel('Off along the house').fill('6 in')
  await panel.getByLabel('Rock, a pipe or the like bars its place').check()
  await panel.getByRole('button', { name: 'What can be done' }).click()
  await expect(panel.getByText('Its place is barred.')).toHaveCount(2, { timeout: 30_000 })
  await panel.getByRole('button', { name: 'Move along the beam at hole 2' }).click()
  await settled(page)
  // planned 8 ft 2 in from the left end
  await expect(page.getByRole('row', { name: /^Hole 2 A × b 8'-8"/ })).toBeVisible()
})

test('posts measured at their piers are typed back, and what is too short is said', async ({
  page,
  program,
}) => {
  test.setTimeout(90_000)
  await open(page, program.link)
  await place(page, 'Ground').click()
  const measured = page.getByRole('region', { name: 'Posts measured on their piers' })
  const first = measured.getByLabel('Post 1 as measured')
  await first.fill('21 inches long')
  await first.press('Enter')
  await expect(measured.getByRole('alert')).toBeVisible()
  await first.fill('21 in')
  await first.press('Enter')
  await expect(measured.getByText('long enough for every measure')).toBeVisible({ timeout: 30_000 })
  await measured.getByLabel('Post 2 as measured').fill('9 ft')
  await measured.getByLabel('Post 2 as measured').press('Enter')
  await expect(measured.getByText(/are not enough for these measures\. Buy 1 × \d+ ft more/)).toBeVisible({
    timeout: 30_000,
  })
  await page.getByRole('button', { name: /^Undo “post 2 as measured”/ }).click()
  await expect(measured.getByText('long enough for every measure')).toBeVisible({ timeout: 30_000 })
})

test('cautions stand with the soil, and concrete by the truck is priced in place of bags', async ({
  page,
  program,
}) => {
  test.setTimeout(90_000)
  await open(page, program.link)
  await place(page, 'Ground').click()
  await expect(
    page
      .getByRole('main')
      .getByText(/Have utilities marked before digging/)
      .first(),
  ).toBeVisible()
  await expect(page.getByRole('region', { name: 'In this soil' })).toContainText('Dig to')
  const before = await dollars(page, 'Cost')
  await page.getByLabel('Concrete bought as').selectOption('ready-mix')
  await settled(page)
  expect(await dollars(page, 'Cost')).not.toBe(before)
  await expect(page.getByRole('columnheader', { name: 'Ready-mix (bought so)' })).toBeVisible({
    timeout: 30_000,
  })
})
