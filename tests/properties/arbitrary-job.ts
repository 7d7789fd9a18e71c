import fc from 'fast-check'
import {
  type BeamSpec,
  FIELDS,
  type FieldSpec,
  type Ground,
  type Job,
  type JobStatement,
  type JsonValue,
  setField,
} from '../../core/job/index.ts'
import { inches, type Ticks, ticks } from '../../core/units/index.ts'
import { heronLane } from '../fixtures/heron-lane.ts'

/** Any length on the 1/32 grid. */
export function lengthBetween(leastInches: number, mostInches: number): fc.Arbitrary<Ticks> {
  return fc.integer({ min: leastInches * 32, max: mostInches * 32 }).map(ticks)
}

const ground: fc.Arbitrary<Ground> = fc.oneof(
  fc.record({
    kind: fc.constant('plane' as const),
    along: fc.record({ fall: lengthBetween(-24, 24), over: lengthBetween(60, 600) }),
    away: fc.record({ fall: lengthBetween(-24, 48), over: lengthBetween(60, 600) }),
  }),
  fc.record({
    kind: fc.constant('spots' as const),
    spots: fc.array(
      fc.record({ x: lengthBetween(0, 600), y: lengthBetween(0, 300), z: lengthBetween(-40, 10) }),
      { minLength: 1, maxLength: 6 },
    ),
  }),
)

const beam: fc.Arbitrary<BeamSpec> = fc.record({
  set: fc.constantFrom('dropped', 'dropped', 'dropped', 'flush'),
  size: fc.constantFrom('2x6', '2x8', '2x10', '2x12'),
  plies: fc.integer({ min: 1, max: 3 }),
  setback: lengthBetween(2, 40),
  setbackStated: fc.boolean(),
  posts: fc.integer({ min: 2, max: 6 }),
  inset: lengthBetween(2, 36),
})

/** Any value that a field of the job allows by itself, however odd beside the others. */
function anyValue(field: FieldSpec): fc.Arbitrary<JsonValue> | null {
  if (field.choices !== undefined) return fc.constantFrom(...field.choices)
  if (field.min === undefined || field.max === undefined) return null
  const number = fc.oneof(
    fc.integer({ min: field.min, max: field.max }),
    fc.constantFrom(field.min, field.max),
  )
  if (field.kind === 'length') return number.map((n) => `${n / 32} in`)
  return field.kind === 'count' || field.kind === 'psf' ? number : null
}

/**
 * Statements whose every field is within its own bounds, at them as often as between. Most fields are left at their
 * defaults each time, for a job that is odd everywhere seldom can be built.
 */
export const anyStatement: fc.Arbitrary<JobStatement> = fc
  .tuple(
    ...FIELDS.flatMap((field) => {
      const value = anyValue(field)
      if (value === null || field.path === 'site.ground.kind') return []
      return [
        fc
          .oneof({ arbitrary: value, weight: 1 }, { arbitrary: fc.constant(null), weight: 4 })
          .map((one) => [field.path, one] as const),
      ]
    }),
  )
  .map((values) =>
    values.reduce<JobStatement>(
      (job, [path, value]) => (value === null ? job : setField(job, path, value)),
      {},
    ),
  )

/** Jobs within the bounds of the fields; most can be framed, some have faults between fields. */
export const anyJob: fc.Arbitrary<Job> = fc
  .record({
    width: lengthBetween(48, 600),
    depth: lengthBetween(48, 300),
    height: lengthBetween(24, 120),
    attachment: fc.constantFrom('ledger' as const, 'freestanding' as const),
    ground,
    joist: fc.constantFrom('2x6' as const, '2x8' as const, '2x10' as const, '2x12' as const),
    spacing: fc.oneof(fc.constantFrom(inches(12), inches(16), inches(24)), lengthBetween(6, 24)),
    layoutFrom: fc.constantFrom('left' as const, 'right' as const),
    overMiddle: fc.constantFrom('by stock' as const, 'lapped' as const),
    longest: lengthBetween(8, 40),
    rimPlies: fc.integer({ min: 1, max: 2 }),
    front: beam,
    rear: beam,
    postSize: fc.constantFrom('4x4' as const, '4x6' as const, '6x6' as const, '8x8' as const),
    stagger: fc.constantFrom('preferred' as const, 'required' as const, 'none' as const),
    frostDepth: lengthBetween(0, 60),
    tube: fc.constantFrom(inches(8), inches(10), inches(12)),
    base: fc.constantFrom(inches(0), inches(16), inches(20)),
    decking: fc.constantFrom('5/4x6' as const, '2x6' as const, '2x4' as const),
    overhang: lengthBetween(0, 3),
    gap: lengthBetween(0, 1),
  })
  .map((any) => ({
    ...heronLane,
    size: { width: any.width, depth: any.depth, height: any.height },
    site: {
      ...heronLane.site,
      attachment: any.attachment,
      ground: any.ground,
      frostDepth: any.frostDepth,
    },
    frame: {
      ...heronLane.frame,
      joists: {
        size: any.joist,
        spacing: any.spacing,
        layoutFrom: any.layoutFrom,
        overMiddle: any.overMiddle,
        longest: any.longest,
      },
      rimPlies: any.rimPlies,
      beams: { front: any.front, rear: any.rear },
      postSize: any.postSize,
      stagger: any.stagger,
    },
    ground: { ...heronLane.ground, tube: any.tube, base: any.base },
    decking: { ...heronLane.decking, size: any.decking, overhang: any.overhang, gap: any.gap },
  }))
