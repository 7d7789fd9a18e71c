import type { Page } from '@playwright/test'
import { expect, test } from '../e2e/program.ts'
import { axeFaults } from './axe.ts'

const places = ['Site', 'Frame', 'Ground', 'Boards', 'Price', 'Papers', 'Cut list'] as const

async function open(page: Page, link: string): Promise<void> {
  await page.goto(link)
  await expect(page.getByRole('slider').first()).toBeVisible()
}

async function goTo(page: Page, place: string): Promise<void> {
  const button = page.getByRole('navigation', { name: 'Work places' }).getByRole('button', { name: place })
  await button.click()
  await expect(button).toHaveAttribute('aria-current', 'page')
}

for (const colorScheme of ['light', 'dark'] as const) {
  const colours = colorScheme === 'dark'
  test(`every work place meets WCAG 2.2 AA as far as axe can tell, ${colorScheme}`, async ({
    page,
    program,
  }) => {
    test.setTimeout(180_000)
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await open(page, program.link)
    for (const place of places) {
      await goTo(page, place)
      expect(await axeFaults(page, { withDrawing: place === 'Frame', colours }), place).toEqual([])
    }
  })
}

test.describe('at 200 % zoom of a small laptop', () => {
  test.use({ viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 })
  test('nothing of the page is cut off sideways in any work place', async ({ page, program }) => {
    await open(page, program.link)
    for (const place of places) {
      await goTo(page, place)
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      expect(overflow, place).toBeLessThanOrEqual(0)
    }
  })
})

test('the keyboard reaches the width on the tape, moves it, and shows where it is', async ({
  page,
  program,
}) => {
  await open(page, program.link)
  const width = page.getByRole('slider').first()
  for (let presses = 0; presses < 80; presses++) {
    await page.keyboard.press('Tab')
    if (await width.evaluate((element) => element === document.activeElement)) break
  }
  await expect(width).toBeFocused()
  const outlined = await width.evaluate((element) => {
    const { outlineStyle, boxShadow } = getComputedStyle(element)
    return outlineStyle !== 'none' || boxShadow !== 'none'
  })
  expect(outlined).toBe(true)
  const before = await width.getAttribute('aria-valuetext')
  await page.keyboard.press('ArrowRight')
  await expect(width).not.toHaveAttribute('aria-valuetext', before ?? '')
})

test('in forced colours and without motion every work place can be opened', async ({ page, program }) => {
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce', contrast: 'more' })
  await open(page, program.link)
  for (const place of places) await goTo(page, place)
})
