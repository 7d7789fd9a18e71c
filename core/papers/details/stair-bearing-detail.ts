import { sectionOf } from '../../data/index.ts'
import { type Job, titleOfStairs } from '../../job/index.ts'
import { type PlacedFlight, RIM, type StairPlan, type StringerPattern } from '../../stairs/index.ts'
import { inches, printInches, printLength, type Ticks, ticks } from '../../units/index.ts'
import { headWords, topStepWords } from '../build/stair-bearing-words.ts'
import { levelDimension, uprightDimension } from '../drawings/shapes.ts'
import { box, type Detail, detail, trace } from './detail.ts'

/** A flight with what it is drawn from. */
interface Hung {
  readonly job: Job
  readonly stairs: StairPlan
  readonly flight: PlacedFlight
  readonly pattern: StringerPattern
}

/** What each flight hangs on at its head, and the strip that a flight stands on at a landing, in section along the way down. */
export function stairBearingDetails(job: Job, stairs: StairPlan): readonly Detail[] {
  return stairs.flights.flatMap((flight, i) => {
    const pattern = stairs.patterns.find((one) => one.flight === flight.number)
    if (pattern === undefined) return []
    const hung: Hung = { job, stairs, flight, pattern }
    return [headDetail(hung, i === 0), ...(pattern.below > 0 ? [stripDetail(hung)] : [])]
  })
}

/** The floor above at the left, the way down to the right; y counts down from the walking surface above. */
function headDetail({ job, stairs, flight, pattern }: Hung, isDeck: boolean): Detail {
  const id = `detail-stair-head-${flight.number}`
  const header = stairs.members.find((one) => one.id === `stair-header-${flight.number}`)
  const riser = stairs.members.find(({ role }) => role === 'riser')
  if (header === undefined) throw new Error('a flight hangs on a header')
  const board = sectionOf(job.decking.size).thickness
  const joist = sectionOf(job.frame.joists.size)
  const under = sectionOf(header.product.size)
  const top = board + joist.depth
  const bottom = top + under.depth
  const { rise, run, topRun, step, drop, kind } = pattern
  const { riserBoard } = stairs.tread
  const slope = rise / run
  const slide = run - topRun
  const lower = drop + slide * slope + (sectionOf('2x12').depth * step) / run
  const head = kind === 'cut' ? rise + drop : 0
  const plies = isDeck || (stairs.platform?.faced ?? 0) === 0 ? 1 : 3
  const back = plies * joist.thickness
  const behind = isDeck ? sectionOf('2x6').thickness : sectionOf(job.frame.postSize).depth
  const thick = sectionOf(stairs.tread.product.size).thickness
  const far = topRun + run
  const upper =
    kind === 'cut'
      ? trace(
          'stringer',
          [
            [0, head],
            [topRun, head],
            [topRun, head + rise],
            [far, head + rise],
          ],
          'medium',
        )
      : trace(
          'stringer',
          [
            [0, slide * slope],
            [far, slide * slope + far * slope],
          ],
          'medium',
        )
  return detail(
    id,
    titleOfStairs(stairs.branch, `Head of flight ${flight.number}, section along the way down`),
    [
      box('decking', [-inches(18), 0], [flight.over, board], { fill: 'wood' }),
      ...Array.from({ length: plies }, (_, i) =>
        box('rim', [-(i + 1) * joist.thickness, board], [-i * joist.thickness, top], {
          fill: 'wood',
          weight: 'heavy',
        }),
      ),
      // where a joist runs along the edge none ends at it
      ...(isDeck && stairs.headBoard !== RIM ? [] : [box('joist', [-inches(18), board], [-back, top], {})]),
      box(header.id, [-under.thickness, top], [0, bottom], { fill: 'wood', weight: 'heavy' }),
      isDeck
        ? box('stair-upright', [-under.thickness - behind, board], [-under.thickness, bottom], {
            fill: 'wood',
          })
        : box('landing-post', [-under.thickness - behind, top], [-under.thickness, bottom + inches(3)], {
            fill: 'wood',
          }),
      ...upper,
      ...trace(
        'stringer',
        [
          [0, kind === 'cut' ? head : slide * slope],
          [0, lower],
          [far, lower + far * slope],
        ],
        'medium',
      ),
      ...[1, 2].map((n) => {
        const front = flight.over + n * run
        const rear = Math.max(n === 1 ? 0 : Number.NEGATIVE_INFINITY, front - stairs.tread.depth)
        return box('tread', [rear, n * rise], [front, n * rise + thick], { fill: 'wood' })
      }),
      ...(riser === undefined
        ? []
        : [0, 1].map((n) =>
            box(
              'riser',
              [topRun + n * run, (n + 1) * rise + thick],
              [
                topRun + n * run + riserBoard,
                (n + 1) * rise + thick + (riser.ripTo ?? sectionOf(riser.product.size).depth),
              ],
              { fill: 'wood' },
            ),
          )),
      levelDimension(id, flight.over, flight.over + run, -inches(2), -inches(4)),
      uprightDimension(id, 0, top, -inches(18), -inches(4)),
      uprightDimension(id, top, bottom, -inches(18), -inches(4)),
      uprightDimension(id, 0, nearestTick(head), far, inches(6)),
      uprightDimension(id, 0, nearestTick(lower), far, inches(12)),
    ],
    [
      {
        at: [-under.thickness / 2, (top + bottom) / 2],
        to: [-inches(26), bottom + inches(5)],
        text: isDeck
          ? headWords(stairs)
          : `Header ${header.mark}, ${header.product.size}, right under the landing’s frame, its top ${printInches(nearestTick(top))} under the landing’s boards, flat on the faces of the landing posts: two 1/2 in bolts through each, one over the other, 1 1/2 in apart, 2 in or more from its edges (common practice, no source).`,
      },
      {
        at: [inches(1), lower - inches(1)],
        to: [inches(6), bottom + inches(8)],
        text: `The stringers’ heads stand from ${printInches(nearestTick(head))} to ${printInches(nearestTick(lower))} under the boards above: a sloped hanger at each, its seat on the header, every hole filled. The two outer ones stand flush with the header’s ends: their hangers have flanges turned in, or a plate behind.`,
      },
      {
        at: [flight.over / 2, board / 2],
        to: [inches(6), -inches(12)],
        text: topStepWords(stairs, flight, pattern),
      },
    ],
  )
}

