import { cents, type Share, share } from '../../units/index.ts'
import { afterLength, longestFirst, mass, unusableAmong } from './chance.ts'
import type { SpareClass, SpareLength, SpareLine, Spares } from './types.ts'

/** Most part choices kept after one length; beyond it the cheapest are kept and the result is not called proven. */
const MOST_KEPT = 1000
/** No more spares of one length than this: a bound for orders that no number of spares would save. */
const MOST_SPARES = 60

interface Stage {
  readonly classId: string
  readonly length: SpareLength
  /** the last length of its class: what is over after it helps nobody */
  readonly last: boolean
  /** chances of unusable boards by number of spares in steps, made when first asked for */
  readonly unusable: (spares: number) => Float64Array
  readonly most: number
}

/** Spares of the lengths looked at so far, and what may be over of them. */
interface Choice {
  readonly cost: number
  readonly boards: number
  readonly surplus: Float64Array
  /** spares per stage so far */
  readonly spares: readonly number[]
}

interface Search {
  readonly choices: readonly Choice[]
  readonly complete: boolean
}

/**
 * The cheapest spare boards with which every class gets by, with at least the probability `target`, where each board
 * is unusable on its own with the chance `unusable`. A board stands in for any of its class that is not longer; what
 * was to be cut from a board is cut from the one that stands in, joints and all. Exact: one length after another,
 * longest first, with the distribution of the boards that are over; a choice is dropped only where another costs no
 * more and has at every number at least its chance of so many over, which no later length can turn round.
 */
export function sparesFor(classes: readonly SpareClass[], unusable: Share, target: Share): Spares {
  const chance = unusable / 10_000
  const wanted = target / 10_000
  const parts = classes.map((one) => stagesOf(one, chance)).filter((stages) => stages.length > 0)
  const stages = parts.flat()
  const none = stages.map(() => 0)
  const before = chanceOf(stages, none)
  if (unusable === 0 || before >= wanted) return resultOf(stages, none, before, before >= wanted, true)
  const quick = greedy(stages, wanted)
  if (quick.chance < wanted) return resultOf(stages, quick.spares, before, false, false)
  const { best, proven } = cheapest(parts, wanted, costOf(stages, quick.spares))
  return resultOf(stages, best ?? quick.spares, before, true, proven)
}

/**
 * Each class by itself first: what it costs at least to reach the target alone, which all must. What that leaves of
 * the cost of a known choice bounds each class, and its choices that none beats in both cost and chance are joined.
 */
function cheapest(
  parts: readonly (readonly Stage[])[],
  wanted: number,
  atMost: number,
): { best: readonly number[] | null; proven: boolean } {
  const least = parts.map((stages) => {
    const alone = search(stages, wanted, costOf(stages, greedy(stages, wanted).spares))
    return alone.complete ? (alone.choices[0]?.cost ?? 0) : 0
  })
  const together = least.reduce((sum, cost) => sum + cost, 0)
  let proven = true
  let joined: Choice[] = [{ cost: 0, boards: 0, surplus: Float64Array.of(1), spares: [] }]
  let toCome = together
  parts.forEach((stages, index) => {
    const own = search(stages, wanted, atMost - together + (least[index] ?? 0))
    proven &&= own.complete
    toCome -= least[index] ?? 0
    const next: Choice[] = []
    for (const some of joined) {
      for (const more of own.choices) {
        const cost = some.cost + more.cost
        const surplus = Float64Array.of((some.surplus[0] ?? 0) * (more.surplus[0] ?? 0))
        if (cost + toCome > atMost || (surplus[0] ?? 0) < wanted) continue
        next.push({
          cost,
          boards: some.boards + more.boards,
          surplus,
          spares: [...some.spares, ...more.spares],
        })
      }
    }
    joined = undominated(next)
  })
  return { best: joined[0]?.spares ?? null, proven }
}

/** Lengths that boards are needed of, and those that are worth having as spares: no longer one is as cheap. */
function stagesOf({ classId, lengths }: SpareClass, chance: number): Stage[] {
  const sorted = longestFirst(lengths.filter((length) => length.needed > 0 || length.most !== 0))
  const shortest = Math.min(...lengths.filter((length) => length.needed > 0).map((length) => length.length))
  const kept = sorted.flatMap((length, index) => {
    const worthHaving =
      length.length >= shortest &&
      !sorted
        .slice(0, index)
        .some((longer) => longer.price <= length.price && longer.most === null && longer.step === 1)
    if (length.needed === 0 && !worthHaving) return []
    return [{ length, most: worthHaving ? Math.min(length.most ?? MOST_SPARES, MOST_SPARES) : 0 }]
  })
  return kept.map(({ length, most }, index) => {
    const known = new Map<number, Float64Array>()
    return {
      classId,
      length,
      most,
      last: index === kept.length - 1,
      unusable: (spares) => {
        const found = known.get(spares) ?? unusableAmong(length.needed + spares, chance)
        known.set(spares, found)
        return found
      },
    }
  })
}

