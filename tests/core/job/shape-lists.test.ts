import { describe, expect, it } from 'vitest'
import { cornerList, readJob } from '../../../core/job/index.ts'
import { toInches } from '../../../core/units/index.ts'

const inchesOf = (text: string) => cornerList(text).map(({ x, y }) => [toInches(x), toInches(y)])

function faultOf(shape: Record<string, string>) {
  const read = readJob({ shape })
  return read.ok ? null : { path: read.error[0]?.path, message: read.error[0]?.message }
}

describe('corners as typed', () => {
  const L = [
    [0, 0],
    [288, 0],
    [288, 96],
    [0, 96],
  ]

  it.each([
    "0, 0; 24', 0; 24', 8'; 0, 8'",
    "0 0, 24' 0, 24' 8', 0 8'",
    '0,0;24ft,0;24 ft, 8 ft;0,96',
    "0, 0\n24', 0\n24', 8'\n0, 8'",
  ])('are read from %j', (text) => {
    expect(inchesOf(text)).toEqual(L)
  })

  it('tell which corner is wrong, and how', () => {
    expect(faultOf({ outline: "0, 0; 24', x; 0, 8'" })).toMatchObject({
      path: 'shape.outline',
      message: expect.stringMatching(/^corner 2, "24', x": y: /),
    })
    expect(faultOf({ outline: "0, 0; 24', 0" })?.message).toBe('an outline of 2 corners has no area')
    expect(faultOf({ outline: "0, 0; 24', 0; 24', 8'; 0, 0" })?.message).toBe(
      'corner 4 stands where corner 1 does',
    )
  })

  it('set the width and the depth of the deck', () => {
    const read = readJob({ shape: { outline: "0, 0; 24', 0; 24', 8'; 0, 8'" }, size: { width: '10 ft' } })
    expect(read.ok && [toInches(read.value.job.size.width), toInches(read.value.job.size.depth)]).toEqual([
      288, 96,
    ])
  })
})

describe('other lists of the shape', () => {
  it.each([
    [{ walls: '1, x' }, 'shape.walls'],
    [{ zones: "0, 0, 8', 20'" }, 'shape.zones'],
    [{ openings: "8', 3', 4'" }, 'shape.openings'],
    [{ setbacks: '18 in' }, 'shape.setbacks'],
    [{ middleBeams: '-2 ft' }, 'shape.middleBeams'],
    [{ levels: "0, 14'; 12', 14'" }, 'shape.levels'],
    [{ levels: "2 in: 0, 14'; 12', 14'; 12', 20'" }, 'shape.levels'],
  ])('are refused at their field where they cannot be read: %j', (shape, path) => {
    expect(faultOf(shape)?.path).toBe(path)
  })
})
