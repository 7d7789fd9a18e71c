import { describe, expect, test } from 'vitest'
import { type Fault, readJob } from '../../../core/job/index.ts'

function faultsOf(statement: unknown): readonly Fault[] {
  const read = readJob(statement)
  return read.ok ? [] : read.error
}

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