function step(stage: Stage, surplus: Float64Array, spares: number): Float64Array {
  const next = afterLength(surplus, spares, stage.unusable(spares))
  return stage.last ? Float64Array.of(mass(next)) : next
}

function chanceOf(stages: readonly Stage[], spares: readonly number[]): number {
  let surplus = Float64Array.of(1)
  stages.forEach((stage, index) => {
    surplus = step(stage, surplus, spares[index] ?? 0) as Float64Array<ArrayBuffer>
  })
  return mass(surplus)
}

function costOf(stages: readonly Stage[], spares: readonly number[]): number {
  return stages.reduce((sum, { length }, index) => sum + length.price * (spares[index] ?? 0), 0)
}

/** Spares one after another where a cent helps most, then without those that are not needed: a start for the search. */
function greedy(stages: readonly Stage[], wanted: number): { spares: number[]; chance: number } {
  const spares = stages.map(() => 0)
  let chance = chanceOf(stages, spares)
  while (chance < wanted) {
    let best = { index: -1, worth: 0, chance }
    stages.forEach((stage, index) => {
      const more = (spares[index] ?? 0) + stage.length.step
      if (more > stage.most) return
      const tried = chanceOf(stages, spares.with(index, more))
      const worth = (tried - chance) / Math.max(1, stage.length.price * stage.length.step)
      if (worth > best.worth) best = { index, worth, chance: tried }
    })
    if (best.index < 0) break
    spares[best.index] = (spares[best.index] ?? 0) + (stages[best.index]?.length.step ?? 1)
    chance = best.chance
  }
  stages.forEach((stage, index) => {
    for (;;) {
      const fewer = (spares[index] ?? 0) - stage.length.step
      if (fewer < 0 || chanceOf(stages, spares.with(index, fewer)) < Math.min(wanted, chance)) return
      spares[index] = fewer
    }
  })
  return { spares, chance: chanceOf(stages, spares) }
}

/** Choices for one class that no other is at least as good as, cheapest first. */
function search(stages: readonly Stage[], wanted: number, atMost: number): Search {
  let complete = true
  let choices: Choice[] = [{ cost: 0, boards: 0, surplus: Float64Array.of(1), spares: [] }]
  for (const stage of stages) {
    const next: Choice[] = []
    for (const choice of choices) {
      for (let spares = 0; spares <= stage.most; spares += stage.length.step) {
        const cost = choice.cost + spares * stage.length.price
        if (cost > atMost) break
        const surplus = step(stage, choice.surplus, spares)
        if (mass(surplus) < wanted) continue
        next.push({ cost, boards: choice.boards + spares, surplus, spares: [...choice.spares, spares] })
      }
    }
    choices = undominated(next)
    if (choices.length > MOST_KEPT) {
      choices = choices.slice(0, MOST_KEPT)
      complete = false
    }
  }
  return { choices, complete }
}

/** Cheapest first, then fewest boards; without those that another is at least as good as in every way. */
function undominated(choices: Choice[]): Choice[] {
  choices.sort((a, b) => a.cost - b.cost || a.boards - b.boards || mass(b.surplus) - mass(a.surplus))
  const kept: { choice: Choice; tails: Float64Array }[] = []
  for (const choice of choices) {
    const tails = tailsOf(choice.surplus)
    if (kept.some((other) => covers(other.tails, tails))) continue
    kept.push({ choice, tails })
    if (kept.length > MOST_KEPT) break
  }
  return kept.map(({ choice }) => choice)
}

/** Chance of at least w boards over, for each w. */
function tailsOf(surplus: Float64Array): Float64Array {
  const tails = Float64Array.from(surplus)
  for (let over = tails.length - 2; over >= 0; over--)
    tails[over] = (tails[over] ?? 0) + (tails[over + 1] ?? 0)
  return tails
}

function covers(some: Float64Array, others: Float64Array): boolean {
  for (let over = 0; over < others.length; over++) if ((some[over] ?? 0) < (others[over] ?? 0)) return false
  return true
}

function resultOf(
  stages: readonly Stage[],
  spares: readonly number[],
  before: number,
  reached: boolean,
  proven: boolean,
): Spares {
  const lines = stages.flatMap(({ classId, length }, index): SpareLine[] => {
    const count = spares[index] ?? 0
    if (count === 0) return []
    const { stockId, price } = length
    return [{ classId, stockId, length: length.length, count, price, amount: cents(count * price) }]
  })
  return {
    lines,
    cost: cents(costOf(stages, spares)),
    probability: share(Math.floor(chanceOf(stages, spares) * 10_000)),
    without: share(Math.floor(before * 10_000)),
    reached,
    proven,
  }
}
