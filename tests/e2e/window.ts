import type { Page } from '@playwright/test'
import { expect } from './program.ts'

/** Opens the window and waits until the estimate stands. */
export async function open(page: Page, link: string): Promise<void> {
  await page.goto(link)
  await expect(page.getByRole('slider').first()).toBeVisible()
  await settled(page)
}

/** The figures belong to the present statement. */
export async function settled(page: Page): Promise<void> {
  const sill = page.getByRole('contentinfo', { name: 'The estimate' })
  await expect(sill).toHaveAttribute('aria-busy', 'false', { timeout: 30_000 })
}

/** The width on the tape. */
export const flag = (page: Page) => page.getByRole('main').getByRole('textbox', { name: 'Width' })

export const plan = (page: Page) => page.getByRole('img', { name: /^Framing plan to scale/ })

export const figure = (page: Page, name: string) =>
  page.getByRole('contentinfo').getByRole('button', { name: new RegExp(`^${name}`) })

/** The sum that a figure shows. */
export async function dollars(page: Page, name: string): Promise<string> {
  return /\$[\d,]+/.exec((await figure(page, name).textContent()) ?? '')?.[0] ?? ''
}

export const place = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Work places' }).getByRole('button', { name, exact: true })

export async function saved(page: Page): Promise<void> {
  await expect(page.getByText(/^saved \d\d:\d\d$/)).toBeVisible()
}
