import { expect, test } from 'vitest'
import { openServices, temporaryFolder } from './test-services.ts'

const MEMORY = {
  theme: 'dark',
  drawing: '{"view":"solid"}',
  notes: false,
  recent: ['undo'],
  template: 'x',
} as const

test('how the window was left is there at the next start, and a first start has nothing', async () => {
  const folder = temporaryFolder()
  const first = await openServices({ folder, keep: true })
  expect(await first.call('window.kept', {})).toBeNull()
  await first.call('window.keep', MEMORY)
  await first.close()
  const second = await openServices({ folder })
  expect(await second.call('window.kept', {})).toEqual(MEMORY)
  await second.close()
})

test.each([
  ['a theme there is not', { ...MEMORY, theme: 'pink' }],
  ['more than a few words', { ...MEMORY, drawing: 'x'.repeat(3_000) }],
  ['something else beside it', { ...MEMORY, more: 1 }],
])('%s is not kept', async (_name, memory) => {
  const services = await openServices()
  await expect(services.callAnything('window.keep', memory)).rejects.toMatchObject({ code: 'bad-input' })
  expect(await services.call('window.kept', {})).toBeNull()
  await services.close()
})
