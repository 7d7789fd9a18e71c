import { describe, expect, test } from 'vitest'
import { type Fault, readJob } from '../../../core/job/index.ts'

function faultsOf(statement: unknown): readonly Fault[] {
  const read = readJob(statement)
  return read.ok ? [] : read.error
}

describe('every fault is told with its path, what is wrong and what would be right', () => {
  test.each<[string, unknown, Fault]>([
    [
      'null',
      null,
      { path: '', message: 'a job is an object, and this is null', fix: 'begin it with { and end it with }' },
    ],
    [
      'a list',
      [],
      {
        path: '',
        message: 'a job is an object, and this is a list',
        fix: 'begin it with { and end it with }',
      },
    ],
    [
      'nothing',
      undefined,
      {
        path: '',
        message: 'a job is an object, and this is nothing that a job file can hold',
        fix: 'begin it with { and end it with }',
      },
    ],
    [
      'an unknown field',
      { size: { widht: 240 } },
      {
        path: 'size.widht',
        message: '"size" has no field "widht"',
        fix: 'the nearest known name is "width"',
      },
    ],
    [
      'an unknown branch',
      { fraem: {} },
      { path: 'fraem', message: 'a job has no field "fraem"', fix: 'the nearest known name is "frame"' },
    ],
    [
      'a field in the wrong place',
      { width: 240 },
      { path: 'width', message: 'a job has no field "width"', fix: 'it belongs at size.width' },
    ],
    [
      'a misspelt field in the wrong place',
      { joistSpacing: 1, overhnag: 1 },
      {
        path: 'overhnag',
        message: 'a job has no field "overhnag"',
        fix: 'the nearest known field is decking.overhang',
      },
    ],
    [
      'a name that was begun and not ended, though another lies nearer by its letters',
      { site: { frost: '36 in' } },
      {
        path: 'site.frost',
        message: '"site" has no field "frost"',
        fix: 'the nearest known name is "frostDepth"',
      },
    ],
    [
      'a name with more written on',
      { stairs: { widthInches: 48 } },
      {
        path: 'stairs.widthInches',
        message: '"stairs" has no field "widthInches"',
        fix: 'the nearest known name is "width"',
      },
    ],
    [
      'a field of stairs, which there may be three of',
      { handrail: 'none' },
      { path: 'handrail', message: 'a job has no field "handrail"', fix: 'it belongs at stairs.handrail' },
    ],
    [
      'a dotted name',
      { 'size.width': 240 },
      {
        path: 'size.width',
        message: 'a job has no field "size.width"',
        fix: 'write its parts one inside the other: "size": { "width": … }',
      },
    ],
    [
      'an inherited name',
      { size: { toString: 1 } },
      {
        path: 'size.toString',
        message: '"size" has no field "toString"',
        fix: 'the names here are "width", "depth", "height"',
      },
    ],
    [
      'an empty name',
      { size: { '': 1 } },
      {
        path: 'size.',
        message: '"size" has no field ""',
        fix: 'the names here are "width", "depth", "height"',
      },
    ],
    [
      'a value where a branch is',
      { size: 240 },
      { path: 'size', message: '"size" is a number', fix: 'give an object with fields such as "width"' },
    ],
    [
      'a branch where a value is',
      { size: { width: {} } },
      {
        path: 'size.width',
        message: 'Width is an object',
        fix: 'give a length such as "12\'-6 1/2\\"", or a number of inches',
      },
    ],
    [
      'null',
      { size: { width: null } },
      {
        path: 'size.width',
        message: 'Width is null',
        fix: 'give a value, or leave the field out to take its default',
      },
    ],
    [
      'text for a flag',
      { scope: { stairs: { included: 'yes' } } },
      {
        path: 'scope.stairs.included',
        message: 'Stairs: included is text',
        fix: 'give true or false, without quotes',
      },
    ],
    [
      'a number for text',
      { name: 5 },
      { path: 'name', message: 'Name is a number', fix: 'give text in quotes' },
    ],
    [
      'an empty name of the job',
      { name: '  ' },
      { path: 'name', message: 'Name is empty', fix: 'use 1 to 200 characters' },
    ],
    [
      'too much text',
      { notes: 'x'.repeat(10_001) },
      { path: 'notes', message: 'Notes has 10001 characters', fix: 'use at most 10000 characters' },
    ],
    [
      'a choice that is none',
      { builder: 'me' },
      { path: 'builder', message: 'Who builds cannot be "me"', fix: 'write "contractor" or "owner"' },
    ],
    [
      'a choice of the wrong kind',
      { builder: 1 },
      { path: 'builder', message: 'Who builds is a number', fix: 'give "contractor" or "owner"' },
    ],
    [
      'a wrong unit',
      { size: { width: '7 m' } },
      {
        path: 'size.width',
        message: 'Width is given as "7 m": lengths are in feet and inches, not in "m"',
        fix: 'write feet and inches; to the nearest 1/32 in that is 22\'-11 19/32"; it may go from 4\'-0" to 100\'-0"',
      },
    ],
    [
      'another wrong unit',
      { site: { liveLoad: '2 kPa' } },
      {
        path: 'site.liveLoad',
        message: 'Live load cannot be "2 kPa"',
        fix: 'give a whole number, from 40 psf to 200 psf',
      },
    ],
    [
      'psf for a count',
      { frame: { rimPlies: '2 psf' } },
      {
        path: 'frame.rimPlies',
        message: 'Rim plies cannot be "2 psf"',
        fix: 'give a whole number, from 1 to 2',
      },
    ],
    [
      'a fraction of a post',
      { frame: { beams: { front: { posts: 3.5 } } } },
      {
        path: 'frame.beams.front.posts',
        message: 'Front beam: posts is 3.5',
        fix: 'give a whole number, from 2 to 40',
      },
    ],
    [
      'a negative size',
      { size: { width: '-20 ft' } },
      {
        path: 'size.width',
        message: 'Width is -20\'-0", less than 4\'-0"',
        fix: 'give a value from 4\'-0" to 100\'-0": the program frames one deck along one wall',
      },
    ],
    [
      'no size',
      { size: { width: 0 } },
      {
        path: 'size.width',
        message: 'Width is 0", less than 4\'-0"',
        fix: 'give a value from 4\'-0" to 100\'-0": the program frames one deck along one wall',
      },
    ],
    [
      'a size of 1/64 in',
      { size: { depth: '1/64' } },
      {
        path: 'size.depth',
        message:
          'Depth is given as "1/64": lengths are kept to 1/32 in, and this lies between two of those marks',
        fix: 'write 0" (0 in) or 1/32" (1/32 in); it may go from 4\'-0" to 40\'-0"',
      },
    ],
    [
      'a size of 1/64 in as a number',
      { size: { depth: 1 / 64 } },
      {
        path: 'size.depth',
        message:
          'Depth is given as 0.015625: lengths are kept to 1/32 in, and this lies between two of those marks',
        fix: 'write 0" (0 in) or 1/32" (1/32 in); it may go from 4\'-0" to 40\'-0"',
      },
    ],
    [
      'a size of 10,000 ft',
      { size: { width: '10000 ft' } },
      {
        path: 'size.width',
        message: 'Width is given as "10000 ft": this is more than 4,000 ft',
        fix: 'give a length within 4,000 ft; it may go from 4\'-0" to 100\'-0"',
      },
    ],
    [
      'a size of 200 ft',
      { size: { width: '200 ft' } },
      {
        path: 'size.width',
        message: 'Width is 200\'-0", more than 100\'-0"',
        fix: 'give a value from 4\'-0" to 100\'-0": the program frames one deck along one wall',
      },
    ],
    [
      'a margin of all',
      { pricing: { margin: '100 %' } },
      {
        path: 'pricing.margin',
        message: 'Margin is 100 %, more than 95 %',
        fix: 'give a value from 0 % to 95 %: a margin of 100 % would leave nothing of the price for the cost',
      },
    ],
    [
      'too many decimals',
      { cutting: { handling: 0.1 + 0.2 } },
      {
        path: 'cutting.handling',
        message: 'Handling of one board is given as 0.30000000000000004: there are more than two decimals',
        fix: 'write it as $1,234.50; it may go from $0.00 to $1,000.00',
      },
    ],
    [
      'a live load below the code',
      { site: { liveLoad: 30 } },
      {
        path: 'site.liveLoad',
        message: 'Live load is 30 psf, less than 40 psf',
        fix: 'give a value from 40 psf to 200 psf: a deck must carry at least 40 psf (IRC 2021, Table R301.5)',
      },
    ],
  ])('%s', (_, statement, fault) => {
    expect(faultsOf(statement)).toContainEqual(fault)
  })

  test('all of them are listed, in the order of the statement', () => {
    const statement = {
      size: { width: '7 m', heigth: 1 },
      colour: 'green',
      pricing: { margin: '100 %' },
      frame: { joists: { spacing: '3 ft' }, beams: { front: { plies: 0 } } },
    }
    expect(faultsOf(statement).map((fault) => fault.path)).toEqual([
      'size.width',
      'size.heigth',
      'colour',
      'pricing.margin',
      'frame.joists.spacing',
      'frame.beams.front.plies',
    ])
  })

  test('foreign text in a fault is cut short and loses its control characters', () => {
    const [fault] = faultsOf({ builder: `a\u0000b\u202e${'x'.repeat(200)}` })
    expect(fault?.message).toBe(`Who builds cannot be "a b ${'x'.repeat(36)}…"`)
  })
})

test('a deck’s size given as a bare number is inches, and the fault says how feet are written', () => {
  for (const stated of [16, '16']) {
    const [fault] = faultsOf({ size: { width: stated } })
    expect(fault?.message).toBe('Width is 1\'-4", less than 4\'-0"')
    expect(fault?.fix).toMatch(/; a bare number is inches: for feet write "16 ft"$/)
  }
})
