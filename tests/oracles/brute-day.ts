import type { DayState } from '../../core/cutting/day/index.ts'
import type { CutJob, CutPlan, RunGroup, StockOption } from '../../core/cutting/index.ts'
import type { Cents, Ticks } from '../../core/units/index.ts'
import { cheapestBoards, piecesOf, staggerCost, waysOf } from './brute-cutting.ts'

/**
 * Least sum of boards still to buy, joints of the whole job and stagger, by trying everything: the sawn pieces stay
 * in their members, all the rest is open. For jobs without preferences. Written from the rules, not from the program.
 * null: there is no way to finish.
 */
export function bruteFinish(job: CutJob, plan: CutPlan, day: DayState): number | null {
  const miscut = new Map(day.miscuts.map((entry) => [entry.pieceId, entry.length]))
  const made = new Set<string>()
  for (const board of plan.boards) {
    const sawn = day.sawn.find((entry) => entry.board === board.number)
    for (const { pieceId } of board.cuts) {
      if (
        sawn !== undefined &&
        (sawn.pieces === 'all' || sawn.pieces.includes(pieceId)) &&
        !miscut.has(pieceId)
      )
        made.add(pieceId)
    }
  }
  const stock = lyingAndYard(job, plan, day, made, miscut)
  const fixed: number[] = job.pieces.filter((piece) => !made.has(piece.id)).map((piece) => piece.length)
  const cheapest = new Map<string, { readonly pieces: number[]; readonly cost: number }>()
  for (const choice of product(job.runs.map((run) => waysToFinish(run, plan, made)))) {
    const pieces = [...fixed, ...choice.flatMap((way) => way.lacking)].sort((a, b) => b - a)
    const cost = choice.reduce((sum, way) => sum + way.cost, 0)
    const key = pieces.join()
    if (cost < (cheapest.get(key)?.cost ?? Number.POSITIVE_INFINITY)) cheapest.set(key, { pieces, cost })
  }
  let best: number | null = null
  for (const { pieces, cost } of cheapest.values()) {
    if (best !== null && cost >= best) continue
    const boards = cheapestBoards({ ...job, stock, atMost: [] }, stock, pieces)
    if (boards !== null && (best === null || boards + cost < best)) best = boards + cost
  }
  return best
}

interface Way {
  readonly lacking: number[]
  readonly cost: number
}

function product<T>(lists: readonly T[][]): T[][] {
  return lists.reduce<T[][]>(
    (rows, list) => rows.flatMap((row) => list.map((entry) => [...row, entry])),
    [[]],
  )
}

/** Every way to joint all members such that the sawn pieces of each are pieces of it. */
function waysToFinish(run: RunGroup, plan: CutPlan, made: ReadonlySet<string>): Way[] {
  const ways = waysOf(run)
  const perMember = run.members.map((member) => {
    const own = plan.runPieces.filter(
      (piece) => piece.runId === run.id && piece.memberId === member.id && made.has(piece.id),
    )
    return ways.flatMap((joints) => {
      const places: number[] = [0, ...joints.map((point) => run.points[point]?.at ?? 0), run.length]
      const lengths = piecesOf(run, joints)
      const sawnAt = own.map((piece) =>
        places.findIndex((at, k) => at === piece.from && places[k + 1] === piece.to),
      )
      if (sawnAt.includes(-1)) return []
      return [{ joints, lacking: lengths.filter((_, k) => !sawnAt.includes(k)) }]
    })
  })
  return product(perMember).flatMap((members) => {
    const stagger = staggerCost(
      run,
      members.map((member) => member.joints),
    )
    if (stagger === null) return []
    const joints = members
      .flatMap((member) => member.joints)
      .reduce((sum, point) => sum + (run.points[point]?.cost ?? 0), 0)
    return [{ lacking: members.flatMap((member) => member.lacking), cost: joints + stagger }]
  })
}

function lyingAndYard(
  job: CutJob,
  plan: CutPlan,
  day: DayState,
  made: ReadonlySet<string>,
  miscut: ReadonlyMap<string, Ticks | null>,
): StockOption[] {
  const free: StockOption[] = []
  const left = (length: number): void => {
    if (length > 0)
      free.push({
        id: `left ${free.length}`,
        length: length as Ticks,
        price: 0 as Cents,
        supply: 1,
        offcut: true,
      })
  }
  const boughtOf = new Map<string, number>()
  const goneOf = new Map<string, number>()
  const add = (to: Map<string, number>, id: string): void => {
    to.set(id, (to.get(id) ?? 0) + 1)
  }
  for (const board of plan.boards) {
    const option = job.stock.find((candidate) => candidate.id === board.stockId) as StockOption
    const trim = option.offcut ? 0 : job.endTrim
    let at: number = trim
    for (const cut of board.cuts) {
      const came = miscut.get(cut.pieceId)
      if (!made.has(cut.pieceId) && came === undefined) continue
      if (came !== undefined && came !== null) left(came)
      at += (came ?? cut.length) + job.kerf
    }
    const sawn = at > trim
    const end = board.length - trim
    // tick by tick: what is bad, and after each good stretch the kerf of the cut that ends it
    const bad = day.culls.filter((cull) => cull.board === board.number && cull.to > trim && cull.from < end)
    const come =
      sawn || bad.length > 0 || option.offcut || day.bought === 'all' || day.bought.includes(board.number)
    if (come) add(boughtOf, option.id)
    if (option.offcut && (sawn || bad.length > 0)) add(goneOf, option.id)
    if (sawn || bad.length > 0) {
      let good = 0
      let blocked = 0
      for (let tick = at; tick < end; tick++) {
        const isBad = bad.some((cull) => tick >= cull.from && tick < cull.to)
        if (isBad && good > 0) {
          left(good)
          good = 0
          blocked = job.kerf
        }
        if (!isBad && blocked <= 0) good++
        blocked--
      }
      left(good)
    } else if (come && !option.offcut)
      free.push({ ...plainly(option), id: `whole ${free.length}`, price: 0 as Cents, supply: 1 })
  }
  for (const { stockId, count } of day.spares) {
    const option = job.stock.find((candidate) => candidate.id === stockId)
    if (option !== undefined && !option.offcut)
      free.push({ ...plainly(option), id: `spare ${stockId}`, price: 0 as Cents, supply: count })
  }
  const yard = job.stock.map((option): StockOption => {
    const said = day.yard.find((entry) => entry.stockId === option.id)
    if (option.offcut)
      return {
        ...option,
        supply: option.supply === null ? null : option.supply - (goneOf.get(option.id) ?? 0),
      }
    const supply =
      said === undefined
        ? option.supply === null
          ? null
          : Math.max(0, option.supply - (boughtOf.get(option.id) ?? 0))
        : said.left
    return { ...option, supply, price: said?.price ?? option.price }
  })
  return [...alikeTogether(free), ...yard]
}

/** Boards that lie there and are alike, as one option of so many: a choice among equals is tried once. */
function alikeTogether(free: readonly StockOption[]): StockOption[] {
  const kinds = new Map<string, StockOption>()
  for (const option of free) {
    const kind = `${option.length}|${option.offcut}`
    const supply = (kinds.get(kind)?.supply ?? 0) + (option.supply ?? 0)
    kinds.set(kind, { ...option, id: kind, supply })
  }
  return [...kinds.values()]
}

function plainly({ id, length, price, supply, offcut }: StockOption): StockOption {
  return { id, length, price, supply, offcut }
}
