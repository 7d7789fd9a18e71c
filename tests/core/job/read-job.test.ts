import { describe, expect, test } from 'vitest'
import { type Fault, readJob } from '../../../core/job/index.ts'

function faultsOf(statement: unknown): readonly Fault[] {
  const read = readJob(statement)
  return read.ok ? [] : read.error
}

function jobOf(statement: unknown) {
  const read = readJob(statement)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value
}

describe('a sparse statement is filled with defaults', () => {
  test('an empty statement is a whole job with nothing given', () => {
    const { job, given } = jobOf({})
    expect(given).toEqual([])
    expect(job.size).toEqual({ width: 7680, depth: 4608, height: 1344 })
    expect(job.version).toBe(1)
  })

  test('what is stated is named in the order of the statement, and everything else keeps its default', () => {
    const { job, given } = jobOf({
      frame: { joists: { spacing: '12 in' } },
      size: { width: 240, depth: '13\'-6"' },
    })
    expect(given).toEqual(['frame.joists.spacing', 'size.width', 'size.depth'])
    expect(job.frame.joists).toEqual({ size: '2x10', spacing: 384, layoutFrom: 'left' })
    expect(job.size).toEqual({ width: 7680, depth: 5184, height: 1344 })
  })

  test('the reading is the same whoever reads it again', () => {
    const statement = { size: { width: '22 ft' }, scope: { delivery: { allowance: 95 } } }
    expect(JSON.stringify(readJob(statement))).toBe(JSON.stringify(readJob(structuredClone(statement))))
  })
})

describe('a value may be written as people write it', () => {
  test.each([
    ['size', { width: 282 }, 'size.width', 9024],
    ['size', { width: '23\' 6"' }, 'size.width', 9024],
    ['site', { soilBearing: '2,000 psf' }, 'site.soilBearing', 2000],
    ['site', { soilBearing: '2000' }, 'site.soilBearing', 2000],
    ['site', { snowLoad: 30 }, 'site.snowLoad', 30],
    ['pricing', { margin: '32 %' }, 'pricing.margin', 3200],
    ['pricing', { margin: 32.5 }, 'pricing.margin', 3250],
    ['cutting', { handling: '$1.50' }, 'cutting.handling', 150],
    ['cutting', { handling: 1.5 }, 'cutting.handling', 150],
    ['frame', { rimPlies: '2' }, 'frame.rimPlies', 2],
  ])('%s %j', (branch, stated, path, value) => {
    const { job } = jobOf({ [branch]: stated })
    expect(path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], job)).toBe(
      value,
    )
  })
})

describe('what is stated may imply another field', () => {
  test('a sum for a topic includes it, unless the statement says it is not included', () => {
    expect(jobOf({ scope: { delivery: { allowance: '$95' } } }).job.scope.delivery).toEqual({
      included: true,
      allowance: 9500,
    })
    expect(
      jobOf({ scope: { delivery: { allowance: '$95', included: false } } }).job.scope.delivery.included,
    ).toBe(false)
    expect(jobOf({ scope: { delivery: { allowance: 0 } } }).job.scope.delivery.included).toBe(false)
    expect(jobOf({ scope: { delivery: { included: true } } }).job.scope.delivery).toEqual({
      included: true,
      allowance: 0,
    })
  })

  test('spots are the ground, unless the statement says it is a plane', () => {
    const spots = [{ x: 0, y: '13\'-6"', z: -6 }]
    expect(jobOf({ site: { ground: { spots } } }).job.site.ground).toEqual({
      kind: 'spots',
      spots: [{ x: 0, y: 5184, z: -192 }],
    })
    expect(jobOf({ site: { ground: { kind: 'plane', spots } } }).job.site.ground.kind).toBe('plane')
  })
})

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

describe('spots of the ground', () => {
  const spots = (stated: unknown) => faultsOf({ site: { ground: { spots: stated } } })
  const SAMPLE = '{ "x": 0, "y": "13 ft 6 in", "z": -6 }'

  test.each<[string, unknown, readonly Fault[]]>([
    [
      'no list',
      { x: 1 },
      [
        {
          path: 'site.ground.spots',
          message: 'Spot heights are an object',
          fix: `give a list of spots such as [${SAMPLE}]`,
        },
      ],
    ],
    [
      'no object',
      [7],
      [{ path: 'site.ground.spots.0', message: 'this spot is a number', fix: `write it as ${SAMPLE}` }],
    ],
    [
      'a height missing',
      [{ x: 0, y: 0 }],
      [{ path: 'site.ground.spots.0.z', message: 'this spot has no z', fix: `write it as ${SAMPLE}` }],
    ],
    [
      'a name too many',
      [{ x: 0, y: 0, z: 0, w: 1 }],
      [{ path: 'site.ground.spots.0.w', message: 'a spot has no "w"', fix: `write it as ${SAMPLE}` }],
    ],
    [
      'a length that is none',
      [{ x: 0, y: '3 m', z: 0 }],
      [
        {
          path: 'site.ground.spots.0.y',
          message: 'y is given as "3 m": lengths are in feet and inches, not in "m"',
          fix: 'write feet and inches; to the nearest 1/32 in that is 9\'-10 1/8"',
        },
      ],
    ],
    [
      'a value of the wrong kind',
      [{ x: true, y: 0, z: 0 }],
      [
        {
          path: 'site.ground.spots.0.x',
          message: 'x is true or false',
          fix: 'give a length, or a number of inches',
        },
      ],
    ],
    [
      'a place far away',
      [{ x: 0, y: 0, z: '41 ft' }],
      [
        {
          path: 'site.ground.spots.0.z',
          message: 'z is 41\'-0", too far from the deck',
          fix: 'give it within 40\'-0" of the deck’s left corner at the wall',
        },
      ],
    ],
    [
      'one place twice',
      [
        { x: 12, y: 0, z: 0 },
        { x: '1 ft', y: 0, z: 3 },
      ],
      [
        {
          path: 'site.ground.spots.1',
          message: 'spot 2 stands where spot 1 does',
          fix: 'give one height for each place',
        },
      ],
    ],
  ])('%s', (_, stated, faults) => {
    expect(spots(stated)).toEqual(faults)
  })

  test('none, where the ground is said to be given by them', () => {
    expect(faultsOf({ site: { ground: { kind: 'spots' } } })).toEqual([
      {
        path: 'site.ground.spots',
        message: 'the ground is given by spots, and there are none',
        fix: 'give one spot at least, or give the ground as a "plane"',
      },
    ])
  })

  test('too many of them', () => {
    const many = Array.from({ length: 4001 }, (_, x) => ({ x, y: 0, z: 0 }))
    expect(spots(many)).toEqual([
      { path: 'site.ground.spots', message: 'there are 4001 spots', fix: 'give at most 4000' },
    ])
  })
})

