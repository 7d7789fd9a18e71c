import type { Page } from '@playwright/test'
import { expect, test } from '../e2e/program.ts'

const places = ['Site', 'Frame', 'Ground', 'Boards', 'Price', 'Papers', 'Price book', 'Cut list'] as const

/** Controls on the screen that are smaller than a size on a side, each with its name; what stands within a text is let be. */
const smallerThan = (page: Page, size: number) =>
  page.evaluate((least) => {
    const controls = document.querySelectorAll<HTMLElement>(
      'button, select, summary, input:not([type=checkbox], [type=radio], [type=file]), textarea, [role=slider]',
    )
    return [...controls]
      .filter((control) => control.checkVisibility({ opacityProperty: true, visibilityProperty: true }))
      .map((control) => ({ control, box: control.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 1 && box.height > 1)
      .filter(({ box }) => box.width < least - 0.5 || box.height < least - 0.5)
      .map(
        ({ control, box }) =>
          `${control.tagName} ${control.getAttribute('aria-label') ?? control.textContent?.slice(0, 40) ?? ''} .${control.className}: ${box.width.toFixed(0)} × ${box.height.toFixed(0)}`,
      )
  }, size)

async function goTo(page: Page, place: string): Promise<void> {
  const button = page
    .getByRole('navigation', { name: 'Work places' })
    .getByRole('button', { name: place, exact: true })
  await button.click()
  await expect(button).toHaveAttribute('aria-current', 'page')
}

test('every control is 24 px or more on each side, in every work place', async ({ page, program }) => {
  await page.goto(program.link)
  await expect(page.getByRole('slider').first()).toBeVisible()
  for (const place of places) {
    await goTo(page, place)
    expect(await smallerThan(page, 24), place).toEqual([])
  }
})

test.describe('on a touch screen', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 1180, height: 820 } })
  test('what is pressed in the field is 44 px high: work places, buttons, fields', async ({
    page,
    program,
  }) => {
    await page.goto(program.link)
    await expect(page.getByRole('slider').first()).toBeVisible()
    for (const place of places) {
      await goTo(page, place)
      const low = await page.evaluate(() =>
        [
          ...document.querySelectorAll<HTMLElement>(
            '.places button, .top-tools .button, .bench .button, .bench .field select, .bench .field input[type=text], .sill button',
          ),
        ]
          .filter((control) => control.checkVisibility())
          .filter((control) => control.getBoundingClientRect().height < 43.5)
          .map((control) => `${control.className} ${control.textContent ?? ''}`),
      )
      expect(low, place).toEqual([])
    }
  })

  test('two fingers make the drawing larger, and one moves it', async ({ page, program }) => {
    await page.goto(program.link)
    await expect(page.getByRole('slider').first()).toBeVisible()
    const touch = await page.context().newCDPSession(page)
    const at = async (
      type: 'touchStart' | 'touchMove' | 'touchEnd',
      ...points: readonly (readonly [number, number])[]
    ) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(([x, y], id) => ({ x, y, id })),
      })
    const box = await page.locator('.sheet svg').first().boundingBox()
    if (!box) throw new Error('there is no drawing')
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 3]
    await at('touchStart', [x - 30, y], [x + 30, y])
    for (let apart = 30; apart <= 120; apart += 15) await at('touchMove', [x - apart, y], [x + apart, y])
    await at('touchEnd')
    await expect(page.locator('.zoom-value')).not.toHaveText('100 %')
    const house = page.locator('.sheet .fill-house').first()
    const before = await house.boundingBox()
    await at('touchStart', [x, y])
    for (let moved = 0; moved <= 60; moved += 10) await at('touchMove', [x, y + moved])
    await at('touchEnd')
    await expect.poll(async () => (await house.boundingBox())?.y).not.toBe(before?.y)
  })
})
