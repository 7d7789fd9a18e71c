import type { CutJob, CutPlan, DayState } from './cutting/index.ts'
import { type Fault, isObject, type JsonObject, type JsonValue, kindOf, nearestName } from './job/index.ts'
import {
  cents,
  fail,
  ok,
  parseLength,
  parseMoney,
  parseShare,
  type Result,
  type Share,
  share,
  type Ticks,
  ticks,
} from './units/index.ts'

const FIELDS = ['bought', 'sawn', 'miscuts', 'culls', 'yard', 'spares', 'refund'] as const

/** The product that a day's file names first, by the id of its cutting plan; or what is wrong with the file's outline. */
export function productsOfDay(stated: JsonValue): Result<readonly string[], readonly Fault[]> {
  if (isObject(stated) && Object.keys(stated).length > 0) return ok(Object.keys(stated))
  const message = `the file holds ${isObject(stated) ? 'no product' : kindOf(stated)}`
  return fail([
    {
      path: '',
      message,
      fix: 'it must name a product, such as { "2x10 SP No.2 treated": { "sawn": [1, 2] } }',
    },
  ])
}

/**
 * Reads how one product's boards fared, as a person writes it: boards by number, pieces by their mark, lengths, money
 * and shares as text. What is left out did not happen; every board has come unless `bought` says which.
 * @param product the name under which it stands in the file
 */
export function readDay(
  stated: JsonValue,
  product: string,
  job: CutJob,
  plan: CutPlan,
): Result<DayState, readonly Fault[]> {
  const faults: Fault[] = []
  const say = (path: string, message: string, fix: string): void => {
    faults.push({ path: path === '' ? product : `${product}.${path}`, message, fix })
  }
  const day = isObject(stated) ? stated : {}
  if (!isObject(stated)) say('', `it is ${kindOf(stated)}`, `give an object with any of ${FIELDS.join(', ')}`)
  for (const name of Object.keys(day)) {
    if (FIELDS.some((field) => field === name)) continue
    const near = nearestName(name, FIELDS)
    say(
      name,
      'there is no such field',
      near === null ? `there are ${FIELDS.join(', ')}` : `did you mean ${near}?`,
    )
  }

  const entries = (field: string): JsonValue[] => {
    const value = day[field]
    if (value === undefined) return []
    if (Array.isArray(value)) return [...value]
    say(field, `it is ${kindOf(value)}`, 'give a list')
    return []
  }
  const number = (value: JsonValue | undefined, path: string, what: string): number => {
    if (typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= 100_000) return value
    say(path, `${what} is ${value === undefined ? 'missing' : kindOf(value)}`, 'give a whole number')
    return 0
  }
  const length = (value: JsonValue | undefined, path: string): Ticks => {
    if (value === 0) return ticks(0)
    const read = typeof value === 'string' ? parseLength(value) : null
    if (read?.ok === true && read.value >= 0) return read.value
    const wrong = read?.ok === false ? `"${value as string}": ${read.error.message}` : 'it is no length'
    say(path, wrong, 'write a length such as 3 ft 6 in')
    return ticks(0)
  }
  const pieceId = (value: JsonValue | undefined, board: number, path: string): string => {
    const cuts = plan.boards.find((one) => one.number === board)?.cuts ?? []
    const found = cuts.find((cut) => cut.mark === value)
    if (found !== undefined) return found.pieceId
    const marks = cuts.length === 0 ? '' : `board ${board} holds ${cuts.map((cut) => cut.mark).join(', ')}`
    say(
      path,
      'there is no such piece',
      marks === '' ? `the plan has boards 1 to ${plan.boards.length}` : marks,
    )
    return ''
  }
  const stockOf = (entry: JsonObject, path: string): string => {
    const long = length(entry.length, `${path}.length`)
    const found = job.stock.find((option) => !option.offcut && option.length === long)
    if (found !== undefined) return found.id
    const lengths = job.stock.filter((option) => !option.offcut).map((option) => `${option.length / 384} ft`)
    say(`${path}.length`, 'the price book has no such length', `it has ${lengths.join(', ')}`)
    return ''
  }
  const objects = (field: string, names: readonly string[]): [JsonObject, string][] =>
    entries(field).flatMap((value, index): [JsonObject, string][] => {
      const path = `${field}.${index}`
      if (!isObject(value)) {
        say(path, `it is ${kindOf(value)}`, `give an object with ${names.join(', ')}`)
        return []
      }
      for (const name of Object.keys(value)) {
        if (!names.includes(name))
          say(`${path}.${name}`, 'there is no such field', `there are ${names.join(', ')}`)
      }
      return [[value, path]]
    })

  const read: DayState = {
    bought:
      day.bought === undefined || day.bought === 'all'
        ? 'all'
        : entries('bought').map((value, k) => number(value, `bought.${k}`, 'a board')),
    sawn: entries('sawn').map((value, index) => {
      const path = `sawn.${index}`
      if (!isObject(value)) return { board: number(value, path, 'a board'), pieces: 'all' as const }
      const board = number(value.board, `${path}.board`, 'the board')
      const { pieces } = value
      if (pieces === undefined || pieces === 'all') return { board, pieces: 'all' as const }
      if (!Array.isArray(pieces)) {
        say(`${path}.pieces`, `it is ${kindOf(pieces)}`, 'give a list of marks, or "all"')
        return { board, pieces: [] }
      }
      return {
        board,
        pieces: pieces.map((mark: JsonValue, k) => pieceId(mark, board, `${path}.pieces.${k}`)),
      }
    }),
    miscuts: objects('miscuts', ['board', 'piece', 'length']).map(([entry, path]) => {
      const board = number(entry.board, `${path}.board`, 'the board')
      const lost = entry.length === undefined || entry.length === null
      return {
        board,
        pieceId: pieceId(entry.piece, board, `${path}.piece`),
        length: lost ? null : length(entry.length, `${path}.length`),
      }
    }),
    culls: objects('culls', ['board', 'from', 'to']).map(([entry, path]) => {
      const board = number(entry.board, `${path}.board`, 'the board')
      const whole = plan.boards.find((one) => one.number === board)?.length ?? ticks(0)
      return {
        board,
        from: entry.from === undefined ? ticks(0) : length(entry.from, `${path}.from`),
        to: entry.to === undefined ? whole : length(entry.to, `${path}.to`),
      }
    }),
    yard: objects('yard', ['length', 'left', 'price']).map(([entry, path]) => {
      const price = entry.price === undefined ? null : parseMoney(String(entry.price))
      if (price?.ok === false) say(`${path}.price`, price.error.message, price.error.fix)
      return {
        stockId: stockOf(entry, path),
        left: entry.left === undefined ? null : number(entry.left, `${path}.left`, 'what is left'),
        price: price?.ok === true ? cents(price.value) : null,
      }
    }),
    spares: objects('spares', ['length', 'count']).map(([entry, path]) => ({
      stockId: stockOf(entry, path),
      count: number(entry.count, `${path}.count`, 'the count'),
    })),
    refund: refundOf(day.refund, say),
  }
  return faults.length > 0 ? fail(faults) : ok(read)
}

function refundOf(
  value: JsonValue | undefined,
  say: (path: string, message: string, fix: string) => void,
): Share {
  if (value === undefined) return share(0)
  const read = parseShare(String(value))
  if (read.ok && read.value >= 0 && read.value <= 10_000) return read.value
  say('refund', read.ok ? 'it is no share from 0 to 100 %' : read.error.message, 'write a share such as 80 %')
  return share(0)
}
