import { describe, expect, test } from 'vitest'
import { type Fault, readJobText } from '../../../core/job/index.ts'

function faultsOf(text: string): readonly Fault[] {
  const read = readJobText(text)
  return read.ok ? [] : read.error
}

describe('what cannot be read is told with its line and column', () => {
  test.each<[string, string, Fault]>([
    [
      'an empty file',
      '',
      {
        path: '',
        message: 'the file is empty',
        fix: 'write a job, such as { "size": { "width": "20 ft", "depth": "12 ft" } }',
        line: 1,
        column: 1,
      },
    ],
    [
      'only blanks',
      ' \n\t\n',
      {
        path: '',
        message: 'the file is empty',
        fix: 'write a job, such as { "size": { "width": "20 ft", "depth": "12 ft" } }',
        line: 1,
        column: 1,
      },
    ],
    [
      'only a comment',
      '// later\n',
      {
        path: '',
        message: 'the file is empty',
        fix: 'write a job, such as { "size": { "width": "20 ft", "depth": "12 ft" } }',
        line: 1,
        column: 1,
      },
    ],
    [
      'not JSON',
      'width = 20 ft',
      {
        path: '',
        message: 'this word or sign is not JSON: width',
        fix: 'write text and names in double quotes; numbers as 12 or 12.5, with a digit first',
        line: 1,
        column: 1,
      },
    ],
    [
      'binary',
      '\u0000\u0001PK',
      {
        path: '',
        message: 'this word or sign is not JSON: PK',
        fix: 'write text and names in double quotes; numbers as 12 or 12.5, with a digit first',
        line: 1,
        column: 1,
      },
    ],
    [
      'a list',
      '[]',
      {
        path: '',
        message: 'a job is an object, and this is a list',
        fix: 'begin it with { and end it with }',
        line: 1,
        column: 1,
      },
    ],
    [
      'single quotes',
      "{\n  'size': {} }",
      {
        path: '',
        message: "this word or sign is not JSON: 'size'",
        fix: 'write text and names in double quotes; numbers as 12 or 12.5, with a digit first',
        line: 2,
        column: 3,
      },
    ],
    [
      'no comma',
      '{ "name": "a"\n  "notes": "b" }',
      {
        path: '',
        message: 'a comma is missing before this: "notes"',
        fix: 'put a comma between two fields or entries',
        line: 2,
        column: 3,
      },
    ],
    [
      'no colon',
      '{ "name" "a" }',
      {
        path: '',
        message: 'a colon is missing before this: "a"',
        fix: 'write a colon between a field’s name and its value',
        line: 1,
        column: 10,
      },
    ],
    [
      'no value',
      '{ "name": }',
      {
        path: '',
        message: 'a value is missing here: }',
        fix: 'write text in double quotes, a number, true or false',
        line: 1,
        column: 11,
      },
    ],
    [
      'no end',
      '{ "size": {',
      {
        path: '',
        message: 'a } is missing before the end',
        fix: 'close every { with a }',
        line: 1,
        column: 12,
      },
    ],
    [
      'no end of a list',
      '[1',
      { path: '', message: 'a ] is missing', fix: 'close every [ with a ]', line: 1, column: 3 },
    ],
    [
      'two jobs',
      '{}\n{}',
      {
        path: '',
        message: 'the file should have ended before this: {',
        fix: 'leave out what follows the last }',
        line: 2,
        column: 1,
      },
    ],
    [
      'an inch mark that ends the text',
      '{ "size": { "width": "22\'-6"" } }',
      {
        path: '',
        message: 'this text has no closing quote on its line: " } }',
        fix: 'end it with a double quote; an inch mark inside it is written \\"',
        line: 1,
        column: 29,
      },
    ],
    [
      'a wrong escape',
      '{ "name": "a\\q" }',
      {
        path: '',
        message: 'a backslash in this text is followed by the wrong letter: "a\\q"',
        fix: 'write \\\\ for a backslash and \\" for an inch mark',
        line: 1,
        column: 11,
      },
    ],
    [
      'a broken escape',
      '{ "name": "\\u12" }',
      {
        path: '',
        message: 'this \\u is not followed by four hexadecimal digits: "\\u12"',
        fix: 'write the letter itself',
        line: 1,
        column: 11,
      },
    ],
    [
      'a tab in a text',
      '{ "name": "a\tb" }',
      {
        path: '',
        message: 'this text holds a control character: "a b"',
        fix: 'take it out; a tab is written \\t',
        line: 1,
        column: 11,
      },
    ],
    [
      'a comment without end',
      '{ /* ',
      { path: '', message: 'this comment has no end: /*', fix: 'end it with */', line: 1, column: 3 },
    ],
    [
      'an unknown field',
      '{\r\n  "size": {\r\n    "widht": 240 } }',
      {
        path: 'size.widht',
        message: '"size" has no field "widht"',
        fix: 'the nearest known name is "width"',
        line: 3,
        column: 5,
      },
    ],
    [
      'an unknown field with dots',
      '{ "a.b": { "c": 1 } }',
      { path: 'a.b', message: 'a job has no field "a.b"', fix: expect.any(String), line: 1, column: 3 },
    ],
    [
      'a fault in a spot',
      '{ "site": { "ground": { "spots": [\n  { "x": 0, "y": "3 m", "z": 0 } ] } } }',
      {
        path: 'site.ground.spots.0.y',
        message: expect.any(String),
        fix: expect.any(String),
        line: 2,
        column: 13,
      },
    ],
    [
      'a missing number of a spot',
      '{ "site": { "ground": { "spots": [\n  { "x": 0, "y": 0 } ] } } }',
      {
        path: 'site.ground.spots.0.z',
        message: 'this spot has no z',
        fix: expect.any(String),
        line: 2,
        column: 3,
      },
    ],
    [
      'a fault about a default, shown at the branch that would hold it',
      '{\n"ground": { "tube": 24 } }',
      { path: 'ground.base', message: expect.any(String), fix: expect.any(String), line: 2, column: 1 },
    ],
    [
      'a newer version',
      '{\n "version": 99 }',
      {
        path: 'version',
        message: expect.stringContaining('newer program'),
        fix: expect.any(String),
        line: 2,
        column: 2,
      },
    ],
    [
      'a field twice',
      '{ "size": { "width": 240,\n "width": 264 } }',
      {
        path: 'size.width',
        message: '"width" stands here a second time, after line 1',
        fix: 'keep one of the two',
        line: 2,
        column: 2,
      },
    ],
    [
      'a field twice in a spot',
      '{ "site": { "ground": { "spots": [ { "x": 0, "x": 1 } ] } } }',
      {
        path: 'site.ground.spots.0.x',
        message: '"x" stands here a second time, after line 1',
        fix: 'keep one of the two',
        line: 1,
        column: 46,
      },
    ],
    [
      'a prototype',
      '{ "__proto__": { "name": "a" } }',
      {
        path: '__proto__',
        message: '"__proto__" is no name for a field',
        fix: 'leave it out',
        line: 1,
        column: 3,
      },
    ],
    [
      'a prototype written with an escape',
      '{ "size": { "__proto\\u005f_": {} } }',
      {
        path: 'size.__proto__',
        message: '"__proto__" is no name for a field',
        fix: 'leave it out',
        line: 1,
        column: 13,
      },
    ],
    [
      'brackets without end',
      '['.repeat(100_000),
      {
        path: '',
        message: 'brackets are nested more than 32 deep here',
        fix: 'a job needs far fewer levels',
        line: 1,
        column: 33,
      },
    ],
    [
      'a text far too long',
      ' '.repeat(1_000_001),
      {
        path: '',
        message: 'the file is too long to be a job',
        fix: 'keep it under 1000000 characters',
        line: 1,
        column: 1,
      },
    ],
  ])('%s', (_, text, fault) => {
    expect(faultsOf(text)).toContainEqual(fault)
    expect(faultsOf(text)[0]).toEqual(fault)
  })

  test('every fault of a file has a place, and all of them are told', () => {
    const text = '{\n  "size": { "width": "7 m",\n    "depth": 0 },\n  "colour": "green"\n}'
    expect(faultsOf(text).map(({ path, line, column }) => [path, line, column])).toEqual([
      ['size.width', 2, 13],
      ['size.depth', 3, 5],
      ['colour', 4, 3],
    ])
  })

  test('a file with a prototype in it changes no object', () => {
    readJobText('{ "__proto__": { "polluted": true }, "constructor": { "prototype": { "polluted": true } } }')
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
  })
})
