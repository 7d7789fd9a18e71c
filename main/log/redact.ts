import { homedir } from 'node:os'

/** Fields that may hold a customer's or a firm's own words, or a secret of the session: never written to a log. */
const withheld = new Set([
  'statement',
  'token',
  'cookie',
  'authorization',
  'base64',
  'book',
  'name',
  'customer',
])

const home = homedir()

/** A copy fit for a log: withheld fields named but empty, the user's home folder as `~`, long text cut. */
export function redact(value: unknown, depth = 0): unknown {
  if (typeof value === 'string') return shorten(home.length > 1 ? value.replaceAll(home, '~') : value)
  if (value instanceof Error)
    return { error: value.name, message: redact(value.message), stack: redact(value.stack ?? '') }
  if (typeof value !== 'object' || value === null) return typeof value === 'bigint' ? String(value) : value
  if (depth > 4) return '[deeper]'
  if (Array.isArray(value)) return value.slice(0, 20).map((entry) => redact(entry, depth + 1))
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => [
      key,
      withheld.has(key) ? '[withheld]' : redact(entry, depth + 1),
    ]),
  )
}

function shorten(text: string): string {
  const longest = 2000
  return text.length <= longest ? text : `${text.slice(0, longest)}… (${text.length} characters)`
}
