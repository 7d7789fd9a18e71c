import { type LumberSize, sectionOf } from '../data/index.ts'
import type { Box, Cause, Member, ProductClass, Role } from '../frame/index.ts'
import type { Job } from '../job/index.ts'
import { ceilTicks, printInches, type Ticks, ticks } from '../units/index.ts'
import { onFlight } from './place-flights.ts'
import type { TreadMake } from './tread-make.ts'
import type { PlacedFlight, Spot, StringerPattern } from './types.ts'

const FIELDS = ['stairs.kind', 'stairs.width', 'stairs.run', 'size.height', 'site.ground'] as const

/** The job's lumber in a size. */
export function lumberOf(job: Job, size: LumberSize): ProductClass {
  const { species, grade, treatment } = job.frame
  return { size, species, grade, treatment }
}

/** Stringers, treads, riser boards and what a flight hangs on and stands on. */
export function flightMembers(
  job: Job,
  flight: PlacedFlight,
  pattern: StringerPattern,
  make: TreadMake,
): readonly Member[] {
  return [
    header(job, flight, pattern),
    ...strip(job, flight, pattern),
    ...stringers(job, flight, pattern),
    ...treads(job, flight, pattern, make),
    ...risers(job, flight, pattern, make),
  ]
}

function stringers(job: Job, flight: PlacedFlight, pattern: StringerPattern): readonly Member[] {
  const { thickness } = sectionOf('2x12')
  const rule =
    pattern.kind === 'cut'
      ? 'Length by geometry: treads × step − drop × sine of the slope, up to 1/32 in; as many as the treads need (IRC Table R507.7, AWC DCA 6)'
      : 'Length by geometry: treads × step + rise × sine of the slope, up to 1/32 in; as many as the treads need (IRC Table R507.7, AWC DCA 6)'
  return Array.from({ length: pattern.count }, (_, i) => {
    const across = i * pattern.spacing
    return member(job, flight, {
      id: `stringer-${flight.number}-${i + 1}`,
      mark: `S${flight.number}-${i + 1}`,
      role: 'stringer',
      size: '2x12',
      length: pattern.length,
      ripTo: null,
      from: [0, across],
      to: [flight.run, across + thickness],
      levels: [flight.bottomLevel - pattern.below, flight.topLevel],
      cause: {
        fields: [...FIELDS, 'stairs.stringers', 'stairs.treads'],
        ids: [],
        rule:
          pattern.below === 0
            ? rule
            : `${rule}; and ${printInches(pattern.below)} × sine of the slope, down to the strip at the landing`,
      },
    })
  })
}

/** Of the board behind the heads of a flight's stringers. */
export function headerId(flight: number): string {
  return `stair-header-${flight}`
}

/** What a header is made of, the smallest first. */
const HEADERS: readonly LumberSize[] = ['2x6', '2x8', '2x10', '2x12']

/** Right under the rim, in its plane, as long as the flight is wide: most of a stringer's head lies lower than the rim reaches. */
function header(job: Job, flight: PlacedFlight, pattern: StringerPattern): Member {
  const rim = sectionOf(job.frame.joists.size).depth
  const top = flight.topLevel - sectionOf(job.decking.size).thickness - rim
  const slide = pattern.run - pattern.topRun
  const lowest =
    flight.topLevel -
    pattern.drop -
    (slide * pattern.rise + sectionOf('2x12').depth * pattern.step) / pattern.run
  const size = HEADERS.find((one) => sectionOf(one).depth >= top - lowest) ?? '2x12'
  const { thickness, depth } = sectionOf(size)
  return member(job, flight, {
    id: headerId(flight.number),
    mark: `SH${flight.number}`,
    role: 'stair header',
    size,
    length: flight.width,
    ripTo: null,
    from: [-thickness, 0],
    to: [0, flight.width],
    levels: [top - depth, top],
    cause: {
      fields: ['stairs.width', 'frame.joists.size'],
      ids: [`stringer-${pattern.flight}-1`],
      rule: 'A board under the rim behind the heads of the stringers, as long as the stairs are wide, the smallest that reaches down to their lower edges (common practice, no source)',
    },
  })
}

/** A 2x4 on edge: its upper edge bears the stringers. */
const STRIP: LumberSize = '2x4'

/** How high a strip is: what of a landing's beam it covers. */
export const STRIP_HEIGHT = sectionOf(STRIP).depth

/** Of the ledger strip under a flight's feet. */
export function stripId(flight: number): string {
  return `stair-strip-${flight}`
}

/** On a landing's beam under the level cuts of the stringers, as long as the flight is wide. */
function strip(job: Job, flight: PlacedFlight, { below }: StringerPattern): readonly Member[] {
  if (below === 0) return []
  const top = flight.bottomLevel - below
  return [
    member(job, flight, {
      id: stripId(flight.number),
      mark: `SL${flight.number}`,
      role: 'stair strip',
      size: STRIP,
      length: flight.width,
      ripTo: null,
      from: [flight.run - sectionOf(STRIP).thickness, 0],
      to: [flight.run, flight.width],
      levels: [top - STRIP_HEIGHT, top],
      cause: {
        fields: ['stairs.kind', 'stairs.width', 'frame.joists.size'],
        ids: [`stringer-${flight.number}-1`],
        rule: 'A ledger strip on the landing’s beam, under the stringers’ level cuts (IRC 2021 R502.6.2, from memory: 2x2 at least under joists; for stringers common practice, no source)',
      },
    }),
  ]
}