describe('faults between fields', () => {
  test.each<[string, object, Fault | null]>([
    [
      'a base narrower than its tube',
      { ground: { tube: 24 } },
      {
        path: 'ground.base',
        message: 'the base, 1\'-8", is narrower than the tube on it, 2\'-0"',
        fix: 'make it 2\'-0" or more, or 0 where there is no base',
      },
    ],
    ['a base as wide as its tube', { ground: { tube: 20 } }, null],
    ['no base at all', { ground: { tube: 24, base: 0 } }, null],
    [
      'a setback that leaves no span',
      { size: { depth: '6 ft' }, frame: { beams: { front: { setback: '5 ft 1 in' } } } },
      {
        path: 'frame.beams.front.setback',
        message: 'a setback of 5\'-1" leaves no span in a depth of 6\'-0"',
        fix: 'leave 1\'-0" or more between the beam and the house',
      },
    ],
    [
      'a setback that leaves just a foot',
      { size: { depth: '6 ft' }, frame: { beams: { front: { setback: '5 ft' } } } },
      null,
    ],
    [
      'two beams that meet',
      {
        size: { depth: '6 ft' },
        site: { attachment: 'freestanding' },
        frame: { beams: { front: { setback: '3 ft 1 in' }, rear: { setback: '24 in' } } },
      },
      {
        path: 'frame.beams.front.setback',
        message: 'the two beams’ setbacks, 5\'-1" together, leave no span in a depth of 6\'-0"',
        fix: 'leave 1\'-0" or more between the beams',
      },
    ],
    [
      'a rear beam on a ledger job, which has none',
      {
        size: { depth: '6 ft' },
        frame: {
          beams: { front: { setback: '3 ft' }, rear: { setback: '10 ft', inset: '6 ft', posts: 40 } },
        },
      },
      null,
    ],
    [
      'end posts that meet',
      { size: { width: '8 ft' }, frame: { beams: { front: { inset: '4 ft' } } } },
      {
        path: 'frame.beams.front.inset',
        message: 'end posts 4\'-0" from each end of a beam of 8\'-0" leave no room between them',
        fix: 'inset them by 3\'-6" or less',
      },
    ],
    [
      'rear end posts that meet',
      {
        size: { width: '8 ft' },
        site: { attachment: 'freestanding' },
        frame: { beams: { rear: { inset: '4 ft' } } },
      },
      {
        path: 'frame.beams.rear.inset',
        message: 'end posts 4\'-0" from each end of a beam of 8\'-0" leave no room between them',
        fix: 'inset them by 3\'-6" or less',
      },
    ],
    [
      'posts that crowd',
      { size: { width: '8 ft' }, frame: { beams: { front: { posts: 8 } } } },
      {
        path: 'frame.beams.front.posts',
        message: '8 posts under a beam of 8\'-0" stand less than 1\'-0" apart',
        fix: 'use 7 posts or fewer',
      },
    ],
    [
      'rear posts that crowd',
      {
        size: { width: '8 ft' },
        site: { attachment: 'freestanding' },
        frame: { beams: { rear: { posts: 8 } } },
      },
      {
        path: 'frame.beams.rear.posts',
        message: '8 posts under a beam of 8\'-0" stand less than 1\'-0" apart',
        fix: 'use 7 posts or fewer',
      },
    ],
    [
      'three posts where just two can stand',
      { size: { width: '4 ft' }, frame: { beams: { front: { inset: '18 in', posts: 3 } } } },
      {
        path: 'frame.beams.front.posts',
        message: '3 posts under a beam of 4\'-0" stand less than 1\'-0" apart',
        fix: 'use 2 posts or fewer',
      },
    ],
    [
      'as many posts as can stand',
      { size: { width: '8 ft' }, frame: { beams: { front: { posts: 7 } } } },
      null,
    ],
  ])('%s', (_, statement, fault) => {
    expect(faultsOf(statement)).toEqual(fault === null ? [] : [fault])
  })

  test('nothing is said about what depends on a field that could not be read', () => {
    const frame = { beams: { front: { posts: 30 } } }
    expect(faultsOf({ size: { width: '20 ft' }, frame })).toHaveLength(1)
    expect(faultsOf({ size: { width: '90 m' }, frame }).map((fault) => fault.path)).toEqual(['size.width'])
    expect(faultsOf({ size: 'large', frame }).map((fault) => fault.path)).toEqual(['size'])
  })
})
