import { existsSync, globSync, readFileSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { join } from 'node:path'
import { exceptions } from './licence-terms.ts'

export interface ShippedPackage {
  readonly name: string
  readonly version: string
  /** as the package states it, or as read in its stead; empty where nothing is known */
  readonly licence: string
}

interface LockEntry {
  readonly version?: string
  readonly license?: string
  readonly dependencies?: Readonly<Record<string, string>>
  readonly optionalDependencies?: Readonly<Record<string, string>>
  readonly peerDependencies?: Readonly<Record<string, string>>
  readonly peerDependenciesMeta?: Readonly<Record<string, { readonly optional?: boolean }>>
}

type Lock = Readonly<Record<string, LockEntry>>

/** Every package that reaches a user: what main runs on, what is bundled into the window, Electron, and theirs in turn. */
export function shippedPackages(root: string): readonly ShippedPackage[] {
  const lock = (JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as { packages: Lock })
    .packages
  const own = lock[''] ?? {}
  const start = [
    ...Object.keys(own.dependencies ?? {}),
    ...Object.keys(own.optionalDependencies ?? {}),
    ...windowPackages(root),
    'electron',
  ]
  const found = new Map<string, ShippedPackage>()
  const waiting = start.map((name) => resolveIn(lock, '', name)).filter((key) => key !== null)
  for (let key = waiting.pop(); key !== undefined; key = waiting.pop()) {
    const entry = lock[key]
    if (found.has(key) || !entry) continue
    const name = key.slice(key.lastIndexOf('node_modules/') + 'node_modules/'.length)
    found.set(key, { name, version: entry.version ?? '', licence: licenceOf(root, key, name, entry) })
    for (const next of namesBelow(entry)) {
      const resolved = resolveIn(lock, key, next)
      if (resolved !== null) waiting.push(resolved)
    }
  }
  return [...found.values()].sort((a, b) => order(`${a.name}@${a.version}`, `${b.name}@${b.version}`))
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** Packages named by the window's sources; they are bundled, so they ship though they are devDependencies. */
function windowPackages(root: string): readonly string[] {
  const names = new Set<string>()
  for (const file of globSync('renderer/**/*.{ts,tsx,css}', { cwd: root })) {
    const text = readFileSync(join(root, file), 'utf8')
    for (const [, path = ''] of text.matchAll(/(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g)) {
      if (path.startsWith('.') || path.startsWith('/') || isBuiltin(path)) continue
      names.add(path.split('/', path.startsWith('@') ? 2 : 1).join('/'))
    }
  }
  return [...names]
}

function namesBelow(entry: LockEntry): readonly string[] {
  const needed = Object.keys(entry.peerDependencies ?? {}).filter(
    (name) => !entry.peerDependenciesMeta?.[name]?.optional,
  )
  return [
    ...Object.keys(entry.dependencies ?? {}),
    ...Object.keys(entry.optionalDependencies ?? {}),
    ...needed,
  ]
}

/** The way Node finds a package: in the folder itself, then in every folder above it. */
function resolveIn(lock: Lock, from: string, name: string): string | null {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf('/node_modules/')))) {
    const key = `${folder === '' ? '' : `${folder}/`}node_modules/${name}`
    if (lock[key]) return key
    if (folder === '') return null
  }
}

function licenceOf(root: string, key: string, name: string, entry: LockEntry): string {
  const file = join(root, key, 'package.json')
  const stated: unknown = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {}
  const { license, licenses } = stated as { license?: unknown; licenses?: unknown }
  return read(license) || read(licenses) || entry.license || exceptions[name]?.licence || ''
}

function read(field: unknown): string {
  if (typeof field === 'string') return field
  if (Array.isArray(field))
    return field
      .map(read)
      .filter((text) => text !== '')
      .join(' OR ')
  if (typeof field === 'object' && field !== null && 'type' in field) return String(field.type)
  return ''
}
