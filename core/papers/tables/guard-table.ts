import type { Design } from '../../estimate-types.ts'
import { boltedPosts, type GuardPlan } from '../../guard/index.ts'
import { sideOf } from '../../stairs/index.ts'
import { printLength, ticks } from '../../units/index.ts'
import { edgeWords } from '../build/edge-words.ts'
import { balusterEdges, openingWords } from '../drawings/guard-bay.ts'
import { postMark } from '../drawings/guard-plan.ts'
import type { PaperTable } from '../types.ts'
import { tableOf } from './table.ts'

/** Every stretch of guard: its edge, posts by their places on it, and what fills the bays between them. */
export function guardTable({ stretches, backing }: GuardPlan, design: Pick<Design, 'layout'>): PaperTable {
  // blocks of its own, and those of the frame that stand tight against it
  const blocked = new Set(backing.flatMap(({ post, blocks }) => (blocks.length > 0 ? [post] : [])))
  return tableOf(
    'guard',
    'Guard',
    [
      ['number', 'Stretch', 'right'],
      ['edge', 'Edge', 'left'],
      ['from', 'From', 'right'],
      ['to', 'To', 'right'],
      ['posts', 'Post centres, running from 0 of the edge', 'left'],
      ['bays', 'Bays: clear width, balusters', 'left'],
    ],
    stretches.map(({ number, edge, landing, from, to, posts, bays }) => ({
      number: `${number}`,
      edge: landing === null ? edgeWords(edge, design) : `landing, ${edge.side} side`,
      from: place(from),
      to: place(to),
      posts: posts
        .map(({ id, at }) => `${postMark(id)} ${place(at)}${blocked.has(id) ? ' (blocking)' : ''}`)
        .join(', '),
      bays: bays
        .map(({ clear, balusters }) => `${printLength(clear)}: ${balusters === 0 ? 'panel' : balusters}`)
        .join('; '),
    })),
  )
}

/** Bays that are filled alike, with the places of their balusters for marking both rails at once. */
export function guardBaysTable({ stretches }: GuardPlan): PaperTable {
  const bays = stretches.flatMap(({ number, bays: own }) =>
    own.map((bay, i) => ({ bay, name: `${number}.${i + 1}` })),
  )
  const alike = Map.groupBy(
    bays.filter(({ bay }) => bay.balusters > 0),
    ({ bay }) => `${bay.clear} ${bay.balusters}`,
  )
  return tableOf(
    'guard-bays',
    'Marks on the rails',
    [
      ['bays', 'Bays', 'left'],
      ['clear', 'Rails', 'right'],
      ['count', 'Balusters', 'right'],
      ['opening', 'Opening', 'right'],
      ['marks', 'Near edge of each baluster, running from the rail’s end', 'left'],
    ],
    [...alike.values()].flatMap((group) => {
      const [first] = group
      if (first === undefined) return []
      const { bay } = first
      return [
        {
          bays: group.map(({ name }) => name).join(', '),
          clear: printLength(bay.clear),
          count: `${bay.balusters}`,
          opening: openingWords(bay.opening),
          marks: balusterEdges(bay).map(place).join(', '),
        },
      ]
    }),
  )
}

/** Guards beside stairs: posts by their places from the head of their flight, level and along the slope, and how the bays are filled. */
export function stairGuardTable({ stairs }: GuardPlan, plans: Design['stairs']): PaperTable {
  return tableOf(
    'stair-guard',
    'Guard beside the stairs',
    [
      ['number', 'Side, as on the plan', 'left'],
      ['flight', 'Flight', 'right'],
      ['posts', 'Post centres from the head of the flight: level (along the slope)', 'left'],
      ['rail', 'Lower rail over the nosings', 'right'],
      ['slope', 'Slope', 'right'],
      ['bays', 'Bays: clear width, level, and balusters', 'left'],
      ['opening', 'Opening', 'right'],
      ['marks', 'Near edges of balusters, along the slope from the upper post’s face', 'left'],
    ],
    stairs.map(({ number, flight, across, slope, lowerRail, posts, degrees, bays }) => ({
      number: `${number}, ${planSide(plans, flight, across)} side`,
      flight: `${flight}`,
      posts: posts
        .map(({ at }, i) => `SG${number}-${i + 1} ${place(at)} (${place(at * Math.hypot(1, slope))})`)
        .join(', '),
      rail: printLength(lowerRail),
      slope: `${Number((degrees / 100).toFixed(1))}°`,
      bays: bays
        .map(({ clear, balusters }) => `${printLength(clear)}: ${balusters === 0 ? 'panel' : balusters}`)
        .join('; '),
      opening: [
        ...new Set(bays.flatMap((bay) => (bay.balusters === 0 ? [] : [openingWords(bay.opening, true)]))),
      ].join('; '),
      marks: [
        ...new Set(
          bays.map((bay) =>
            balusterEdges(bay)
              .map((edge) => place(edge * Math.hypot(1, slope)))
              .join(', '),
          ),
        ),
      ].join('; '),
    })),
  )
}

/** Posts beside the stairs as they are sawn, and where their bolts go through post and stringer. */
export function stairPostsTable({ stairs }: GuardPlan, design: Pick<Design, 'stairs'>): PaperTable {
  return tableOf(
    'stair-posts',
    'Posts beside the stairs',
    [
      ['mark', 'Post', 'left'],
      ['length', 'Length, to its long point', 'right'],
      ['lower', 'Lower bolt, from its lower end', 'right'],
      ['upper', 'Upper bolt', 'right'],
    ],
    stairs
      .flatMap((one) => boltedPosts(design, one))
      .map(({ mark, length, bolts }) => ({
        mark,
        length: printLength(length),
        lower: bolts === null ? 'ask a designer' : printLength(bolts[0]),
        upper: bolts === null ? '' : printLength(bolts[1]),
      })),
  )
}

/** The side of a flight that a guard stands on, by the word that the plan has for it, whichever way one walks. */
function planSide(plans: Design['stairs'], flight: number, across: number): string {
  const one = plans.flatMap(({ flights }) => flights).find(({ number }) => number === flight)
  if (one === undefined) throw new Error('a guard beside stairs has its flight')
  const way = across > one.width / 2 ? 1 : -1
  return sideOf({ x: way * one.across.x, y: way * one.across.y })
}

/** A place along an edge, to the nearest 1/32 in. */
function place(at: number): string {
  return printLength(ticks(Math.round(at)))
}
