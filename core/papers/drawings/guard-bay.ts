import { sectionOf } from '../../data/index.ts'
import type { Design } from '../../estimate-types.ts'
import { balusterPlaces, type GuardBay, type GuardPlan, UNDER_LOWER_RAIL } from '../../guard/index.ts'
import { inches, printInches, type Ticks, ticks } from '../../units/index.ts'
import { box } from '../details/detail.ts'
import type { Drawing, Primitive } from '../types.ts'
import { drawingOf, levelDimension, uprightDimension } from './shapes.ts'

/** What a bay is made of, from the decking up, ticks. */
export interface BayHeights {
  /** from the decking to the lower rail, and to under the cap */
  readonly below: Ticks
  readonly underCap: Ticks
  /** a rail on edge */
  readonly rail: Ticks
}

/** Heights in a bay with balusters, which reach from the lower rail's lower edge to under the cap. */
export function bayHeights({ job }: Design, baluster: Ticks): BayHeights {
  const { height, cap } = job.guard
  const underCap = ticks(height - (cap === 'none' ? 0 : sectionOf(cap).thickness))
  return { below: ticks(underCap - baluster), underCap, rail: sectionOf('2x4').depth }
}

/** The bay of which there are most; of as many the widest. */
export function typicalBay({ stretches }: GuardPlan): GuardBay | null {
  const alike = Map.groupBy(
    stretches.flatMap(({ bays }) => bays),
    ({ clear, balusters }) => `${clear} ${balusters}`,
  )
  const [most] = [...alike.values()].toSorted(
    (a, b) => b.length - a.length || (b[0]?.clear ?? 0) - (a[0]?.clear ?? 0),
  )
  return most?.[0] ?? null
}

/** Side of a bay's balusters, ticks. */
function sideOf({ clear, balusters, opening }: GuardBay): number {
  return balusters === 0 ? 0 : (clear - opening * (balusters + 1)) / balusters
}

/** Near edges of a bay's balusters from the face of the post at its beginning, ticks, not always whole. */
export function balusterEdges(bay: GuardBay): readonly number[] {
  return balusterPlaces(bay).map((middle) => middle - bay.from - sideOf(bay) / 2)
}

/** A bay seen from the deck with its true dimensions: posts, rails, balusters or the room of a panel, decking, rim. */
export function guardBay(design: Design, bay: GuardBay, baluster: Ticks | null): Drawing {
  const { job } = design
  const { height, postSize, cap } = job.guard
  const post = sectionOf(postSize).thickness
  const joist = sectionOf(job.frame.joists.size).depth
  const decking = sectionOf(job.decking.size).thickness
  const { below, underCap, rail } = bayHeights(design, baluster ?? ticks(height))
  const { clear } = bay
  const id = 'guard-bay'
  const beyond = inches(8)
  const places = balusterEdges(bay)
  const [first = 0] = places
  const wide = sideOf(bay)
  const rails: readonly Primitive[] =
    baluster === null
      ? [box('guard-panel', [0, -underCap], [clear, -UNDER_LOWER_RAIL], { stroke: 'hidden', weight: 'fine' })]
      : [
          box('guard-rail', [0, -below - rail], [clear, -below], { fill: 'wood' }),
          box('guard-rail', [0, -underCap], [clear, -underCap + rail], { fill: 'wood' }),
        ]
  return drawingOf(
    id,
    'A bay seen from the deck',
    [
      box('rim', [-post - beyond, decking], [clear + post + beyond, decking + joist], {
        weight: 'fine',
        stroke: 'hidden',
      }),
      box('decking', [-post - beyond, 0], [clear + post + beyond, decking], { fill: 'wood', weight: 'fine' }),
      ...[-post, clear].flatMap((x): readonly Primitive[] => [
        box('guard-post', [x, -underCap], [x + post, 0], { fill: 'wood', weight: 'heavy' }),
        box('guard-post', [x, decking], [x + post, decking + joist], { weight: 'fine', stroke: 'hidden' }),
      ]),
      ...rails,
      ...places.map((x) =>
        box('baluster', [x, -underCap], [x + wide, -below], { fill: 'wood', weight: 'medium' }),
      ),
      ...(cap === 'none'
        ? []
        : [
            box('guard-cap', [-post - beyond, -height], [clear + post + beyond, -underCap], {
              fill: 'wood',
              weight: 'medium',
            }),
          ]),
      levelDimension(id, 0, clear, -height, -inches(5)),
      uprightDimension(id, -height, 0, clear + post + beyond, inches(12)),
      ...(baluster === null
        ? []
        : [
            uprightDimension(id, -underCap, -below, -post - beyond, -inches(5)),
            uprightDimension(id, -below, 0, -post - beyond, -inches(12)),
            ...openingMark(first, decking + joist, bay.opening),
          ]),
      uprightDimension(id, decking, decking + joist, clear + post + beyond, inches(5)),
    ],
    inches(2),
  )
}

/** A figure that no tape shows is written, not measured: between two lines down from the opening. */
function openingMark(first: number, y: number, opening: number): readonly Primitive[] {
  const id = 'guard-bay'
  const [near, far] = [y + inches(1), y + inches(5)]
  const upright = (x: number): Primitive => ({
    kind: 'line',
    id,
    layer: 'guard',
    x1: x,
    y1: near,
    x2: x,
    y2: far,
    weight: 'fine',
    stroke: 'solid',
  })
  return [
    upright(0),
    upright(first),
    {
      kind: 'text',
      id,
      layer: 'guard',
      x: first / 2,
      y: far + inches(3),
      text: `opening ${openingWords(opening)}`,
      anchor: 'middle',
      size: 'small',
    },
  ]
}

/** What may not pass: a 4 in ball, beside stairs one of 4-3/8 in. IRC 2021 R312.1.3. */
const BALL = { level: inches(4), sloped: inches(4.375) } as const

/**
 * An opening that is nothing a tape shows, rounded up to 1/16 in and said to be the most; where that would be what may not
 * pass, that it is less.
 */
export function openingWords(opening: number, sloped = false): string {
  const ball = sloped ? BALL.sloped : BALL.level
  const up = ticks(Math.ceil(opening / 2 - 1e-6) * 2)
  return opening < ball && up >= ball ? `under ${printInches(ball)}` : `at most ${printInches(up)}`
}
