import type { CutJob, RunGroup, StockOption } from '../../core/cutting/index.ts'

/**
 * Least cost + preference of a small cutting job by trying everything: every way to split every member, every order
 * of neighbours, every way to share the pieces out among boards. Written from the rules, not from the program.
 * null: nothing does the job.
 */
export function bruteCost(job: CutJob): number | null {
  const stock = job.stock.filter((option) => job.onlyStock === undefined || job.onlyStock.includes(option.id))
  const fixed = job.pieces.map((piece) => piece.length as number)
  let best: number | null = null
  for (const choice of product(job.runs.map((run) => splitsOf(run)))) {
    const pieces = [...fixed, ...choice.flatMap((split) => split.pieces)].sort((a, b) => b - a)
    const extra = choice.reduce((sum, split) => sum + split.cost, 0)
    const boards = cheapestBoards(job, stock, pieces)
    if (boards !== null && (best === null || boards + extra < best)) best = boards + extra
  }
  return best
}

interface Split {
  readonly pieces: number[]
  readonly cost: number
}

function product<T>(lists: readonly T[][]): T[][] {
  return lists.reduce<T[][]>(
    (rows, list) => rows.flatMap((row) => list.map((entry) => [...row, entry])),
    [[]],
  )
}

/** Every way to make all members of a run, as multisets of member ways; only the cheapest for each list of pieces. */
function splitsOf(run: RunGroup): Split[] {
  const ways = waysOf(run)
  const cheapest = new Map<string, Split>()
  const pick = (from: number, chosen: number[][]): void => {
    if (chosen.length === run.members.length) {
      const cost = staggerCost(run, chosen)
      if (cost === null) return
      const pieces = chosen.flatMap((joints) => piecesOf(run, joints)).sort((a, b) => b - a)
      const joints = chosen.flat().reduce((sum, point) => sum + (run.points[point]?.cost ?? 0), 0)
      const key = pieces.join(',')
      if (cost + joints < (cheapest.get(key)?.cost ?? Number.POSITIVE_INFINITY))
        cheapest.set(key, { pieces, cost: cost + joints })
      return
    }
    for (let w = from; w < ways.length; w++) pick(w, [...chosen, ways[w] ?? []])
  }
  pick(0, [])
  return [...cheapest.values()]
}

/** Sets of points at which one member may be jointed. */
export function waysOf(run: RunGroup): number[][] {
  const ways: number[][] = []
  for (let mask = 0; mask < 1 << run.points.length; mask++) {
    const joints = run.points.map((_, point) => point).filter((point) => (mask >> point) & 1)
    if (run.maxJoints !== null && joints.length > run.maxJoints) continue
    const at = [0, ...joints.map((point) => run.points[point]?.at ?? 0), run.length]
    const lengths = piecesOf(run, joints)
    const fine = lengths.every((length, k) => {
      if (joints.length === 0) return true
      const supports = run.supports.filter((x) => x >= (at[k] ?? 0) && x <= (at[k + 1] ?? 0)).length
      return length >= run.minPiece && supports >= run.minSupports
    })
    if (fine) ways.push(joints)
  }
  return ways
}

export function piecesOf(run: RunGroup, joints: readonly number[]): number[] {
  const lengths: number[] = []
  let start = 0
  for (const point of joints) {
    const { at, lap } = run.points[point] as { at: number; lap: number }
    lengths.push(at + lap - start)
    start = at - lap
  }
  return [...lengths, run.length - start]
}

/** What the stagger costs, or null where a rule forbids it. */
export function staggerCost(run: RunGroup, chosen: readonly number[][]): number | null {
  const count = run.points.map((_, point) => chosen.filter((joints) => joints.includes(point)).length)
  let cost = 0
  for (const [point, rule] of run.points.entries()) {
    const over = rule.cap === null ? 0 : Math.max(0, (count[point] ?? 0) - rule.cap)
    if (over > 0 && rule.excess === null) return null
    cost += over * (rule.excess ?? 0)
  }
  for (const window of run.windows ?? []) {
    if (window.points.reduce((sum, point) => sum + (count[point] ?? 0), 0) > window.cap) return null
  }
  return run.neighboursApart && !orderExists(chosen) ? null : cost
}

function orderExists(rest: readonly number[][], last: readonly number[] = []): boolean {
  if (rest.length === 0) return true
  return rest.some(
    (joints, k) =>
      !joints.some((point) => last.includes(point)) &&
      orderExists([...rest.slice(0, k), ...rest.slice(k + 1)], joints),
  )
}

/** Cheapest boards for pieces in descending length: each piece on an open board with room, or on a new one. */
export function cheapestBoards(
  job: CutJob,
  stock: readonly StockOption[],
  pieces: readonly number[],
): number | null {
  const limits = stock.map((option) =>
    Math.min(
      option.supply ?? Number.POSITIVE_INFINITY,
      ...(job.atMost ?? []).filter((m) => m.stockId === option.id).map((m) => m.count),
    ),
  )
  let best: number | null = null
  const open: { type: number; room: number; pieces: number }[] = []
  const place = (k: number): void => {
    const length = pieces[k]
    if (length === undefined) {
      const cost = total(job, stock, limits, open)
      if (cost !== null && (best === null || cost < best)) best = cost
      return
    }
    const tried = new Set<string>()
    for (const board of open) {
      const key = `${board.type}:${board.room}`
      if (tried.has(key) || board.room < length) continue
      tried.add(key)
      board.room -= length + job.kerf
      board.pieces++
      place(k + 1)
      board.pieces--
      board.room += length + job.kerf
    }
    stock.forEach((option, type) => {
      const room = option.length - (option.offcut ? 0 : 2 * job.endTrim)
      if (room < length || open.filter((board) => board.type === type).length >= (limits[type] ?? 0)) return
      open.push({ type, room: room - length - job.kerf, pieces: 1 })
      place(k + 1)
      open.pop()
    })
  }
  place(0)
  return best
}

function total(
  job: CutJob,
  stock: readonly StockOption[],
  limits: readonly number[],
  boards: readonly { type: number; room: number; pieces: number }[],
): number | null {
  let sum = 0
  if (job.maxLengths !== undefined) {
    const bought = new Set(
      boards.filter((board) => !stock[board.type]?.offcut).map((board) => stock[board.type]?.length),
    )
    if (bought.size > job.maxLengths) return null
  }
  for (const [type, option] of stock.entries()) {
    const used = boards.filter((board) => board.type === type).length
    if (used === 0) continue
    let least: number | null = null
    for (let count = used; count <= Math.min(limits[type] ?? 0, 60); count++) {
      if (count % (option.pack ?? 1) !== 0 || count < (option.minimum ?? 0)) continue
      let price: number = option.price
      for (const step of [...(option.breaks ?? [])].sort((a, b) => a.from - b.from))
        if (count >= step.from) price = step.price
      if (least === null || price * count < least) least = price * count
    }
    if (least === null) return null
    sum += least
  }
  for (const board of boards) {
    const option = stock[board.type] as StockOption
    const trim = option.offcut ? 0 : job.endTrim
    const exact = trim === 0 && board.room === -job.kerf
    sum += job.handling + (board.pieces + (trim > 0 ? 1 : 0) - (exact ? 1 : 0)) * job.perCut
    const single =
      (option.pack ?? 1) === 1 && (option.minimum ?? 1) === 1 && (option.breaks ?? []).length === 0
    if (job.keep !== null && single && board.room > 0 && board.room >= job.keep.from) {
      sum -= Math.min(Math.floor((board.room * job.keep.centsPerFoot) / 384), option.price)
    }
  }
  return sum
}
