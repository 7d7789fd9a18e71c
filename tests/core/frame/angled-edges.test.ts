import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Member } from '../../../core/frame/index.ts'

// Decks of odd angles that random outlines found; places in inches, reckoned from the corners by hand.

type Places = readonly (readonly [number, number])[]

const outlineOf = (corners: Places) => corners.map((corner) => corner.join(', ')).join('; ')

function freeDeck(corners: Places, joists: 'away' | 'along', layoutFrom: 'left' | 'right', setback: number) {
  return design({
    shape: { outline: outlineOf(corners), joists },
    size: { height: '60 in' },
    site: { attachment: 'freestanding' },
    frame: {
      joists: { spacing: 12, layoutFrom },
      beams: { front: { setback }, rear: { setback } },
    },
    ground: { base: '16 in' },
  })
}

describe('a deck with edges at an angle', () => {
  it('has dropped beams no corner of which reaches past an edge that slants, be the deck wider or narrower there', () => {
    for (const right of [200, 280])
      for (const middle of ['', '60'])
        for (const plies of [2, 3]) {
          const made = design({
            shape: { outline: `0, 0; 240, 0; ${right}, 144; 0, 144`, middleBeams: middle },
            size: { height: '60 in' },
            frame: { beams: { front: { setback: 18, plies } } },
            ground: { base: '16 in' },
          })
          if (!made.ok) throw new Error(JSON.stringify(made.error))
          const beams = made.value.frame.members.filter(({ role }) => role === 'beam ply')
          const ends = beams.map(({ box: { x1, y0, y1 } }) => {
            const places = [y0, y1].map((y) => 240 + ((right - 240) * y) / 32 / 144)
            return Math.min(...places) - x1 / 32
          })
          // one corner of each beam reaches the edge
          expect(ends.length).toBe(plies * (middle === '' ? 1 : 2))
          for (const left of ends) expect(left).toBeGreaterThan(-1 / 32)
          expect(Math.min(...ends)).toBeLessThan(1 / 16)
        }
  })

  it('has beams where two parts meet that reach an edge which slants there with one corner', () => {
    // joists end on the seam at x = 120 from one side, or from both
    for (const [left, right] of [
      [100, 140],
      [140, 100],
    ] as const)
      for (const joists of ['along', 'away'])
        for (const plies of [1, 2, 3]) {
          const made = design({
            shape: {
              outline: `0, 0; 240, 0; 240, ${right}; 0, ${left}`,
              joists,
              zones: '0, 0, 120, 144: along',
              seams: 'single',
            },
            size: { height: '60 in' },
            frame: { joists: { spacing: 12 }, beams: { front: { setback: 6, plies }, rear: { setback: 6 } } },
            ground: { base: '16 in' },
          })
          if (!made.ok) throw new Error(JSON.stringify(made.error))
          const { layout, frame } = made.value
          const seam = layout.zones.flatMap(({ supports }) => supports).find((line) => line.seam)
          const beam = frame.members.filter(({ id }) => id.startsWith(`beam-${seam?.key}-ply`))
          expect(beam).toHaveLength(plies)
          const past = beam.flatMap(({ box: { x0, x1, y1 } }) =>
            [x0, x1].map((x) => y1 / 32 - left - ((x / 32) * (right - left)) / 240),
          )
          expect(Math.max(...past)).toBeLessThan(1 / 32)
          expect(Math.max(...past)).toBeGreaterThan(-1 / 32)
        }
  })

  it('has no beam behind a slanting edge that reaches past the edge beside it', () => {
    // the rear beam lies behind the edge from 60, 0 to 0, 30 and ends at the edge from 0, 30 to 49, 86
    const made = design({
      shape: { outline: '49, 86; 0, 30; 60, 0; 125, 67', openings: '38, 29, 12, 12' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12, layoutFrom: 'right', longest: 96 },
        beams: { front: { setback: 6, posts: 2 }, rear: { setback: 6 } },
      },
      ground: { base: '16 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const plies = made.value.frame.members.filter(({ id }) => id.startsWith('beam-rear-ply'))
    expect(plies).toHaveLength(2)
    for (const { plan = [] } of plies)
      for (const { x, y } of plan) expect(x / 32 - ((y / 32 - 30) * 49) / 56).toBeGreaterThan(-1 / 32)
  })

  it('has no frame where the beams of its rear and its front would end in each other at one side', () => {
    // the left side is 14 in long; beams 7 in behind the slants beside it both come to x = 0 at y = 25
    const corners = [
      [0, 18],
      [18, 0],
      [120, 0],
      [120, 126],
      [94, 126],
      [0, 32],
    ] as const
    const made = freeDeck(corners, 'away', 'left', 7)
    expect(made.ok ? [] : made.error.map(({ message }) => message)).toContain(
      'two beams would lie in one place',
    )
  })

  it('has no bay wider than the spacing where one joist is jointed a second time and its neighbour is not', () => {
    // beyond the front beam at y = 80 the lines of a second lap stand again where they began, the others 1-1/2 in off
    const made = design({
      shape: { outline: '0, 0; 120, 0; 120, 12; 34.34375, 98; 0, 98', middleBeams: '50' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12, layoutFrom: 'right', overMiddle: 'lapped', longest: 96 },
        beams: { front: { setback: 18, posts: 2 } },
      },
      ground: { base: '16 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const joists = made.value.frame.members.filter(({ role }) => role === 'joist' || role === 'end joist')
    const middleOf = ({ box }: Member) => (box.x0 + box.x1) / 64
    for (const y of [30, 60, 75, 85, 93]) {
      const crossed = joists
        .filter(({ box }) => box.y0 / 32 < y && box.y1 / 32 > y)
        .map(middleOf)
        .sort((a, b) => a - b)
      const bays = crossed.slice(1).map((x, i) => x - (crossed[i] ?? 0))
      expect(Math.max(...bays), `${y} in out`).toBeLessThanOrEqual(12)
    }
  })

  it('is framed in the mirror too where two footings have no more room than rounding takes', () => {
    // posts 10.7, 69.3 and 4.3, 84 are 16 in apart, as wide as their footings are, give or take a tick
    const corners = [
      [0, 56.8125],
      [109.5625, 0],
      [369.0625, 0],
      [369.0625, 102],
      [78, 102],
      [78, 116],
      [26, 116],
      [26, 102],
      [0, 102],
    ] as const
    const mirrored = corners.map(([x, y]) => [369.0625 - x, y] as const)
    const faults = (made: ReturnType<typeof freeDeck>) => (made.ok ? [] : made.error)
    expect(faults(freeDeck(corners, 'away', 'left', 18))).toEqual([])
    expect(faults(freeDeck(mirrored, 'away', 'right', 18))).toEqual([])
  })

  it('is framed alike in the mirror where a joist ends at the corner of a steep edge and a flat one', () => {
    // the joist 120 in from the left end stands at the corner of the rims inside 121, 122
    const corners = [
      [174, 180],
      [133, 195],
      [102, 160],
      [0, 0],
      [121, 122],
      [177, 101],
      [229, 156],
    ] as const
    const lengths = (made: ReturnType<typeof freeDeck>) =>
      made.ok
        ? made.value.frame.members
            .filter(({ role }) => role === 'joist' || role === 'rim')
            .map(({ role, length }) => `${role} ${length}`)
            .sort()
        : made.error
    const plain = lengths(freeDeck(corners, 'away', 'left', 18))
    const mirrored = corners.map(([x, y]) => [229 - x, y] as const)
    expect(plain.length).toBeGreaterThan(20)
    expect(lengths(freeDeck(mirrored, 'away', 'right', 18))).toEqual(plain)
  })

  it('begins a joist at its own edge where the one beside which it closes a bay is lapped over a beam further in', () => {
    // joists along the house, the slant from 0, 71 to 25, 96: the joist 81 in out starts past the beam 10 in from the left
    const made = design({
      shape: { outline: '0, 0; 120, 0; 120, 96; 25, 96; 0, 71.09375', joists: 'along' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12, layoutFrom: 'right', longest: 96 },
        beams: { front: { setback: 10, posts: 2 }, rear: { setback: 10 } },
      },
      ground: { base: '16 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    for (const { id, plan, box, role } of made.value.frame.members) {
      if (role !== 'joist') continue
      const [x, y] =
        plan === undefined ? [box.x0, box.y1] : [plan[0]?.x ?? 0, Math.max(...plan.map((p) => p.y))]
      // left of the line from 0, 71.09 to 25, 96 there is no deck
      const slant = ((y / 32 - 71.09375) * 25) / (96 - 71.09375)
      expect(Math.max(x, box.x0) / 32, id).toBeGreaterThan(Math.min(slant, 25) - 2)
    }
  })

  it('lays joists out by the tape again beyond a flush beam, after a lap before it', () => {
    const made = design({
      shape: { outline: '0, 0; 120, 0; 120, 96; 15, 96; 0, 82', joists: 'along', middleBeams: '50 flush' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12, overMiddle: 'lapped', longest: 96 },
        beams: { front: { setback: 9, posts: 2, plies: 1 }, rear: { setback: 9 } },
      },
      ground: { base: '16 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const beyond = made.value.frame.members
      .filter(({ role, box }) => role === 'joist' && box.x0 > 50 * 32)
      .map(({ box }) => (box.y0 + box.y1) / 64)
    expect(beyond.sort((a, b) => a - b)).toEqual([12, 24, 36, 48, 60, 72, 84])
  })

  it('gives a joist at a notch no more deck to carry than lies on its side of the notch', () => {
    // the joist 4 in from the left end stands before a notch that comes to a point at 18, 149, the next one behind it
    const made = design({
      shape: { outline: '40, 223; 4, 152; 0, 131; 18, 149; 24, 0; 212, 189', walls: '1' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 16, layoutFrom: 'right', longest: 96 },
        beams: { front: { setback: 6, posts: 2 }, rear: { setback: 6 } },
      },
      ground: { base: '14 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const widths = made.value.frame.joistGroups.flatMap(({ lines }) =>
      lines.flatMap((line) => line.widths.map((width, i) => [line.memberIds[i], width / 32] as const)),
    )
    // left of the notch's point at most half of 18 − 4, and 3/4 in on the other side
    expect(new Map(widths).get('joist-1')).toBeLessThanOrEqual(7.75)
    expect(Math.max(...widths.map(([, width]) => width))).toBeLessThanOrEqual(16)
  })

  it('counts two beams that lie a tick in each other as in one place', () => {
    // a middle beam 1-1/2 in thick at 128 in, a rear one of 3 in at 130 7/32 in: 2 7/32 in apart for 2 1/4
    const made = design({
      shape: {
        outline: '0, 0; 451, 0; 451, 96; 163, 96; 163, 144; 115.21875, 144; 115.21875, 96; 0, 96',
        joists: 'along',
        middleBeams: '128',
      },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12 },
        beams: { front: { setback: 15, posts: 2, plies: 1 }, rear: { setback: 15 } },
      },
      ground: { base: '16 in' },
    })
    expect(made.ok ? [] : made.error.map(({ message }) => message)).toContain(
      'two beams would lie in one place',
    )
  })

  it('stands on posts at the same places when it is turned by 90 degrees', () => {
    const corners = [
      [0, 0],
      [213.3125, 0],
      [213.3125, 107],
      [268, 107],
      [268, 158],
      [109.6875, 158],
      [109.6875, 144],
      [0, 144],
    ] as const
    const turned = corners.map(([x, y]) => [y, x] as const)
    const posts = (made: ReturnType<typeof freeDeck>) =>
      made.ok ? made.value.frame.posts.map(({ x, y }) => [x, y]) : made.error
    const plain = posts(freeDeck(corners, 'away', 'left', 18))
    expect(plain).toHaveLength(12)
    expect(posts(freeDeck(turned, 'along', 'left', 18))).toEqual(
      plain.map((place) => ('path' in place ? place : [place[1], place[0]])),
    )
  })

  it('reckons a beam cut plumb at its end to its long point where another lies beside it', () => {
    // behind the slant from 0, 37 to 37, 0 the beam's far face ends at 0, 49.3: in a beam of 1-1/2 in about y = 50
    const made = design({
      shape: { outline: '0, 37; 37, 0; 120, 0; 120, 96; 0, 96', middleBeams: '50' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12 },
        beams: { front: { setback: 10.1875, posts: 2, plies: 1 }, rear: { setback: 10.1875 } },
      },
      ground: { base: '16 in' },
    })
    expect(made.ok ? [] : made.error.map(({ message }) => message)).toContain(
      'two beams would lie in one place',
    )
  })

  it('finds room for the posts of a short beam in the mirror where it does as drawn', () => {
    const corners = [
      [0, 0],
      [363, 0],
      [363, 96],
      [131, 96],
      [131, 110],
      [104, 110],
      [104, 96],
      [85, 96],
      [0, 81],
    ] as const
    for (const made of [
      freeDeck(corners, 'away', 'left', 18),
      freeDeck(
        corners.map(([x, y]) => [363 - x, y] as const),
        'away',
        'right',
        18,
      ),
    ]) {
      if (!made.ok) throw new Error(JSON.stringify(made.error))
      const { posts } = made.value.frame
      for (const [i, { x, y }] of posts.entries())
        for (const other of posts.slice(i + 1))
          expect(Math.hypot(x - other.x, y - other.y) / 32).toBeGreaterThan(16 - 1 / 8)
    }
  })

  it('says where a post of a flush beam would stand in a beam beside it', () => {
    // a rear beam from 44-1/2 to 47-1/2 in, and a post 5-1/2 in across about 50 in
    const made = design({
      shape: { outline: '0, 20; 48, 20; 48, 0; 120, 0; 120, 96; 0, 96', middleBeams: '50 flush' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12 },
        beams: { front: { setback: 26, posts: 2, plies: 1 }, rear: { setback: 26 } },
      },
      ground: { base: '16 in' },
    })
    expect(made.ok ? [] : made.error.map(({ path, message }) => `${path}: ${message}`)).toEqual([
      'shape.middleBeams: post 5 would stand in beam B2, which is not the one that it carries',
    ])
  })

  it('closes a bay on its own side of a notch', () => {
    // joists along the house; the notch comes to a point at 53, 39 between two slants of the near side
    const made = design({
      shape: { outline: '0, 97; 25, 31; 53, 39; 161, 0; 106, 74', joists: 'along', middleBeams: '50' },
      size: { height: '60 in' },
      frame: {
        joists: { size: '2x8', spacing: 12, longest: 96 },
        beams: { front: { setback: 6, posts: 2, plies: 1 }, rear: { setback: 6 } },
      },
      ground: { base: '16 in' },
    })
    if (!made.ok) throw new Error(JSON.stringify(made.error))
    const joists = made.value.frame.members.filter(({ role }) => role === 'joist')
    for (const x of [70, 90, 110]) {
      const crossed = joists
        .filter(({ box }) => box.x0 / 32 < x && box.x1 / 32 > x)
        .map(({ box }) => (box.y0 + box.y1) / 64)
        .sort((a, b) => a - b)
      for (const [i, y] of crossed.slice(1).entries())
        expect(y - (crossed[i] ?? 0), `${x}`).toBeLessThanOrEqual(12)
    }
  })
})
