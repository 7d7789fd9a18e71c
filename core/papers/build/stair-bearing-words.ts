import { type PlacedFlight, RIM, type StairPlan, type StringerPattern } from '../../stairs/index.ts'
import { inches, printInches, printLength, type Ticks, ticks } from '../../units/index.ts'

/** What the first flight hangs on under the deck, by marks; what no upright fits behind is told. */
export function headWords({ members, patterns, flights, headBoard }: StairPlan): string {
  const header = members.find(({ id }) => id === `stair-header-${flights[0]?.number}`)
  const uprights = members.filter(({ role }) => role === 'stair upright')
  const heads = patterns.find(({ flight }) => flight === flights[0]?.number)?.count ?? 0
  const [one] = uprights
  const below = (flights[0]?.topLevel ?? 0) - (header?.box.z1 ?? 0)
  const isRim = headBoard === RIM
  const board = isRim ? 'the rim' : headBoard
  return [
    ...(header === undefined
      ? []
      : [
          `Header ${header.mark}, ${header.product.size}, right under ${board} and in its plane, its top ${printInches(nearest(below))} under the top of the decking.`,
        ]),
    ...(one === undefined
      ? []
      : [
          `Behind ${headBoard} and header ${uprights.length === 1 ? 'upright' : 'uprights'} ${uprights.map(({ mark }) => mark).join(', ')}, ${one.product.size} flat, ${printLength(one.length)} long, at the stringers, beside what stands there: two 1/2 in bolts through the ${isRim ? 'rim' : 'joist'} and two through the header each, one over the other, 1 1/2 in apart, 2 in or more from edges and ends (common practice, no source).`,
        ]),
    ...(uprights.length < heads
      ? [
          `At ${heads - uprights.length} of ${heads} stringers no upright fits behind ${board}: have the header held there as a designer says.`,
        ]
      : []),
    ...(isRim
      ? []
      : [
          `No joist ends there: ${headBoard} runs along the edge, and its own two ends hold the head of the stairs; the checks say for how much more they must be listed.`,
        ]),
  ].join(' ')
}

/** How the uppermost run is set out so that every step of a flight is as deep as the others, and by what its first nosing is made. */
export function topStepWords(
  { tread, flights }: StairPlan,
  flight: PlacedFlight,
  { run, topRun }: StringerPattern,
): string {
  const boards = flight === flights[0] ? 'the deck’s boards' : 'the landing’s boards'
  const slide = run - topRun
  return [
    `From nosing to nosing every step is ${printInches(run)}, the first from the edge of ${boards}, which reach ${printInches(flight.over)} over the face that the heads stand against: see that they do before a stringer is cut.`,
    ...(slide === 0
      ? []
      : [
          `The uppermost run of the stringers is therefore ${printInches(topRun)}, ${printInches(nearest(Math.abs(slide)))} ${slide > 0 ? 'shorter' : 'longer'} than the others: ${tread.riserBoard > 0 ? `riser board ${printInches(tread.riserBoard)} and nosing ${printInches(tread.nosing)}` : `nosing ${printInches(tread.nosing)}`}, less ${printInches(flight.over)}.`,
        ]),
    ...(flight.over > tread.nosing
      ? [
          `The uppermost tread stands ${printInches(nearest(flight.over - tread.nosing))} off the face behind it.`,
        ]
      : []),
    ...(flight.over < tread.nosing
      ? [
          `The rearmost board of the uppermost tread is ripped by ${printInches(nearest(tread.nosing - flight.over))}.`,
        ]
      : []),
  ].join(' ')
}

