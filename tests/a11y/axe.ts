import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect } from '../e2e/program.ts'

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/**
 * What of the page does not meet WCAG 2.2 AA as far as axe can tell, each with its rule and place. Of what passes only
 * the rules are gathered: naming every part of a drawing takes longer than judging it.
 * @param withDrawing the plan's lines too, which take four fifths of the time and are the same at every work place
 */
export async function axeFaults(page: Page, { withDrawing = false } = {}): Promise<readonly string[]> {
  const hiding = withDrawing ? null : await page.addStyleTag({ content: '.plan svg { display: none }' })
  const { violations, passes } = await new AxeBuilder({ page })
    .options({ resultTypes: ['violations'] })
    .withTags(TAGS)
    .analyze()
  await hiding?.evaluate((style: Element) => style.remove())
  expect(passes.length, 'rules that axe could judge').toBeGreaterThan(10)
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id} at ${target.join(' ')}`))
}
