import { z } from 'zod'
import { readTextFile, writeWhole } from '../app/files.ts'

/** Where the window stood, in the system's own units of the screen. */
export interface Place {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly maximized: boolean
}

/** The free area of a screen, as the system tells it. */
export type Area = Omit<Place, 'maximized'>

const whole = z.number().int().min(-100_000).max(100_000)
const place = z.strictObject({ x: whole, y: whole, width: whole, height: whole, maximized: z.boolean() })

/** Part of the window that must lie on some screen for its place to be used again. */
const SEEN = { width: 200, height: 100 }

/** The place the window had, where a file tells it and a screen still shows it; else null. */
export function readPlace(file: string, screens: readonly Area[]): Place | null {
  const text = readTextFile(file)
  if (!text.ok) return null
  const read = place.safeParse(parsed(text.value))
  return read.success && screens.some((screen) => shows(screen, read.data)) ? read.data : null
}

/** Keeps the place; a window opens without it just as well, so that a failure to write is no one's trouble. */
export function keepPlace(file: string, { x, y, width, height, maximized }: Place): void {
  writeWhole(file, `${JSON.stringify({ x, y, width, height, maximized })}\n`, 'replace')
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    // a torn file is as good as none
    return null
  }
}

function shows(screen: Area, window: Area): boolean {
  const common = (from: number, size: number, otherFrom: number, otherSize: number) =>
    Math.min(from + size, otherFrom + otherSize) - Math.max(from, otherFrom)
  return (
    common(screen.x, screen.width, window.x, window.width) >= SEEN.width &&
    common(screen.y, screen.height, window.y, window.height) >= SEEN.height
  )
}
