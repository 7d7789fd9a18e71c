import type { Page } from '@playwright/test'
import { expect } from './program.ts'

/** Opens the window at a work place and waits until the figures belong to the present statement. */
export async function openAt(page: Page, link: string, place: string): Promise<void> {
  await page.goto(link)
  await expect(page.getByRole('slider').first()).toBeVisible()
  await page
    .getByRole('navigation', { name: 'Work places' })
    .getByRole('button', { name: place, exact: true })
    .click()
  await settled(page)
}

export async function settled(page: Page): Promise<void> {
  await expect(page.getByRole('contentinfo', { name: 'The estimate' })).toHaveAttribute(
    'aria-busy',
    'false',
    { timeout: 30_000 },
  )
}

/** The sum that a figure of the sill shows. */
export async function dollars(page: Page, figure: string): Promise<string> {
  const button = page.getByRole('contentinfo').getByRole('button', { name: new RegExp(`^${figure}`) })
  return /\$[\d,]+/.exec((await button.textContent()) ?? '')?.[0] ?? ''
}
