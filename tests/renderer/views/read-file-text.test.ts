import { expect, test } from 'vitest'
import { readFileText } from '../../../renderer/views/read-file-text.ts'

const wanted = { what: 'a list', longest: 1000, make: 'Save it as CSV.' }

test('a chosen file is read as UTF-8, or refused in a sentence that says what to do', async () => {
  expect(await readFileText(new File(['Length\n½'], 'a.csv'), wanted)).toEqual({
    ok: true,
    value: 'Length\n½',
  })
  expect(await readFileText(new File([new Uint8Array([0xff, 0xfe])], 'a.xls'), wanted)).toEqual({
    ok: false,
    error: 'a.xls is not text in UTF-8. Save it as CSV.',
  })
  expect(await readFileText(new File([new Uint8Array(3001)], 'b.csv'), wanted)).toEqual({
    ok: false,
    error: 'b.csv is too large to be a list. Save it as CSV.',
  })
})
