import { type Check, checkFrame } from '../../../core/checks/index.ts'
import { type Frame, frameDeck } from '../../../core/frame/index.ts'
import { type Job, readJob } from '../../../core/job/index.ts'
import { type Layout, layOut } from '../../../core/layout/index.ts'

/** The deck worked by hand in the trade conventions, §7–8: 23 ft 6 in × 13 ft 6 in on a ledger. */
export const WORKED_DECK = {
  version: 1,
  size: { width: '23 ft 6 in', depth: '13 ft 6 in', height: '42 in' },
  site: {
    attachment: 'ledger',
    ground: { away: { fall: '6 in', over: '13 ft 6 in' } },
    frostDepth: '36 in',
    soil: 'clay or silt',
    soilBearing: 1500,
    snowLoad: 0,
  },
  frame: {
    species: 'SP',
    joists: { size: '2x10', spacing: '16 in' },
    beams: { front: { size: '2x12', plies: 2, setback: '24 in', posts: 4, inset: '12 in' } },
    postSize: '6x6',
  },
  ground: { tube: '12 in', base: '20 in', baseThickness: '8 in' },
} as const

type Change = { readonly [key: string]: unknown }

/** The worked deck with some of its fields stated otherwise, or not at all where undefined is given. */
export function deckWith(change: Change = {}): {
  job: Job
  layout: Layout
  frame: Frame
  checks: readonly Check[]
} {
  const read = readJob(merge(WORKED_DECK, change))
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const job = read.value.job
  const layout = layOut(job)
  if (!layout.ok) throw new Error(JSON.stringify(layout.error))
  const frame = frameDeck(job, layout.value)
  if (!frame.ok) throw new Error(JSON.stringify(frame.error))
  return { job, layout: layout.value, frame: frame.value, checks: checkFrame(job, layout.value, frame.value) }
}

export function checkNamed(checks: readonly Check[], id: string): Check {
  const found = checks.find((check) => check.id === id)
  if (found === undefined)
    throw new Error(`no check ${id} among ${checks.map((check) => check.id).join(', ')}`)
  return found
}

function merge(base: Change, change: Change): Change {
  const merged: { [key: string]: unknown } = { ...base }
  for (const [key, value] of Object.entries(change)) {
    if (value === undefined) {
      delete merged[key]
      continue
    }
    const old = merged[key]
    merged[key] = isRecord(old) && isRecord(value) ? merge(old, value) : value
  }
  return merged
}

function isRecord(value: unknown): value is Change {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
