import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { common } from '../../../core/geometry/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// What a foot meets going down, measured from the boards as they lie: where each surface ends in the width of the flight.
// IRC 2021 R311.7.5.2 and R311.7.5.3 measure treads from nosing to nosing and nosings from the face under them.

const SIXTEENTH = 2
const FEET = 32 * 12

type Flight = Design['stairs'][number]['flights'][number]
type Member = Design['frame']['members'][number]

/** Down a flight from the face of the edge above. */
function reachOf(flight: Flight, boards: readonly Member[]): number {
  const { head, down, across, width } = flight
  const at = (d: number, a: number) => ({
    x: head.x + d * down.x + a * across.x,
    y: head.y + d * down.y + a * across.y,
  })
  const strip = [at(-3 * FEET, 8), at(20 * FEET, 8), at(20 * FEET, width - 8), at(-3 * FEET, width - 8)]
  const shapes = boards.map(({ plan, box }) =>
    plan === undefined
      ? [
          { x: box.x0, y: box.y0 },
          { x: box.x1, y: box.y0 },
          { x: box.x1, y: box.y1 },
          { x: box.x0, y: box.y1 },
        ]
      : [...plan],
  )
  const spots = shapes.flatMap((shape) => common([shape], [strip])).flat()
  return Math.max(...spots.map(({ x, y }) => (x - head.x) * down.x + (y - head.y) * down.y))
}

/** Every flight's goings from the surface above to its lowest nosing, and how far each reaches over the face under it. */
function stepsOf({ frame, stairs }: Design) {
  return stairs.flatMap(({ flights, members }) =>
    flights.map((flight) => {
      const boards = [...frame.members, ...members]
      const level = (role: RegExp, z: number) =>
        boards.filter((one) => role.test(one.role) && Math.abs(one.box.z1 - z) < 2)
      const rise = (flight.topLevel - flight.bottomLevel) / flight.risers
      const nosings = Array.from({ length: flight.risers }, (_, i) => {
        const z = flight.topLevel - i * rise
        return reachOf(flight, i === 0 ? level(/^(decking|landing decking)$/, z) : treads(i + 1))
      })
      const faces = Array.from({ length: flight.risers }, (_, i) =>
        i === 0 ? 0 : reachOf(flight, own(/^riser$/, `riser-${flight.number}-${flight.risers - i}-`)),
      )
      function own(role: RegExp, id: string) {
        return members.filter((one) => role.test(one.role) && one.id.startsWith(id))
      }
      function treads(fromAbove: number) {
        return own(/^tread$/, `tread-${flight.number}-${flight.risers - fromAbove + 1}-`)
      }
      return {
        goings: nosings.slice(1).map((one, i) => one - (nosings[i] ?? 0)),
        over: nosings.map((one, i) => one - (faces[i] ?? 0)),
      }
    }),
  )
}

function made(statement: unknown): Design {
  const result = design(statement)
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}

const STAIRED = CATALOGUE.filter(({ job }) => 'stairs' in job)
const high = { size: { width: '18 ft', depth: '12 ft', height: '9 ft' }, version: 1 }

const BUILT: readonly (readonly [string, object])[] = [
  ...STAIRED.map(({ file, job }) => [file, job] as const),
  ['a landing that turns left', { ...high, stairs: { kind: 'landing left', width: '4 ft' } }],
  ['a landing that turns right', { ...high, stairs: { kind: 'landing right', width: '4 ft' } }],
  ['closed stringers', { ...high, stairs: { kind: 'landing', stringers: 'closed', treads: '2x6' } }],
  ['open risers', { ...high, stairs: { kind: 'landing', risers: 'open' } }],
  ['an overhang of 3/4 in', { ...high, decking: { overhang: '3/4 in' }, stairs: { kind: 'straight' } }],
  ['diagonal decking', { ...high, decking: { angle: 45 }, stairs: { kind: 'landing' } }],
  ['the decks sides', { ...high, stairs: { kind: 'straight', side: 'left' } }],
]

describe.each(BUILT)('the steps of %s', (_name, statement) => {
  const flights = stepsOf(made(statement))

  it('are as deep as one another from nosing to nosing, the first and the last too', () => {
    expect(flights.length).toBeGreaterThan(0)
    for (const { goings } of flights) {
      expect(goings.length).toBeGreaterThan(0)
      expect(Math.max(...goings) - Math.min(...goings)).toBeLessThanOrEqual(SIXTEENTH)
      // the run that is stated, 10-1/4 in where nothing is
      expect(Math.abs((goings[0] ?? 0) - 10.25 * 32)).toBeLessThanOrEqual(SIXTEENTH)
    }
  })
})

describe.each(BUILT.filter(([name]) => name !== 'open risers'))('the nosings of %s', (_name, statement) => {
  it('reach 3/4 to 1-1/4 in over the boards under them, none 3/8 in further than another', () => {
    const over = stepsOf(made(statement)).flatMap((flight) => flight.over)
    expect(Math.min(...over)).toBeGreaterThanOrEqual(0.75 * 32)
    expect(Math.max(...over)).toBeLessThanOrEqual(1.25 * 32)
    expect(Math.max(...over) - Math.min(...over)).toBeLessThanOrEqual(0.375 * 32)
  })
})

it('more than one deck of the catalogue has stairs', () => {
  expect(STAIRED.length).toBeGreaterThan(1)
})
