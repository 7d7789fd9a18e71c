import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import type { Member } from '../../../core/frame/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { ofRole } from './joint-decks.ts'

// A deck round the left corner of a house, both wings 96 in deep: inside corner at 96, 192, outside corner at 0, 288.
// The hip's middle is the line x + y = 288, its plies 1-1/2 in to either side, 2.1213 in along a joist.

const deck = CATALOGUE.find(({ file }) => file === 'wrap-hip.json')
const job = deck?.job as { readonly shape: object; readonly frame: { readonly joists: object } }

function designOf(shape: object = {}, rest: object = {}): Design {
  const made = design({ ...job, shape: { ...job.shape, ...shape }, ...rest })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function faultsOf(shape: object, rest: object = {}) {
  const made = design({ ...job, shape: { ...job.shape, ...shape }, ...rest })
  return made.ok ? [] : made.error
}

type Place = readonly [number, number]

function corners({ plan, box }: Member): readonly Place[] {
  const places = plan ?? [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y0 },
    { x: box.x1, y: box.y1 },
    { x: box.x0, y: box.y1 },
  ]
  return places.map(({ x, y }) => [x / 32, y / 32])
}

/** Strictly inside a convex shape, whichever way round it is named. */
function inside(shape: readonly Place[], [x, y]: Place): boolean {
  const sides = shape.map(([ax, ay], i) => {
    const [bx, by] = shape[(i + 1) % shape.length] as Place
    return ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay)
  })
  return sides.every((side) => side > 0.03) || sides.every((side) => side < -0.03)
}

