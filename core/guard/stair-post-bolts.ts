import { sectionOf } from '../data/index.ts'
import type { StairPlan } from '../stairs/index.ts'
import { ceilTicks, inches, type Ticks, ticks } from '../units/index.ts'
import type { StairGuard } from './types.ts'

/** A post beside stairs: as it is sawn, and its two bolts from its lower end. */
export interface BoltedPost {
  readonly id: string
  readonly mark: string
  /** from its lower end up to the line of the nosings at its middle, ticks */
  readonly nosings: number
  readonly length: Ticks
  /** null where the stringer has no wood for two at the post */
  readonly bolts: readonly [Ticks, Ticks] | null
}

/** Off the stringer's lower edge, square to it: 4 diameters of a 1/2 in bolt. NDS 2018 12.5.1, from memory. */
const OFF_EDGE = inches(2)

/** Off the notch over them, and from one to the other: common practice, no source. */
const OFF_NOTCH = inches(1.5)
const APART = inches(2)

/**
 * Where the posts of one side are bolted to the stringer: as low and as high as its wood lets them, for the farther apart
 * they are, the less each pulls.
 */
export function boltedPosts(
  { stairs }: { readonly stairs: readonly StairPlan[] },
  guard: StairGuard,
): readonly BoltedPost[] {
  const plan = stairs.find(({ flights }) => flights.some(({ number }) => number === guard.flight))
  const flight = plan?.flights.find(({ number }) => number === guard.flight)
  const pattern = plan?.patterns.find((one) => one.flight === guard.flight)
  if (plan === undefined || flight === undefined || pattern === undefined)
    throw new Error('a guard beside stairs has its flight')
  const { rise, run, step, kind } = pattern
  const thick = pattern.drop > 0 ? pattern.drop : inches(1)
  const underNosings = (plan.tread.riserBoard + plan.tread.nosing) * guard.slope + thick
  // what is square to a slanting edge, measured plumb
  const plumb = (square: number): number => (square * step) / run
  const deep = plumb(sectionOf('2x12').depth)
  const nosingAt = (at: number): number => guard.headLevel - at * guard.slope
  return guard.posts.map(({ id, at, z0, z1 }, i): BoltedPost => {
    // both bolts are bored on the post's middle line; a notch that begins nearer than it may keeps them low
    const edge = nosingAt(at) - underNosings - deep
    const low = Math.max(edge + plumb(OFF_EDGE), flight.bottomLevel + OFF_EDGE, z0 + OFF_EDGE)
    const tread = Math.floor((flight.run - (at + OFF_NOTCH)) / run + 1e-9) + 1
    const high =
      kind === 'cut'
        ? flight.bottomLevel + Math.max(1, tread) * rise - thick - OFF_NOTCH
        : nosingAt(at) - underNosings - plumb(OFF_NOTCH)
    const [lower, upper] = [low - z0, high - z0]
    return {
      id,
      nosings: nosingAt(at) - z0,
      mark: `SG${guard.number}-${i + 1}`,
      length: ceilTicks(z1 - z0),
      bolts: upper - lower < APART ? null : [ticks(Math.round(lower)), ticks(Math.round(upper))],
    }
  })
}
