import { expect, test } from './program.ts'
import { open, place, settled } from './window.ts'

test('a check that fails offers what mends it; taking it is one step that one undo takes back', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  await place(page, 'Frame').click()
  const posts = page.locator('#field-frame-beams-front-posts')
  await posts.fill('2')
  await posts.press('Enter')
  await settled(page)
  const item = page.getByRole('listitem').filter({ hasText: 'Beam span' }).first()
  // the bench may follow the figures a moment later
  await expect(item).toContainText('Use more posts than 2')
  await item.locator('summary').click()
  await item.getByRole('button', { name: 'Find a fix: Beam span' }).click()
  const use = item.getByRole('button', { name: /^Use: Front beam: posts: \d instead of 2/ })
  await expect(use).toBeVisible({ timeout: 30_000 })
  await use.click()
  await settled(page)
  await expect(posts).not.toHaveValue('2')
  await page.getByRole('button', { name: /^Undo “fix of Beam span”/ }).click()
  await settled(page)
  await expect(posts).toHaveValue('2')
})
