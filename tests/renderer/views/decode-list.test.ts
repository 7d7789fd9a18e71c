import { expect, test } from 'vitest'
import { decodeList } from '../../../renderer/views/decode-list.ts'

/** `½ in` and an en dash, as each encoding's own tables have them. */
test.each([
  ['UTF-8', [0xc2, 0xbd, 0x20, 0xe2, 0x80, 0x93], '½ –', null],
  ['UTF-8 with its mark', [0xef, 0xbb, 0xbf, 0x61], 'a', null],
  ['Windows-1252', [0xbd, 0x20, 0x96], '½ –', 'Windows-1252'],
  ['UTF-16, small end first', [0xff, 0xfe, 0xbd, 0x00, 0x20, 0x00, 0x13, 0x20], '½ –', 'UTF-16'],
  ['UTF-16, big end first', [0xfe, 0xff, 0x00, 0xbd], '½', 'UTF-16'],
])('a list in %s is read', (_, bytes, text, readAs) => {
  expect(decodeList(new Uint8Array(bytes))).toEqual({ ok: true, value: { text, readAs } })
})

test('a spreadsheet’s own file is refused', () => {
  expect(decodeList(new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])).ok).toBe(false)
})
