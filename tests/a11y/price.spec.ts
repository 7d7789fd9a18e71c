import { expect, test } from '../e2e/program.ts'
import { open, place, settled } from '../e2e/window.ts'
import { axeFaults } from './axe.ts'

for (const colorScheme of ['light', 'dark'] as const) {
  const colours = colorScheme === 'dark'
  test(`lines stated by hand meet WCAG 2.2 AA as far as axe can tell, ${colorScheme}`, async ({
    page,
    program,
  }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await open(page, program.link)
    await place(page, 'Price').click()
    const lines = page.getByRole('grid', { name: 'Lines of the cost by group' })
    await lines.getByRole('gridcell', { name: /^Joist hanger.*: quantity/ }).click()
    await page.keyboard.type('40')
    await page.keyboard.press('Enter')
    await lines.getByRole('gridcell', { name: /^Post base.*: price/ }).click()
    await page.keyboard.type('ten')
    await page.keyboard.press('Enter')
    await expect(lines.getByRole('alert')).toBeVisible()
    await settled(page)
    expect(await axeFaults(page, { colours })).toEqual([])
  })
}