/** The landing at the left, the way up to the right; y counts down from its boards. */
function stripDetail({ job, stairs, flight, pattern }: Hung): Detail {
  const id = `detail-stair-strip-${flight.number}`
  const strip = stairs.members.find((one) => one.id === `stair-strip-${flight.number}`)
  const riser = stairs.members.find(({ role }) => role === 'riser')
  const { nosing, riserBoard } = stairs.tread
  if (strip === undefined) throw new Error('a flight at a landing stands on a strip')
  const board = sectionOf(job.decking.size).thickness
  const joist = sectionOf(job.frame.joists.size)
  const high = sectionOf(strip.product.size)
  const { rise, run, step, drop, kind, below, count } = pattern
  const slope = rise / run
  const low = drop + (sectionOf('2x12').depth * step) / run - rise
  const seat = (low - below) / slope
  const first = rise - drop
  const far = 2 * run
  const thick = sectionOf(stairs.tread.product.size).thickness
  const upper: readonly (readonly [number, number])[] =
    kind === 'cut'
      ? [
          [run, -first],
          [run, -first - rise],
          [far, -first - rise],
        ]
      : [[far, -rise - far * slope]]
  return detail(
    id,
    titleOfStairs(
      stairs.branch,
      `Foot of flight ${flight.number} at the landing, section along the way down`,
    ),
    [
      box('landing-decking', [-inches(18), 0], [0, board], { fill: 'wood' }),
      box('landing-joist', [-inches(18), board], [-2 * joist.thickness, board + joist.depth], {}),
      ...[0, 1].map((i) =>
        box(
          'landing-beam',
          [-(i + 1) * joist.thickness, board],
          [-i * joist.thickness, board + joist.depth],
          {
            fill: 'wood',
            weight: 'heavy',
          },
        ),
      ),
      box(strip.id, [0, below], [high.thickness, below + high.depth], { fill: 'wood', weight: 'heavy' }),
      ...trace('stringer', [[seat, below], [0, below], [0, -first], ...upper], 'medium'),
      ...trace(
        'stringer',
        [
          [seat, below],
          [far, low - far * slope],
        ],
        'medium',
      ),
      ...[0, 1].map((n) => {
        const front = n * run - riserBoard - nosing
        return box('tread', [front, -(n + 1) * rise], [front + stairs.tread.depth, -(n + 1) * rise + thick], {
          fill: 'wood',
        })
      }),
      ...(riser === undefined
        ? []
        : [0, 1].map((n) =>
            box(
              'riser',
              [n * run - riserBoard, -(n + 1) * rise + thick],
              [n * run, -(n + 1) * rise + thick + (riser.ripTo ?? sectionOf(riser.product.size).depth)],
              { fill: 'wood' },
            ),
          )),
      uprightDimension(id, 0, below, -inches(18), -inches(4)),
    ],
    [
      {
        at: [high.thickness / 2, below + high.depth / 2],
        to: [inches(8), below + inches(8)],
        text: `Ledger strip ${strip.mark}, ${strip.product.size} on edge, ${printLength(strip.length)} long, on the face of the landing’s beam, its top ${printInches(below)} under the landing’s boards: three 16d nails at each stringer (IRC Table R602.3(1), from memory).`,
      },
      {
        at: [high.thickness / 2, below - inches(1)],
        to: [inches(14), below + inches(3)],
        text: `The stringer ends plumb on the beam’s face; its level cut, ${printInches(nearestTick(Math.floor(seat)))} long, stands on the strip. An angle at each of the ${count} stringers holds it to the beam, every hole filled. Common practice, no source.`,
      },
    ],
  )
}

function nearestTick(length: number): Ticks {
  return ticks(Math.round(length))
}