describe('a hip at the corner of a deck', () => {
  const made = designOf()
  const { frame } = made
  const plies = ofRole(frame, 'hip')

  it('is doubled, from the ledgers to the rims, bevelled by 45 degrees', () => {
    // from y = 193.5 to 286.5 on its middle line, and 1-1/2 in more to the long points: 93 √2 + 1.5 = 133.02, up to 1/32
    expect(plies.map(({ length }) => length / 32)).toEqual([133.03125, 133.03125])
    // both hands, for they run from left to right: the front one has its rear, far, face further left at both ends, where
    // it reaches the rims and leaves the house; the rear one, behind it, has it further right
    expect(plies.map(({ ends }) => ends)).toEqual([
      [-4500, -4500],
      [4500, 4500],
    ])
    expect(frame.hips).toHaveLength(1)
  })

  it('stands on the post under the mitre of both beams', () => {
    // beams 12 in from their edges: at 12, 276
    const [hip] = frame.hips
    const post = frame.posts.find(({ id }) => id === hip?.postId)
    expect([post?.x, post?.y].map((at) => (at ?? 0) / 32)).toEqual([12, 276])
    expect(frame.beams.filter(({ postIds }) => postIds.includes(post?.id ?? ''))).toHaveLength(2)
    expect((hip?.span ?? 0) / 32).toBeCloseTo(84 * Math.SQRT2, 1)
    expect((hip?.overhang ?? 0) / 32).toBeCloseTo(12 * Math.SQRT2, 1)
  })

  it('has joists of both parts hanging from it, each as long as its place says, cut at one end', () => {
    // of the front part at 16, 32 … 80 in: to the long point from x + y = 288 + 2.1213 to 286.5 in
    const front = frame.members.filter(({ bearings }) => bearings.includes('hip-1'))
    const lengths = [16, 32, 48, 64, 80].map((x) => x + 0.75 - 1.5 - 1.5 * Math.SQRT2)
    for (const [i, expected] of lengths.entries()) {
      const { length, ends } = front[i] ?? { length: 0, ends: null }
      expect(length / 32 - expected).toBeGreaterThanOrEqual(-1e-6)
      expect(length / 32 - expected).toBeLessThan(1 / 32)
      expect(ends).toEqual([-4500, 0])
    }
    // and the one at 96 in, whose left edge still meets it
    expect(front).toHaveLength(6)
    for (const joist of ofRole(frame, 'joist')) expect(joist.bearings.length, joist.id).toBeGreaterThan(1)
  })

  it('leaves no two pieces of the frame in each other about the corner', () => {
    const solid = frame.members.filter(({ role }) => role !== 'decking' && role !== 'post')
    const shapes = solid.map((member) => ({ member, shape: corners(member) }))
    for (let x = 0.11; x < 104; x += 0.93)
      for (let y = 184.07; y < 288; y += 0.89) {
        const here = shapes.filter(({ shape }) => inside(shape, [x, y])).map(({ member }) => member)
        const levels = here.flatMap((one, i) =>
          here.slice(i + 1).filter(({ box }) => box.z0 < one.box.z1 - 1 && box.z1 > one.box.z0 + 1),
        )
        expect(
          levels.map(({ id }) => id),
          `${x}, ${y}: ${here.map(({ id }) => id)}`,
        ).toEqual([])
      }
  })

  it('mitres the decking, with a gap over the middle of the hip', () => {
    const boards = ofRole(frame, 'decking')
    // 96 in + 1 in overhang − 1/4 in at the wall: 97 ÷ 5-5/8, 18 courses in each wing
    expect(boards).toHaveLength(36)
    expect(
      boards.filter(({ ends }) => Math.abs(ends?.[0] ?? 0) + Math.abs(ends?.[1] ?? 0) === 4500),
    ).toHaveLength(36)
    for (const board of boards)
      for (const [x, y] of corners(board)) {
        const off = (x + y - 288) / Math.SQRT2
        expect(board.lay?.zone === 'zone-1' ? off : -off).toBeGreaterThan(1 / 16 - 0.04)
      }
  })

  it('has its metal counted: a hanger for each joist, one for both plies, a tie, two angles, its nails', () => {
    const ofHip = frame.connectors.filter(
      ({ cause }) => cause.ids.includes('hip-1') && cause.fields[0] === 'shape.seams',
    )
    expect(ofHip.map(({ kind, count }) => [kind, count])).toEqual([
      ['joist hanger', 1],
      ['end joist angle', 2],
      ['uplift tie', 1],
      ['joist pair', 1],
    ])
    expect(made.takeoff.pieces.filter(({ memberId }) => memberId.startsWith('hip-'))).toHaveLength(2)
    const hangers = made.takeoff.goods.flatMap(({ sku, thousandths }) =>
      sku.startsWith('joist-hanger') ? [[sku, thousandths]] : [],
    )
    // half of the right angle between the rims
    expect(ofHip.find(({ kind }) => kind === 'end joist angle')?.skew).toBe(4500)
    expect(made.takeoff.goods.find(({ sku }) => sku === 'hip-angle')?.thousandths).toBe(2_000)
    // of the joists six on either side end at the hip, at 45°
    expect(hangers).toEqual([
      ['joist-hanger-2x10', 33_000],
      ['joist-hanger-skewed-2x10', 12_000],
      ['joist-hanger-double-skewed-2x10', 1_000],
    ])
  })

  it('has every joist at the hip sawn at 45°, that beside the inside corner too', () => {
    const jacks = frame.members.filter(({ id, ends }) => /^joist-/.test(id) && ends !== undefined)
    expect(jacks).toHaveLength(12)
    for (const { ends, mark } of jacks) expect(Math.max(...(ends ?? []).map(Math.abs)), mark).toBe(4500)
    const skews = frame.connectors.flatMap(({ kind, skew }) => (kind === 'joist hanger' ? (skew ?? 0) : []))
    expect([...new Set(skews)].sort((a, b) => a - b)).toEqual([0, 4500])
  })

  it('has a tie for every joist that lies on a beam, whether it is reckoned to rest there or hangs from the rim', () => {
    const tied = new Set(frame.connectors.flatMap(({ kind, at }) => (kind === 'uplift tie' ? at : [])))
    const beams = frame.members.filter(({ role }) => role === 'beam ply')
    const over = frame.members.filter(
      ({ role, box }) =>
        (role === 'joist' || role === 'end joist') &&
        beams.some(
          (ply) =>
            box.x0 < ply.box.x1 - 32 &&
            ply.box.x0 < box.x1 - 32 &&
            box.y0 < ply.box.y1 - 32 &&
            ply.box.y0 < box.y1 - 32,
        ),
    )
    expect(over.length).toBeGreaterThan(30)
    expect(over.filter(({ id }) => !tied.has(id)).map(({ mark }) => mark)).toEqual([])
  })

  it('has a block in every bay over its beams, as far as the joists lie on them, and says why the rim carries some', () => {
    // over the front beam 20 joists and an end joist: 20 bays; over the left one 17 and one: 17
    const blocks = ofRole(frame, 'blocking')
    expect(blocks.filter(({ id }) => id.startsWith('blocking-front-'))).toHaveLength(20)
    expect(blocks.filter(({ id }) => id.startsWith('blocking-rear-'))).toHaveLength(17)
    // J4 at x = 64 in: from the hip at y = 226.9 to the beam’s face at 274.5 in, 47.6; a quarter is 11.9, and it reaches 12
    const rims = made.checks.filter(({ title }) => title === 'Rim that carries joists')
    expect(rims.map(({ status }) => status)).toEqual(['outside scope', 'outside scope'])
    expect(rims[0]?.message).toContain('J1 to J4')
    expect(rims[0]?.message).toContain('past their beam by more than a quarter of their span')
    expect(rims[0]?.remedy).toContain('J1 to J4 lie on the beam too')
  })

  it('is the same wood on the other hand, laid out from the other end', () => {
    const other = designOf(
      {
        outline: "0, 16'; 20', 16'; 20', 0; 28', 0; 28', 24'; 0, 24'",
        walls: '1, 2',
        zones: "20', 0, 8', 16': along",
      },
      { frame: { ...job.frame, joists: { ...job.frame.joists, layoutFrom: 'right' } } },
    )
    const wood = ({ frame: { members } }: Design) =>
      members
        .filter(({ role }) => role !== 'post' && role !== 'guard post')
        .map(({ role, product, length }) => `${role} ${product.size} ${length}`)
        .sort()
    expect(wood(other)).toEqual(wood(made))
  })
})

describe('a hip that has no place', () => {
  it.each([
    [
      'wings of two depths',
      { outline: "0, 0; 8', 0; 8', 16'; 28', 16'; 28', 26'; 0, 26'" },
      {},
      'wings of one depth',
    ],
    ['no second part', { zones: '' }, {}, 'no two parts'],
    [
      'beams set back unlike',
      {},
      { frame: { ...job.frame, beams: { front: { setback: '12 in' }, rear: { setback: '18 in' } } } },
      'do not meet under the hip',
    ],
  ])('%s: a fault at the field', (_, shape, rest, message) => {
    expect(faultsOf(shape, rest)).toEqual([
      expect.objectContaining({ path: 'shape.seams', message: expect.stringContaining(message) }),
    ])
  })
})
