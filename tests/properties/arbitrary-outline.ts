import fc from 'fast-check'
import type { JobStatement } from '../../core/job/index.ts'

/** Corners in inches. */
export type Corners = readonly (readonly [number, number])[]

const thirtySeconds = (min: number, max: number) =>
  fc.integer({ min: min * 32, max: max * 32 }).map((n) => n / 32)
const length = (min: number, max: number) =>
  fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min, max }) },
    { weight: 1, arbitrary: thirtySeconds(min, max) },
  )

type Corner = { readonly kind: 'plain' | 'notch' | 'clip'; readonly a: number; readonly b: number }
const corner: fc.Arbitrary<Corner> = fc.record({
  kind: fc.constantFrom('plain' as const, 'plain' as const, 'notch' as const, 'clip' as const),
  a: length(14, 110),
  b: length(14, 110),
})

/** A rectangle some of whose corners are cut off or cut out, and with or without a step in its front: what people build. */
const builtOutline: fc.Arbitrary<Corners> = fc
  .record({
    w: length(120, 480),
    d: length(96, 300),
    corners: fc.tuple(corner, corner, corner, corner),
    bay: fc.option(
      fc.record({ at: fc.integer({ min: 20, max: 50 }), wide: length(24, 120), deep: length(14, 60) }),
    ),
  })
  .map(({ w, d, corners, bay }) => {
    // each corner is come to along one side and left along the next
    const at: readonly (readonly [number, number, number, number])[] = [
      [0, 0, 0, -1],
      [w, 0, 1, 0],
      [w, d, 0, 1],
      [0, d, -1, 0],
    ]
    const points = at.flatMap(([x, y, dx, dy], i): [number, number][] => {
      const { kind, a, b } = corners[i] as Corner
      // away from the corner: back along the side come from, on along the side to come
      const back: [number, number] = [x - dx * a, y - dy * a]
      const [nx, ny] = [-dy, dx]
      const on: [number, number] = [x + nx * b, y + ny * b]
      if (kind === 'plain') return [[x, y]]
      return kind === 'clip' ? [back, on] : [back, [back[0] + on[0] - x, back[1] + on[1] - y], on]
    })
    if (bay === null) return points
    const start = (w * bay.at) / 100
    const front = points.findIndex(([, y], i) => y === d && points[i + 1]?.[1] === d)
    const [right, left] = [points[front]?.[0] ?? 0, points[front + 1]?.[0] ?? 0]
    if (front < 0 || start - bay.wide < left + 13 || start > right - 13) return points
    const floor = Math.round(start)
    const step: [number, number][] = [
      [floor, d],
      [floor, d + bay.deep],
      [floor - bay.wide, d + bay.deep],
      [floor - bay.wide, d],
    ]
    return [...points.slice(0, front + 1), ...step, ...points.slice(front + 1)]
  })

/** Any star-shaped outline, edges at every angle. */
const starOutline: fc.Arbitrary<Corners> = fc
  .array(fc.record({ turn: fc.integer({ min: 1, max: 100 }), reach: fc.integer({ min: 40, max: 260 }) }), {
    minLength: 3,
    maxLength: 9,
  })
  .map((spokes) => {
    const whole = spokes.reduce((sum, { turn }) => sum + turn, 0)
    let turned = 0
    const points = spokes.map(({ turn, reach }): [number, number] => {
      turned += turn
      const angle = (2 * Math.PI * turned) / whole
      return [Math.round(reach * Math.cos(angle)), Math.round(reach * Math.sin(angle))]
    })
    const [x, y] = [Math.min(...points.map((p) => p[0])), Math.min(...points.map((p) => p[1]))]
    return points.map(([px, py]) => [px - x, py - y])
  })

export const anyCorners: fc.Arbitrary<Corners> = fc.oneof(
  { weight: 4, arbitrary: builtOutline },
  { weight: 1, arbitrary: starOutline },
)

export function outlineText(corners: Corners): string {
  return corners.map(([x, y]) => `${x}, ${y}`).join('; ')
}

/** Nothing that many times as often as something. */
function seldom<T>(arbitrary: fc.Arbitrary<T>, nothing: number): fc.Arbitrary<T | null> {
  return fc.oneof({ weight: nothing, arbitrary: fc.constant(null) }, { weight: 1, arbitrary })
}

