import { excerpt, type Fault, isObject, kindOf, nearestName } from '../../job/index.ts'
import {
  type Cents,
  parseLength,
  parseMoney,
  parseUnitPrice,
  printMoney,
  type Ticks,
  type UnitPrice,
} from '../../units/index.ts'

/** Reads one value of a file at a path: the value, or null once it has said in `faults` what is wrong. */
export type Reader<T> = (value: unknown, path: string, faults: Fault[]) => T | null

/** A field that may be absent; then it is what is given here. */
export interface Optional<T> {
  readonly read: Reader<T>
  readonly absent: T
}

type Shape<T> = { readonly [K in keyof T]: Reader<T[K]> | Optional<T[K]> }

const LONGEST_TEXT = 200

export function text(value: unknown, path: string, faults: Fault[]): string | null {
  if (typeof value !== 'string') return wrong(faults, path, `is ${kindOf(value)}`, 'write a text in quotes')
  if (value.length > LONGEST_TEXT)
    return wrong(faults, path, 'is too long', `keep it under ${LONGEST_TEXT} characters`)
  return value
}

export function named(value: unknown, path: string, faults: Fault[]): string | null {
  const read = text(value, path, faults)
  return read !== null && read.trim() === ''
    ? wrong(faults, path, 'is empty', 'write a text in quotes')
    : read
}

export function flag(value: unknown, path: string, faults: Fault[]): boolean | null {
  return typeof value === 'boolean'
    ? value
    : wrong(faults, path, `is ${kindOf(value)}`, 'write true or false')
}

export function choice<T extends string>(choices: readonly T[]): Reader<T> {
  return (value, path, faults) =>
    choices.find((one) => one === value) ??
    wrong(faults, path, `is ${said(value)}`, `choose one of ${choices.join(', ')}`)
}

/** A number with at most so many decimals, as a whole count of its last place. */
export function decimal(decimals: number, least: number, most: number): Reader<number> {
  return (value, path, faults) => {
    const right = `write a number from ${least} to ${most}${decimals === 0 ? ', without decimals' : ''}`
    if (typeof value !== 'number' || !Number.isFinite(value))
      return wrong(faults, path, `is ${said(value)}`, right)
    const whole = Math.round(value * 10 ** decimals)
    if (Math.abs(whole / 10 ** decimals - value) > 1e-9) {
      return wrong(faults, path, `is ${value}`, decimals === 0 ? right : `give at most ${decimals} decimals`)
    }
    return value < least || value > most ? wrong(faults, path, `is ${value}`, right) : whole
  }
}

export function length(least: Ticks, most: Ticks): Reader<Ticks> {
  return (value, path, faults) => {
    if (typeof value !== 'string')
      return wrong(faults, path, `is ${said(value)}`, 'write a length such as "16ft"')
    const read = parseLength(value)
    if (!read.ok) return wrong(faults, path, `is ${said(value)}: ${read.error.message}`, read.error.fix)
    const within = read.value >= least && read.value <= most
    return within
      ? read.value
      : wrong(faults, path, `is ${said(value)}`, 'give a length above 0 and at most 60 ft')
  }
}

/** Dollars and cents, from `least` up to $100,000. */
export function money(least: Cents): Reader<Cents> {
  return (value, path, faults) => {
    if (typeof value !== 'string')
      return wrong(faults, path, `is ${said(value)}`, 'write a price such as "$23.49"')
    const read = parseMoney(value)
    if (!read.ok) return wrong(faults, path, `is ${said(value)}: ${read.error.message}`, read.error.fix)
    return read.value >= least && read.value <= 10_000_000
      ? read.value
      : wrong(faults, path, `is ${said(value)}`, `give a price from ${printMoney(least)} to $100,000`)
  }
}

/** Dollars with up to four decimals, as goods by the piece or the foot have them. */
export function pricePerUnit(value: unknown, path: string, faults: Fault[]): UnitPrice | null {
  const read = typeof value === 'string' ? parseUnitPrice(value) : null
  if (read?.ok) return read.value
  const why = read === null ? '' : `: ${read.error.message}`
  return wrong(faults, path, `is ${said(value)}${why}`, 'write a price such as "$2.39" or "$0.1026"')
}

export function list<T>(entry: Reader<T>): Reader<readonly T[]> {
  return (value, path, faults) => {
    if (!Array.isArray(value))
      return wrong(faults, path, `is ${kindOf(value)}`, 'write a list between [ and ]')
    const read = value.map((one, i) => entry(one, `${path}[${i}]`, faults))
    return read.every((one) => one !== null) ? (read as readonly T[]) : null
  }
}

export function optional<T>(read: Reader<T>, absent: T): Optional<T> {
  return { read, absent }
}

/** An object of exactly these fields; an unknown one is a fault that names the nearest known one. */
export function object<T>(shape: Shape<T>): Reader<T> {
  const keys = Object.keys(shape) as (keyof T & string)[]
  return (value, path, faults) => {
    if (!isObject(value)) return wrong(faults, path, `is ${kindOf(value)}`, 'write an object between { and }')
    const before = faults.length
    const at = (key: string) => (path === '' ? key : `${path}.${key}`)
    const entries = keys.map((key) => {
      const field: Reader<unknown> | Optional<unknown> = shape[key]
      const given = Object.hasOwn(value, key)
      if (typeof field !== 'function')
        return [key, given ? field.read(value[key], at(key), faults) : field.absent]
      if (given) return [key, field(value[key], at(key), faults)]
      wrong(faults, at(key), 'is missing', `add "${key}"`)
      return [key, null]
    })
    for (const key of Object.keys(value)) {
      if (keys.some((known) => known === key)) continue
      const near = nearestName(key, keys)
      wrong(
        faults,
        at(excerpt(key)),
        'is not known',
        near === null ? `known are ${keys.join(', ')}` : `did you mean "${near}"?`,
      )
    }
    return faults.length > before ? null : (Object.fromEntries(entries) as T)
  }
}

export function wrong(faults: Fault[], path: string, message: string, fix: string): null {
  faults.push({ path, message: `${path === '' ? 'the price book' : path} ${message}`, fix })
  return null
}

function said(value: unknown): string {
  return typeof value === 'string'
    ? `"${excerpt(value)}"`
    : typeof value === 'number'
      ? `${value}`
      : kindOf(value)
}
