import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Member } from '../../../core/frame/index.ts'
import { common, type Polygon, twiceArea } from '../../../core/geometry/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// A lower level's border runs along its free edges only: beside a higher level the field ends against that one's rim.

const FILES = [
  'two-levels.json',
  'three-levels.json',
  'stepped-levels.json',
  'levels-share-beam.json',
  'largest.json',
]
const decks = CATALOGUE.filter(({ file }) => FILES.includes(file))

function shapeOf({ plan, box: { x0, y0, x1, y1 } }: Member): Polygon {
  return (
    plan ?? [
      { x: x0, y: y0 },
      { x: x1, y: y0 },
      { x: x1, y: y1 },
      { x: x0, y: y1 },
    ]
  )
}

function shared(a: Member, b: Member): number {
  if (a.box.x0 >= b.box.x1 || b.box.x0 >= a.box.x1 || a.box.y0 >= b.box.y1 || b.box.y0 >= a.box.y1) return 0
  return common([shapeOf(a)], [shapeOf(b)]).reduce((sum, shape) => sum + Math.abs(twiceArea(shape)) / 2, 0)
}

function bordered(job: object, border: number, angle: number) {
  const made = design({ ...job, decking: { border, angle } })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value.frame.members
}

describe.each(decks)('$file with a border', ({ job }) => {
  it.each([
    [1, 0],
    [2, 0],
    [1, 45],
  ])('lays no board of %s courses at %s degrees in another or in the wood of a level', (border, angle) => {
    const members = bordered(job, border, angle)
    const boards = members.filter(({ role }) => role === 'decking')
    // the box steps stand on the boards, fascia is level with the joists
    const wood = members.filter(({ role }) => role !== 'fascia' && !role.startsWith('step'))
    const clashes = boards.flatMap((board) =>
      wood
        .filter(
          (other) => other !== board && other.box.z0 < board.box.z1 - 1 && board.box.z0 < other.box.z1 - 1,
        )
        // an edge off the raster by a tenth of a tick along 40 ft
        .filter((other) => shared(board, other) > 1536)
        .map(({ id }) => `${board.id} in ${id}`),
    )
    expect(boards.some(({ lay }) => lay?.part === 'border')).toBe(true)
    expect(clashes).toEqual([])
  })
})

describe('the border of a lower level', () => {
  it('is as long at the left as at the right where the level is as wide as the higher one', () => {
    const members = bordered(
      {
        size: { height: '44 in' },
        shape: {
          outline: '0, 0; 192, 0; 192, 144; 0, 144',
          levels: '29 in: 0, 144; 192, 144; 192, 264; 0, 264',
        },
      },
      1,
      0,
    )
    // 10 ft and an inch, less the gap of 1/8 in to the higher one's rim
    const beside = members.filter(
      ({ lay, line, box }) => lay?.part === 'border' && lay.zone === 'level-2' && line && box.y0 < 150 * 32,
    )
    expect(beside.map(({ length }) => length / 32)).toEqual([120.875, 120.875])
  })

  it('ends a gap short of the higher one’s rim, by hand', () => {
    // 12 ft by 8 ft at the front of the deck: 12 ft and an inch at either end along the front; beside it 8 ft and an inch,
    // less the gap of 1/8 in to the rim, to the long points of the mitres
    const job = CATALOGUE.find(({ file }) => file === 'two-levels.json')?.job
    const members = bordered(job ?? {}, 1, 0)
    const lower = members.filter(({ lay }) => lay?.part === 'border' && lay.zone === 'level-2')
    expect(lower.map(({ length }) => length / 32).sort((a, b) => a - b)).toEqual([96.875, 96.875, 146])
    // the field between them: from a gap off the rim of 12 ft to 8 ft and an inch less a board and a gap
    const field = members.filter(({ lay, box }) => lay?.part === 'field' && box.y0 > 144 * 32)
    expect(Math.min(...field.map(({ box }) => box.y0)) / 32).toBeCloseTo(144.125, 2)
    expect(Math.max(...field.map(({ box }) => box.y1)) / 32).toBeCloseTo(241 - 5.625, 2)
    // no joist is added under a border that is not there
    const joists = members.filter(
      ({ role, cause }) => role === 'joist' && cause.fields[0] === 'decking.border',
    )
    expect(joists.every(({ box }) => box.x1 - box.x0 < 64)).toBe(true)
  })
})