/** A platform before the deck or beside its right end, one to three risers down or up, as long as it or less. */
const anyLevel = fc.record({
  side: fc.constantFrom('front', 'right'),
  from: length(0, 60),
  long: length(60, 200),
  deep: length(48, 120),
  height: fc.constantFrom(52.5, 52.75, 52, 50, 48, 67.5, 69.25),
  beams: fc.constantFrom('own', 'shared'),
})

function levelText(corners: Corners, { side, from, long, deep, height }: LevelOf): string {
  const far = Math.max(...corners.map(([x, y]) => (side === 'front' ? y : x)))
  const box: Corners = [
    [from, far],
    [from + long, far],
    [from + long, far + deep],
    [from, far + deep],
  ]
  return `${height} in: ${outlineText(side === 'front' ? box : box.map(([x, y]) => [y, x]))}`
}

type LevelOf = typeof anyLevel extends fc.Arbitrary<infer L> ? L : never

/** Jobs of any outline, on ledgers and free, framed either way, some in two zones, on two levels or with an opening. */
export const anyShapedStatement: fc.Arbitrary<JobStatement> = fc
  .record({
    corners: anyCorners,
    attachment: fc.constantFrom('ledger', 'ledger', 'freestanding'),
    walls: seldom(fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 3 }), 2),
    joists: fc.constantFrom('away', 'away', 'along'),
    zone: seldom(
      fc.record({
        x: fc.constantFrom(0, 60, 120),
        y: fc.constantFrom(0, 48),
        width: length(48, 200),
        depth: length(48, 200),
        joists: fc.constantFrom('along', 'away'),
      }),
      3,
    ),
    seams: fc.constantFrom('single', 'doubled', 'flush', 'flush'),
    level: seldom(anyLevel, 3),
    opening: seldom(
      fc.record({ x: length(14, 200), y: length(14, 120), width: length(12, 60), depth: length(12, 60) }),
      3,
    ),
    middle: seldom(
      fc.record({
        at: length(50, 160),
        plies: fc.constantFrom(1, 2, 2, 3),
        set: fc.constantFrom('dropped', 'dropped', 'flush'),
      }),
      2,
    ),
    set: fc.constantFrom('dropped', 'dropped', 'dropped', 'flush'),
    overMiddle: fc.constantFrom('by stock', 'one piece', 'lapped', 'butted'),
    longest: length(96, 240),
    size: fc.constantFrom('2x8', '2x10', '2x12'),
    spacing: fc.constantFrom(12, 16, 24),
    layoutFrom: fc.constantFrom('left', 'right'),
    rimPlies: fc.constantFrom(1, 2),
    setback: length(6, 30),
    posts: fc.integer({ min: 2, max: 5 }),
  })
  .map((any) => ({
    shape: {
      outline: outlineText(any.corners),
      walls: any.walls === null ? '' : any.walls.join(', '),
      joists: any.joists,
      zones:
        any.zone === null
          ? ''
          : `${any.zone.x}, ${any.zone.y}, ${any.zone.width}, ${any.zone.depth}: ${any.zone.joists}`,
      seams: any.seams,
      levels: any.level === null ? '' : levelText(any.corners, any.level),
      levelBeams: any.level?.beams ?? 'own',
      openings:
        any.opening === null
          ? ''
          : `${any.opening.x}, ${any.opening.y}, ${any.opening.width}, ${any.opening.depth}`,
      middleBeams: any.middle === null ? '' : `${any.middle.at} ${any.middle.set}`,
    },
    size: { height: '60 in' },
    site: { attachment: any.attachment },
    frame: {
      joists: {
        size: any.size,
        spacing: any.spacing,
        layoutFrom: any.layoutFrom,
        overMiddle: any.overMiddle,
        longest: any.longest,
      },
      rimPlies: any.rimPlies,
      beams: {
        front: {
          set: any.set,
          setback: any.setback,
          posts: any.posts,
          plies: any.middle?.plies ?? 2,
        },
        rear: { setback: any.setback },
      },
    },
    ground: { base: '16 in' },
  }))
