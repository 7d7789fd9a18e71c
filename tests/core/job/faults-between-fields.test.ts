import { describe, expect, test } from 'vitest'
import { type Fault, readJob } from '../../../core/job/index.ts'

function faultsOf(statement: unknown): readonly Fault[] {
  const read = readJob(statement)
  return read.ok ? [] : read.error
}

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
      { size: { width: '8 ft' }, frame: { beams: { front: { posts: 9 } } } },
      {
        path: 'frame.beams.front.posts',
        message: '9 posts under a beam of 8\'-0" stand less than 1\'-0" apart',
        fix: 'use 8 posts or fewer',
      },
    ],
    [
      'rear posts that crowd',
      {
        size: { width: '8 ft' },
        site: { attachment: 'freestanding' },
        frame: { beams: { rear: { posts: 9 } } },
      },
      {
        path: 'frame.beams.rear.posts',
        message: '9 posts under a beam of 8\'-0" stand less than 1\'-0" apart',
        fix: 'use 8 posts or fewer',
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
