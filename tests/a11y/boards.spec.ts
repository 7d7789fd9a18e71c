import { expect, test } from '../e2e/program.ts'
import { axeFaults } from './axe.ts'

for (const colorScheme of ['light', 'dark'] as const) {
  const colours = colorScheme === 'dark'
  test(`joints, offers and wishes under Boards meet WCAG 2.2 AA as far as axe can tell, ${colorScheme}`, async ({
    page,
    program,
  }) => {
    test.setTimeout(180_000)
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await page.goto(program.link)
    await page
      .getByRole('navigation', { name: 'Work places' })
      .getByRole('button', { name: 'Boards' })
      .click()
    const beam = page
      .getByRole('list', { name: 'Joints' })
      .getByRole('listitem')
      .filter({ hasText: 'Beam B1' })
    await beam.locator('summary').click()
    await beam.getByRole('button', { name: /^One piece\?/ }).click()
    const hold = page.getByRole('button', { name: 'Hold in one piece' })
    await expect(hold).toBeVisible({ timeout: 30_000 })
    expect(await axeFaults(page, { colours })).toEqual([])
    await hold.click()
    await expect(page.getByRole('region', { name: 'Wishes' }).getByText(/for boards and joints/)).toBeVisible(
      {
        timeout: 30_000,
      },
    )
    expect(await axeFaults(page, { colours })).toEqual([])
  })
}
