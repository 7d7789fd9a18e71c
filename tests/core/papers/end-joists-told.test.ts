import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { frameSteps } from '../../../core/papers/build/frame-steps.ts'
import type { PaperSource } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function designOf(file: string) {
  const made = design(CATALOGUE.find((deck) => deck.file === file)?.job)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

test('the steps name every end joist there is', () => {
  const made = designOf('picture-frame-l.json')
  const steps = frameSteps({ ...made, plans: [] } as unknown as PaperSource['estimate'])
  const step = steps.find(({ text }) => text.startsWith('Set the end joists'))?.text
  // three by hand: left, right, and the one beside the notch
  for (const mark of ['E1', 'E2', 'E3']) expect(step).toMatch(new RegExp(`${mark}\\b`))
})

test('the check of the guard speaks of the gap at stairs only where there are stairs', () => {
  const remedyOf = (file: string) => designOf(file).checks.find(({ id }) => id === 'guard')?.remedy
  expect(remedyOf('wrap-hip.json')).not.toContain('Where stairs leave')
  expect(remedyOf('high-stairs-landing.json')).toContain('Where stairs leave')
})
