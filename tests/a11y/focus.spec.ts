import type { Page } from '@playwright/test'
import { expect, test } from '../e2e/program.ts'
import { open, place } from '../e2e/window.ts'

interface Stop {
  readonly name: string
  readonly isShown: boolean
  readonly isCovered: boolean
  readonly isOutlined: boolean
}

/** What has the focus: whether it can be seen, whether something lies over it, and whether it looks focused. */
const stopNow = (page: Page): Promise<Stop | null> =>
  page.evaluate(() => {
    const at = document.activeElement
    if (!(at instanceof HTMLElement || at instanceof SVGElement) || at === document.body) return null
    // a box that is drawn by its label, or a check of which only the words show
    const shown = at.closest<HTMLElement>('label') ?? at
    const box = shown.getBoundingClientRect()
    const x = Math.min(innerWidth - 1, Math.max(0, box.x + box.width / 2))
    const y = Math.min(innerHeight - 1, Math.max(0, box.y + box.height / 2))
    const over = document.elementFromPoint(x, y)
    const looks = [at, shown].map((each) => getComputedStyle(each))
    return {
      name: `${at.tagName} ${at.getAttribute('aria-label') ?? shown.textContent?.slice(0, 40) ?? ''} ${at.id}`,
      isShown:
        box.width > 0 && box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth,
      isCovered: over === null || !(shown.contains(over) || over.contains(shown)),
      isOutlined: looks.some(
        ({ outlineStyle, outlineWidth, boxShadow }) =>
          (outlineStyle !== 'none' && outlineWidth !== '0px') || boxShadow !== 'none',
      ),
    }
  })

const places = ['Site', 'Frame', 'Ground', 'Boards', 'Price', 'Papers', 'Price book', 'Cut list'] as const

test('Tab goes through every work place, and what has the focus is in view, uncovered and marked', async ({
  page,
  program,
}) => {
  test.setTimeout(240_000)
  await page.setViewportSize({ width: 1280, height: 720 })
  await open(page, program.link)
  for (const name of places) {
    await place(page, name).click()
    await page.waitForTimeout(300)
    const wrong: string[] = []
    const seen = new Set<string>()
    for (let presses = 0; presses < 150; presses += 1) {
      await page.keyboard.press('Tab')
      const stop = await stopNow(page)
      if (stop === null) break
      seen.add(stop.name)
      if (!stop.isShown) wrong.push(`${stop.name} is out of view`)
      if (stop.isCovered) wrong.push(`${stop.name} is covered`)
      if (!stop.isOutlined) wrong.push(`${stop.name} does not look focused`)
    }
    expect(seen.size, `stops at ${name}`).toBeGreaterThan(15)
    expect(wrong, name).toEqual([])
  }
})
