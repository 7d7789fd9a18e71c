import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import type { PaperSource } from '../../../core/papers/index.ts'
import { inspectionsSheet } from '../../../core/papers/sheets/inspections-sheet.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

/** The cards of a deck before its boards are planned: they tell of none. */
function itemsOf(file: string): readonly string[] {
  const made = design(CATALOGUE.find((deck) => deck.file === file)?.job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { blocks } = inspectionsSheet({ estimate: made.value } as unknown as PaperSource)
  return blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : []))
}

test('the framing card names the members of each kind of hanger, and which are skewed', () => {
  const hangers = itemsOf('wrap-hip.json').filter((item) => item.includes('joist hanger'))
  expect(hangers.length).toBeGreaterThan(2)
  expect(new Set(hangers.map((item) => item.replace(/^\d+ /, ''))).size).toBe(hangers.length)
  for (const item of hangers) expect(item).toMatch(/ at [A-Z]+\d+/)
  expect(hangers.filter((item) => item.includes('off square')).length).toBeGreaterThan(1)
  expect(itemsOf('wrap-hip.json').find((item) => item.includes('joist pair'))).not.toContain('hole')
})

test('the cards ask for nothing that cannot be seen on the site', () => {
  for (const item of itemsOf('high-stairs-landing.json')) expect(item).not.toMatch(/% of their span/)
})
