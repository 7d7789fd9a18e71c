import { describe, expect, test } from 'vitest'
import { feet, inches } from '../../../core/units/index.ts'
import { readArguments } from '../../../main/cli/arguments.ts'

function faultOf(...words: string[]): string {
  const read = readArguments(words)
  return read.ok ? `read as ${read.value.kind}` : read.error
}

describe('a command line', () => {
  test.each([
    [
      ['estimate', 'a.json'],
      { kind: 'estimate', job: 'a.json', prices: null, json: false, joints: false, xlsx: null },
    ],
    [
      ['estimate', 'a.json', '--joints'],
      { kind: 'estimate', job: 'a.json', prices: null, json: false, joints: true, xlsx: null },
    ],
    [
      ['estimate', '--json', '--prices', 'p.json', 'a.json', '--xlsx=o.xlsx'],
      { kind: 'estimate', job: 'a.json', prices: 'p.json', json: true, joints: false, xlsx: 'o.xlsx' },
    ],
    [
      ['compare', 'a.json', '--width', '18ft..26ft'],
      {
        kind: 'compare',
        job: 'a.json',
        prices: null,
        json: false,
        range: { from: feet(18), to: feet(26), step: inches(6) },
      },
    ],
    [
      ['compare', '--step=3"', '--width', "16'-6..17-0", 'a.json', '--json'],
      {
        kind: 'compare',
        job: 'a.json',
        prices: null,
        json: true,
        range: { from: inches(198), to: feet(17), step: inches(3) },
      },
    ],
    [['check', '--', '--odd.json'], { kind: 'check', job: '--odd.json', json: false }],
    [['new', 'b.json'], { kind: 'new', file: 'b.json' }],
    [[], { kind: 'help' }],
    [['estimate', '--help'], { kind: 'help' }],
    [['--version'], { kind: 'version' }],
  ])('%j is understood', (words, command) => {
    expect(readArguments(words)).toEqual({ ok: true, value: command })
  })

  test.each([
    [['estimat', 'a.json'], 'There is no command "estimat"; did you mean estimate?'],
    [
      ['frobnicate'],
      'There is no command "frobnicate"; there are estimate, compare, cut, rest, size, papers, ground, prices, check, new.',
    ],
    [
      ['__proto__'],
      'There is no command "__proto__"; there are estimate, compare, cut, rest, size, papers, ground, prices, check, new.',
    ],
    [['estimate'], '"estimate" needs a file: kerfwright estimate JOB.json.'],
    [['check', 'a', 'b'], '"check" takes one file, and here are 2: a, b.'],
    [['estimate', 'a.json', '--price', 'p'], '"estimate" has no option --price; did you mean --prices?'],
    [['new', 'a.json', '--force'], '"new" has no option --force.'],
    [['estimate', 'a.json', '--xlsx'], '--xlsx needs a value after it.'],
    [['estimate', 'a.json', '--xlsx='], '--xlsx needs a value after it.'],
    [['estimate', 'a.json', '--json', '--json'], '--json is given twice.'],
    [['estimate', 'a.json', '--json=yes'], '--json takes no value.'],
    [['compare', 'a.json'], '"compare" needs the widths: --width 18ft..26ft.'],
    [['compare', 'a.json', '--width', '18ft'], '--width takes two lengths with .. between them'],
    [['compare', 'a.json', '--width', '18ft..20 parsecs'], '--width: "20 parsecs"'],
    [['compare', 'a.json', '--width', '20ft..18ft'], '20ft is wider than 18ft'],
    [['compare', 'a.json', '--width', '0..18ft'], '"0" is not longer than nothing'],
    [['compare', 'a.json', '--width', '1ft..18ft', '--step', '-1in'], '"-1in" is not longer than nothing'],
    [['compare', 'a.json', '--width', '1ft..4000ft', '--step', '1/32'], '--step makes more than 1000 widths'],
  ])('%j is refused in a sentence', (words, sentence) => {
    expect(faultOf(...words)).toContain(sentence)
  })
})