/**
 * A tread lies on cut stringers in one length, and between closed ones in one length for each bay; it butts against the
 * riser's board behind it. Where the boards above reach less than a nosing, the rim leaves no room for the rearmost board
 * of the uppermost: it is ripped.
 */
function treads(
  job: Job,
  flight: PlacedFlight,
  pattern: StringerPattern,
  make: TreadMake,
): readonly Member[] {
  const board = sectionOf(make.size).depth
  const made: Member[] = []
  for (let tread = 1; tread <= flight.treads; tread += 1) {
    const level = flight.bottomLevel + tread * pattern.rise
    const back = flight.run - tread * job.stairs.run + make.riserBoard
    for (const [bay, { from, length }] of bays(flight, pattern).entries()) {
      for (let row = 0; row < make.boards; row += 1) {
        const behind = back + row * (board + job.decking.gap)
        const down = Math.max(0, behind)
        const wide = behind + board - down
        if (wide <= 0) continue
        made.push(
          member(job, flight, {
            id: `tread-${flight.number}-${tread}-${bay + 1}-${row + 1}`,
            mark: `T${flight.number}-${tread}`,
            role: 'tread',
            size: make.size,
            length,
            ripTo: wide < board ? ticks(wide) : null,
            from: [down, from],
            to: [down + wide, from + length],
            levels: [level - make.thickness, level],
            cause: {
              fields: [...FIELDS, 'stairs.treads', 'decking.gap'],
              ids: [`stringer-${flight.number}-1`],
              rule: `${make.boards} boards a tread, side by side`,
            },
          }),
        )
      }
    }
  }
  return made
}

/** One board on edge on each rise cut but the uppermost, which the rim closes. */
function risers(
  job: Job,
  flight: PlacedFlight,
  pattern: StringerPattern,
  make: TreadMake,
): readonly Member[] {
  if (job.stairs.risers === 'open') return []
  const { thickness, depth } = sectionOf('5/4x6')
  const clear = ticks(Math.floor(pattern.rise - make.thickness))
  const ripTo = clear < depth ? clear : null
  const made: Member[] = []
  for (let riser = 1; riser <= flight.treads; riser += 1) {
    const top = flight.bottomLevel + riser * pattern.rise - make.thickness
    const face = flight.run - (riser - 1) * job.stairs.run
    for (const [bay, { from, length }] of bays(flight, pattern).entries()) {
      made.push(
        member(job, flight, {
          id: `riser-${flight.number}-${riser}-${bay + 1}`,
          mark: `RB${flight.number}-${riser}`,
          role: 'riser',
          size: '5/4x6',
          length,
          ripTo,
          from: [face, from],
          to: [face + thickness, from + length],
          levels: [top - (ripTo ?? depth), top],
          cause: {
            fields: ['stairs.risers', 'stairs.width'],
            ids: [`stringer-${flight.number}-1`],
            rule: 'One board in each riser; the rim closes the uppermost',
          },
        }),
      )
    }
  }
  return made
}

function bays(
  flight: PlacedFlight,
  pattern: StringerPattern,
): readonly { readonly from: number; readonly length: Ticks }[] {
  if (pattern.kind === 'cut') return [{ from: 0, length: flight.width }]
  const { thickness } = sectionOf('2x12')
  return Array.from({ length: pattern.count - 1 }, (_, i) => ({
    from: i * pattern.spacing + thickness,
    length: ticks(Math.floor(pattern.spacing - thickness)),
  }))
}

interface Stick {
  readonly id: string
  readonly mark: string
  readonly role: Role
  readonly size: LumberSize
  readonly length: Ticks
  readonly ripTo: Ticks | null
  /** two corners by distance down the flight and across it */
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  readonly levels: readonly [number, number]
  readonly cause: Cause
}

/** A stick of lumber on a flight; its box is the upright one round it. */
export function member(job: Job, flight: FlightFrame, stick: Stick): Member {
  const { id, mark, role, size, length, ripTo, cause } = stick
  return {
    id,
    mark,
    role,
    product: lumberOf(job, size),
    length: ceilTicks(length),
    ripTo,
    box: boxOf(flight, stick),
    ...(square(flight) ? {} : { plan: cornersOf(flight, stick) }),
    bearings: [],
    cause,
  }
}

type FlightFrame = Pick<PlacedFlight, 'head' | 'down' | 'across'>

function square({ down }: FlightFrame): boolean {
  return down.x === 0 || down.y === 0
}

/** Its four corners from above, in order round it. */
function cornersOf(flight: FlightFrame, { from, to }: Stick): readonly Spot[] {
  const round = [from, [from[0], to[1]] as const, to, [to[0], from[1]] as const]
  return round.map(([down, across]) => onFlight(flight, down, across))
}

function boxOf(flight: FlightFrame, stick: Stick): Box {
  const { levels } = stick
  const corners = cornersOf(flight, stick)
  const xs = corners.map((corner) => corner.x)
  const ys = corners.map((corner) => corner.y)
  return {
    x0: Math.min(...xs),
    x1: Math.max(...xs),
    y0: Math.min(...ys),
    y1: Math.max(...ys),
    z0: levels[0],
    z1: levels[1],
  }
}