/** In which order boards go on the stringers, and what to measure before they are fastened. */
export function treadOrderWords({ tread, flights, patterns: [pattern] }: StairPlan): readonly string[] {
  if (pattern === undefined) return []
  const rears = Map.groupBy(flights, ({ over }) => rearWords(over - tread.nosing))
  const uppermost = [...rears].map(([words, own]) =>
    rears.size === 1 ? words : `on flight ${own.map(({ number }) => number).join(' and ')} ${words}`,
  )
  const boards =
    tread.riserBoard > 0
      ? 'From the foot up: a riser board on its rise cuts, then the tread under it, its rear edge against that board'
      : 'From the foot up, each tread with its rear edge at the rise cut'
  return [
    `${boards}; the uppermost has the face above behind it, ${uppermost.join(', ')}. Each nosing is ${printInches(tread.nosing)}. Before they are fastened measure from nosing to nosing, from the boards above too: ${printInches(pattern.run)} at every step, none 3/8 in off another.`,
  ]
}

/** Where the rear edge of an uppermost tread stands, by how much further the boards above reach than a nosing. */
function rearWords(off: number): string {
  if (off < 0) return `its rear board ripped by ${printInches(nearest(-off))}`
  return off === 0 ? 'tight against it' : `its rear edge ${printInches(nearest(off))} off`
}

/** How flights end and begin at the landing between them; null of stairs without one. */
export function atLandingWords({ members, patterns, flights, platform }: StairPlan): string | null {
  if (platform === null) return null
  const [strip] = members.filter(({ role }) => role === 'stair strip')
  const header = members.find(({ id }) => id === `stair-header-${flights.at(-1)?.number}`)
  const pattern = patterns[0]
  if (strip === undefined || header === undefined || pattern === undefined) return null
  return `Strip ${strip.mark}, ${strip.product.size} on edge, on the face of the landing’s beam, its top ${printInches(pattern.below)} under the landing’s boards, three 16d nails at each stringer: the upper flight’s stringers stand on it by their level cuts, an angle to the beam at each. Header ${header.mark}, ${header.product.size}, right under the landing’s frame on the faces of its posts, two 1/2 in bolts in each post: the lower flight hangs on it (common practice, no source; the nails IRC Table R602.3(1), from memory).`
}

/** Where the pad lies from the edge that the stairs leave: its edges away from it and along it, and its top. */
export function padPlace(
  { pad, flights, edge, totalRise, headBoard }: StairPlan,
  edgeName: string,
): string | null {
  const last = flights.at(-1)
  if (pad === null || last === undefined) return null
  const corners = [0, pad.depth].flatMap((down) =>
    [0, pad.width].map((across) => ({
      x: pad.corner.x + down * last.down.x + across * last.across.x - edge.near.x,
      y: pad.corner.y + down * last.down.y + across * last.across.y - edge.near.y,
    })),
  )
  const out = corners.map(({ x, y }) => x * edge.out.x + y * edge.out.y)
  const along = corners.map(({ x, y }) => x * edge.along.x + y * edge.along.y)
  const [from, to] = [Math.min(...along), Math.max(...along)]
  return `from ${printLength(nearest(Math.min(...out)))} to ${printLength(nearest(Math.max(...out)))} out from the ${headBoard === RIM ? 'rim' : 'joist'}’s face of the ${edgeName}, and from ${fromEnd(from)} to ${fromEnd(to)} along it; its top level with the ground there, ${printLength(totalRise)} under the top of the decking`
}

/** What the lower flight is held by on its pad: holes that need the stringers in their places. */
export function padAnchorWords({ pad, floor, connectors }: StairPlan): readonly string[] {
  const count = connectors.find(({ kind }) => kind === 'stringer foot angle')?.count ?? 0
  if (pad === null || floor !== null || count === 0) return []
  return [
    `On the pad, once the stringers stand: drill it beside each for the anchor of its angle, ${count} of 1/2 in, no deeper than their maker says for ${printInches(pad.thickness)} of concrete.`,
  ]
}

function fromEnd(at: number): string {
  return at < -inches(1 / 32) ? `${printLength(nearest(-at))} before its 0` : printLength(nearest(at))
}

function nearest(length: number): Ticks {
  return ticks(Math.round(length))
}
