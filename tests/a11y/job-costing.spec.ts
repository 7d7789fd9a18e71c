import { expect, test } from '../e2e/program.ts'
import { open, place } from '../e2e/window.ts'
import { axeFaults } from './axe.ts'

for (const colorScheme of ['light', 'dark'] as const) {
  const colours = colorScheme === 'dark'
  test(`job costing meets WCAG 2.2 AA as far as axe can tell, ${colorScheme}`, async ({ page, program }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await open(page, program.link)
    await place(page, 'Price').click()
    await page.getByRole('radio', { name: 'Job costing' }).check({ force: true })
    await expect(page.getByRole('button', { name: 'Begin the job on this estimate' })).toBeEnabled()
    expect(await axeFaults(page, { colours })).toEqual([])
    await page.getByRole('button', { name: 'Begin the job on this estimate' }).click()
    await page.getByLabel('Task', { exact: true }).fill('Crown, cut, set and fasten joists')
    await page.getByLabel('Worker hours', { exact: true }).fill('20')
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: 'The job is finished' }).click()
    await expect(page.getByRole('table', { name: 'Rates proposed by finished jobs' })).toBeVisible()
    await page.getByLabel('What', { exact: true }).fill('Tarp')
    await page.keyboard.press('Enter')
    await expect(page.getByRole('alert')).toBeVisible()
    expect(await axeFaults(page, { colours })).toEqual([])
  })
}
