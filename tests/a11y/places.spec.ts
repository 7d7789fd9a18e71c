import type { Page } from '@playwright/test'
import { expect, test } from '../e2e/program.ts'
import { axeFaults } from './axe.ts'

const places = ['Site', 'Frame', 'Ground', 'Boards', 'Price', 'Papers', 'Price book', 'Cut list'] as const

async function open(page: Page, link: string): Promise<void> {
  await page.goto(link)
  await expect(page.getByRole('slider').first()).toBeVisible()
}

async function goTo(page: Page, place: string): Promise<void> {
  const button = page
    .getByRole('navigation', { name: 'Work places' })
    .getByRole('button', { name: place, exact: true })
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

/** Lines of the drawing that are fainter than 3 : 1 on the page, hatches apart, each by its class and ratio. */
const faintLines = (page: Page) =>
  page.evaluate(() => {
    const numbers = (text: string) => (text.match(/[\d.]+/g) ?? []).map(Number)
    const light = (text: string) => {
      const [r = 0, g = 0, b = 0] = numbers(text).map((part) => {
        const share = part / 255
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
      })
      return 0.2126 * r + 0.7152 * g + 0.0722 * b
    }
    const ground = light(getComputedStyle(document.body).backgroundColor)
    return [...document.querySelectorAll('.sheet svg :is(line, rect, circle, polygon):not(.hit, defs *)')]
      .map((shape) => ({ name: shape.getAttribute('class') ?? '', style: getComputedStyle(shape) }))
      .filter(({ style }) => style.stroke !== 'none' && style.strokeWidth !== '0px')
      .map(({ name, style }) => {
        const line = light(style.stroke)
        const ratio = (Math.max(line, ground) + 0.05) / (Math.min(line, ground) + 0.05)
        return { name, ratio }
      })
      .filter(({ name, ratio }) => ratio < 3 && !name.includes('hatch'))
      .map(({ name, ratio }) => `${name} ${ratio.toFixed(1)}`)
  })

for (const colorScheme of ['light', 'dark'] as const) {
  test(`in forced colours, ${colorScheme}, the drawing is seen, what is chosen stands out, and every work place opens`, async ({
    page,
    program,
  }) => {
    await page.emulateMedia({ forcedColors: 'active', colorScheme, contrast: 'more' })
    await open(page, program.link)
    expect([...new Set(await faintLines(page))]).toEqual([])
    const beam = page.locator('.sheet rect.on-beams').first()
    const look = () =>
      beam.evaluate((shape) => {
        const { stroke, strokeWidth, fill } = getComputedStyle(shape)
        return `${stroke} ${strokeWidth} ${fill}`
      })
    const before = await look()
    await page.getByText(/^Members, posts and footings/).click()
    await page.getByRole('option', { name: /^Beam ply B1a/ }).click()
    await expect.poll(look).not.toBe(before)
    for (const place of places) await goTo(page, place)
  })
}

test('where less motion is asked for nothing moves or fades', async ({ page, program }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await open(page, program.link)
  const moving = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((element) => {
          const { transitionDuration, animationName } = getComputedStyle(element)
          return (
            animationName !== 'none' || transitionDuration.split(',').some((time) => parseFloat(time) > 0)
          )
        })
        .map((element) => `${element.tagName} ${element.getAttribute('class') ?? ''}`),
    )
  for (const place of places) {
    await goTo(page, place)
    expect([...new Set(await moving())], place).toEqual([])
  }
  for (const keys of ['Control+k', 'F1', 'Control+Alt+o', 'Control+Alt+n']) {
    await page.keyboard.press(keys)
    await expect(page.getByRole('dialog')).toBeVisible()
    expect([...new Set(await moving())], keys).toEqual([])
    await page.keyboard.press('Escape')
    await expect(page.getByRole('dialog')).toHaveCount(0)
  }
})
