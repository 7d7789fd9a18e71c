import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect } from '../e2e/program.ts'

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** What colours decide, and so must be judged in each theme. */
const COLOURS = ['color-contrast', 'link-in-text-block']

/**
 * What of the page does not meet WCAG 2.2 AA as far as axe can tell, each with its rule and place. Of what passes only
 * the rules are gathered: naming every part of a drawing takes longer than judging it.
 * @param withDrawing the plan's lines too, which take four fifths of the time and are the same at every work place
 * @param within only what lies in this element: what opens over a page that is judged elsewhere
 * @param colours only what another theme could change
 */
export async function axeFaults(
  page: Page,
  { withDrawing = false, within = '', colours = false } = {},
): Promise<readonly string[]> {
  const hiding = withDrawing ? null : await page.addStyleTag({ content: '.plan svg { display: none }' })
  const axe = new AxeBuilder({ page }).options({ resultTypes: ['violations'] })
  if (within !== '') axe.include(within)
  const { violations, passes } = await (colours ? axe.withRules(COLOURS) : axe.withTags(TAGS)).analyze()
  await hiding?.evaluate((style: Element) => style.remove())
  expect(passes.length, 'rules that axe could judge').toBeGreaterThan(colours ? 0 : 10)
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id} at ${target.join(' ')}`))
}
