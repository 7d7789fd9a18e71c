import { describe, expect, test } from 'vitest'
import { readDelimited, writeDelimited } from '../../../core/cut-list/index.ts'

const cells = (text: string) => {
  const read = readDelimited(text)
  if (!read.ok) throw new Error(read.error.message)
  return read.value.map((row) => row.cells)
}

describe('the grammar of RFC 4180, section 2', () => {
  test.each<[string, string, string[][]]>([
    [
      '1: each record on its own line',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '2: the last may have no line break',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '5: fields may be quoted',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '6: line breaks in quotes',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['7: a quote in quotes is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%s', (_, text, rows) => {
    expect(cells(text)).toEqual(rows)
  })
})

describe('CSV for a spreadsheet', () => {
  test.each([
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['  =1', "'=1"],
    ["'=1", "''=1"],
    ['=HYPERLINK("x","y")', '"\'=HYPERLINK(""x"",""y"")"'],
  ])('%j, which it would take for a formula, is written %j', (text, written) => {
    expect(writeDelimited([[text]])).toBe(`${written}\r\n`)
  })

  test('what is no formula stays as it is', () => {
    expect(writeDelimited([['12\'-6"', 'J1', '1/2', "o'clock"]])).toBe(`"12'-6""",J1,1/2,o'clock\r\n`)
  })
})
