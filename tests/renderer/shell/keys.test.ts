import { expect, test } from 'vitest'
import { type KeyPress, matches, shown } from '../../../renderer/shell/keys.ts'

const press = (key: string, code: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  code,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
})

test('undo and redo differ by the shift key, and the command key counts as Ctrl', () => {
  expect(matches(press('z', 'KeyZ', { ctrlKey: true }), 'Ctrl+Z')).toBe(true)
  expect(matches(press('Z', 'KeyZ', { metaKey: true, shiftKey: true }), 'Ctrl+Shift+Z')).toBe(true)
  expect(matches(press('Z', 'KeyZ', { ctrlKey: true, shiftKey: true }), 'Ctrl+Z')).toBe(false)
  expect(matches(press('z', 'KeyZ'), 'Ctrl+Z')).toBe(false)
})

test('digits are read by their key where Alt turns them into signs', () => {
  expect(matches(press('²', 'Digit2', { ctrlKey: true, altKey: true }), 'Ctrl+Alt+2')).toBe(true)
  expect(matches(press('2', 'Digit2', { ctrlKey: true }), 'Ctrl+Alt+2')).toBe(false)
})

test('a slash that needs Shift on some keyboards still opens the sheet', () => {
  expect(matches(press('/', 'Digit7', { ctrlKey: true, shiftKey: true }), 'Ctrl+/')).toBe(true)
})

test('shortcuts are written as the system writes them', () => {
  expect(shown('Ctrl+Shift+Z', false)).toBe('Ctrl Shift Z')
  expect(shown('Ctrl+Shift+Z', true)).toBe('⌘ ⇧ Z')
})
