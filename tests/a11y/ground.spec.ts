import { expect, test } from '../e2e/program.ts'
import { open, place } from '../e2e/window.ts'
import { axeFaults } from './axe.ts'

for (const colorScheme of ['light', 'dark'] as const) {
  const colours = colorScheme === 'dark'
  test(`the ground with a hole asked about meets WCAG 2.2 AA as far as axe can tell, ${colorScheme}`, async ({
    page,
    program,
  }) => {
    test.setTimeout(120_000)
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await open(page, program.link)
    await place(page, 'Ground').click()
    await page.getByRole('button', { name: 'Hole 3' }).first().click()
    await page.getByLabel('Off along the house').fill('3 in')
    await page.getByRole('button', { name: 'What can be done' }).click()
    await expect(page.getByRole('button', { name: 'Shift the base at hole 3' })).toBeVisible({
      timeout: 30_000,
    })
    expect(await axeFaults(page, { colours })).toEqual([])
  })
}
