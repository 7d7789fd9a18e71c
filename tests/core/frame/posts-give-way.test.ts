import { describe, expect, it } from 'vitest'
import { designed } from '../../fixtures/designed.ts'

// a step whose beam is 48 in long, beside a deeper part; in the mirror its posts are placed before the other beam's

const step = (mirrored: boolean) => {
  const corners = [
    [0, 0],
    [144, 0],
    [144, 96],
    [96, 96],
    [96, 108],
    [0, 108],
  ] as const
  const outline = (mirrored ? corners.map(([x, y]) => [144 - x, y]).reverse() : corners)
    .map((corner) => corner.join(', '))
    .join('; ')
  const made = designed({
    shape: { outline },
    site: { attachment: 'freestanding' },
    size: { height: '60 in' },
  })
  return made
}

describe('posts of a beam one of which gives way to the footing of another beam’s', () => {
  it.each([false, true])('stand at most a quarter of their span from its ends, mirrored: %s', (mirrored) => {
    const { frame, checks } = step(mirrored)
    const short = frame.beams.find(({ line: [from, to] }) => to.x - from.x === 48 * 32)
    const [from, to] = short?.line ?? [{ x: 0 }, { x: 0 }]
    const [left = 0, right = 0] = frame.posts
      .filter(({ beamId }) => beamId === short?.id)
      .map(({ x }) => x)
      .sort((a, b) => a - b)
    // as drawn both would stand at 8 in, but the one beside the step gives way to 9 in: the other to 48 - 5 x 9
    const insets = [left - from.x, to.x - right].map((inset) => inset / 32)
    expect(insets).toEqual(mirrored ? [8, 8] : [9, 3])
    expect(checks.filter(({ id, status }) => id.startsWith('beam-overhang') && status === 'fails')).toEqual(
      [],
    )
  })
})
