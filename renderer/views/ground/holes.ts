import type { Design } from '../../../core/estimate-types.ts'
import { allHoles, layoutStrings } from '../../../core/ground/index.ts'
import { footingScheduleTable, offsetText } from '../../../core/papers/index.ts'
import { printInches, printLength } from '../../../core/units/index.ts'

/** One hole as it is set out: offsets from the deck's left corner at the wall, and the diagonals that prove it. */
export interface Hole {
  readonly id: string
  readonly postId: string
  readonly number: number
  readonly x: number
  readonly y: number
  /** the two strings that cross over its centre */
  readonly strings: string
  readonly across: string
  readonly away: string
  /** from the deck's left and right corners at the wall, to the nearest 1/16 in */
  readonly fromLeft: string
  readonly fromRight: string
  readonly depth: string
  readonly hole: string
  readonly tube: string
  readonly tubeLength: string
  readonly base: string
  readonly concrete: string
  readonly load: string
  /** under the footing, of what the soil is reckoned to carry */
  readonly pressure: string
  readonly post: string
}

export function holesOf(design: Design): readonly Hole[] {
  const { takeoff } = design
  const places = new Map(layoutStrings(design).crossings.map((hole) => [hole.number, hole]))
  const rows = new Map(footingScheduleTable(design).rows.map((row) => [row.number, row]))
  const volume = new Map(
    takeoff.volumes.concreteEach.map(({ footingId, cubicFeet }) => [footingId, cubicFeet]),
  )
  return allHoles(design).map((footing) => {
    const at = places.get(footing.number)
    const row = rows.get(`${footing.number}`)
    return {
      id: footing.id,
      postId: footing.post?.id ?? footing.id,
      number: footing.number,
      x: footing.x,
      y: footing.y,
      strings: at?.strings ?? '',
      across: offsetText(at?.along ?? footing.x),
      away: offsetText(at?.fromWall ?? footing.y),
      fromLeft: at === undefined ? '' : printLength(at.fromLeftCorner),
      fromRight: at === undefined ? '' : printLength(at.fromRightCorner),
      depth: printInches(footing.depth),
      hole: printInches(footing.holeDiameter),
      tube: printInches(footing.tube),
      tubeLength: printInches(footing.tubeLength),
      base:
        footing.base === 0 ? 'none' : `${printInches(footing.base)} × ${printInches(footing.baseThickness)}`,
      concrete: `${(volume.get(footing.id) ?? 0).toFixed(2)} cu ft`,
      load: row?.load ?? '',
      pressure:
        row === undefined
          ? ''
          : /\d/.test(row.pressure ?? '')
            ? `${row.pressure} of ${row.bearing}`
            : (row.pressure ?? ''),
      post: row?.post ?? '',
    }
  })
}
