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
})
