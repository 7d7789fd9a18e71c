import { guardBolts, sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { headerId, type StairPlan } from '../../stairs/index.ts'
import { inches, printInches, ticks } from '../../units/index.ts'

type Source = Pick<Estimate, 'frame' | 'job' | 'stairs'>

const TO_SUIT = 'length to suit: through all that it holds, with washers and nut'

/** Bolts of the stairs' heads by what they go through; those of a ledger or a brace go through what is measured there. */
export function throughBoltNote({ frame, job, stairs }: Source, isHere: (member: string) => boolean): string {
  const counted = stairs.flatMap(boltsOf).filter(({ at }) => isHere(at))
  const others =
    frame.connectors.some(({ kind, at }) => kind === 'brace bolt' && at.some(isHere)) ||
    (job.site.ledgerFastener === 'bolt' &&
      frame.members.some(({ role, id }) => role === 'ledger' && isHere(id)))
  const alike = Map.groupBy(counted, ({ through, what }) => `${through} ${what}`)
  const words = [...alike.values()].flatMap((group) => {
    const [first] = group
    const count = group.reduce((sum, one) => sum + one.count, 0)
    return first === undefined || count === 0
      ? []
      : [
          `${count} of ${boltLength(first.through)}, ${first.what}, ${printInches(ticks(first.through))} of wood`,
        ]
  })
  if (words.length === 0) return TO_SUIT
  return [...words, ...(others ? [`the others: ${TO_SUIT}`] : [])].join('; ')
}

interface Bolts {
  readonly count: number
  /** wood, ticks */
  readonly through: number
  readonly what: string
  /** id of what they hold */
  readonly at: string
}

function boltsOf({ members, connectors, flights }: StairPlan): readonly Bolts[] {
  const all = connectors.find(({ kind }) => kind === 'header bolt')?.count ?? 0
  const down = flights[0]?.down
  const header = members.find(({ id }) => id === `stair-header-${flights[0]?.number}`)
  const [post] = members.filter(({ role }) => role === 'landing post')
  const braces = bracesOf(members, connectors)
  if (header === undefined || down === undefined) return []
  const thin = sectionOf(header.product.size).thickness
  // from the header's middle to the upright's is as far as the plies of the rim before it are thick
  const behind = members
    .filter(({ role }) => role === 'stair upright')
    .map((one): Bolts => {
      const [a, b] = [middle(header), middle(one)]
      const rim = Math.abs((a.x - b.x) * down.x + (a.y - b.y) * down.y)
      const plies = Math.max(1, Math.ceil(rim / thin - 0.01))
      const through = plies * thin + sectionOf(one.product.size).thickness
      return { count: 4, through, what: 'through rim or header and the upright behind', at: header.id }
    })
  const rest = all - 4 * behind.length
  if (rest <= 0 || post === undefined) return [...behind, ...braces]
  return [
    ...behind,
    {
      count: rest,
      through: thin + sectionOf(post.product.size).thickness,
      what: 'through header and landing post',
      at: headerId(flights[1]?.number ?? 0),
    },
    ...braces,
  ]
}

function bracesOf(members: StairPlan['members'], connectors: StairPlan['connectors']): readonly Bolts[] {
  const count = connectors.find(({ kind }) => kind === 'landing brace bolt')?.count ?? 0
  const [brace] = members.filter(({ role }) => role === 'landing brace')
  const [post] = members.filter(({ role }) => role === 'landing post')
  if (brace === undefined || post === undefined) return []
  const through = sectionOf(brace.product.size).thickness + sectionOf(post.product.size).depth
  return [{ count, through, what: 'through brace and landing post', at: brace.id }]
}

function middle({ box }: Member): { readonly x: number; readonly y: number } {
  return { x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 }
}

function boltLength(through: number): string {
  const step = inches(guardBolts.step)
  return printInches(ticks(Math.ceil((through + inches(guardBolts.beyondWood)) / step - 1e-9) * step))
}

/** Outer stringers stand flush with the ends of their header, where a flange turned out has nothing behind it. */
export function stringerHangerNote({ stairs }: Pick<Source, 'stairs'>): string {
  const flights = stairs.reduce((sum, one) => sum + one.flights.length, 0)
  return flights === 0
    ? ''
    : `${2 * flights} of them for outer stringers, flush with the ends of their header: flanges turned in, or a plate behind; where the yard has none, ask the designer before the stringers are cut`
}

/** What stands behind a ledger most often: the greatest sheathing of the table's row, and a band of one board. */
const SHEATHING = inches(0.5)
const BAND = inches(1.5)
/** A lag screw's tip, tapered, past the band. */
const TIP = inches(0.5)

/** The table of ledger fasteners gives no length: it asks that the tip passes the band, and what that is must be measured. */
export function lagNote({ job }: Pick<Source, 'job'>): string {
  const ledger = sectionOf(job.frame.joists.size).thickness
  const long = printInches(ticks(ledger + SHEATHING + BAND + TIP))
  return `length to suit: through ledger, sheathing and band, its whole tip past the band’s inner face (IRC 2021 Table R507.9.1.3(1), footnotes, from memory); ${long} where sheathing is ${printInches(SHEATHING)} and the band ${printInches(BAND)}: ${printInches(ledger)} + ${printInches(SHEATHING)} + ${printInches(BAND)}, and ${printInches(TIP)} of tip (common practice, no source)`
}

/** Cast under posts and at stringers on footings; drilled into a pad, which is thinner than a post base's anchor is deep. */
export function anchorNote({ frame, stairs }: Source): string {
  const all = [...frame.connectors, ...stairs.flatMap(({ connectors }) => connectors)]
  const cast = all
    .filter(({ kind }) => kind === 'post base' || kind === 'landing post base')
    .reduce((sum, { count }) => sum + count, 0)
  const feet = stairs.flatMap(({ pad, floor, connectors }) => {
    const count = connectors.find(({ kind }) => kind === 'stringer foot angle')?.count ?? 0
    if (floor !== null || count === 0) return []
    return pad === null
      ? [`${count} of them at the feet of stringers on their footings: length to suit the angle’s listing`]
      : [
          `${count} of them for the stairs’ pad: a kind that is drilled in, no longer than its maker lists for ${printInches(pad.thickness)} of concrete`,
        ]
  })
  return [
    ...(cast === 0
      ? []
      : [
          `${cast} of them cast in under posts: length to suit, as deep as the post base’s listing asks, and its thread`,
        ]),
    ...feet,
  ].join('; ')
}

/** How wide the beams are that a cap holds, by how many plies stand in it. */
export function capNote({ frame, stairs }: Source): string {
  const widths = [
    ...frame.beams.map(({ mark, plies, size }) => ({ mark, plies, size })),
    ...stairs.flatMap(({ members }) =>
      members.flatMap(({ role, mark, product }) =>
        // two plies stand in a cap; a third board before them stands free of it
        role === 'landing beam' && mark.endsWith('a')
          ? [{ mark: mark.slice(0, -1), plies: 2, size: product.size }]
          : [],
      ),
    ),
  ].map(({ mark, plies, size }) => ({ mark, plies, wide: plies * sectionOf(size).thickness }))
  return [
    ...[...Map.groupBy(widths, ({ wide }) => wide)].map(
      ([wide, group]) =>
        `for a beam ${printInches(ticks(wide))} wide, ${group[0]?.plies ?? 0} plies: ${group.map(({ mark }) => mark).join(', ')}`,
    ),
    ...stairs.flatMap(facedPosts),
  ].join('; ')
}

/** Under a landing's outer beam that a third board and a header stand before no plate fits on that face. */
function facedPosts({ members, platform }: StairPlan): readonly string[] {
  if (platform === null || platform.faced === 0) return []
  const posts = members.filter(({ role }) => role === 'landing post').map(({ mark }) => mark)
  const outer = posts.slice(posts.length / 2)
  return [
    `${outer.length} of them, for ${outer.join(' and ')}, with a plate on the inner face only, as a cap at an edge has: the outer face is the header’s`,
  ]
}
