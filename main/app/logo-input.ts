import { crc32, inflateSync } from 'node:zlib'
import { z } from 'zod'
import type { Logo } from '../../core/papers/index.ts'
import { fail, ok, type Result } from '../../core/units/index.ts'

/** A letterhead's picture is far smaller; it stands in every PDF. */
const MOST_BYTES = 300_000
const MOST_PIXELS = 2000
const HEAD = /^data:image\/(png|jpeg);base64,([A-Za-z0-9+/]+={0,2})$/

const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
/** samples of a pixel by the colour type of a PNG */
const SAMPLES: { readonly [type: number]: number } = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 }

/** A logo as it is stated: a data URL alone, or with sizes that are read anew. A broken picture is refused in a sentence. */
export const logoInput = z
  .union([
    z.null(),
    z.string().max(2 * MOST_BYTES),
    z.strictObject({ data: z.string().max(2 * MOST_BYTES), width: z.number(), height: z.number() }),
  ])
  .transform((stated, context): Logo | null => {
    if (stated === null || stated === '') return null
    const read = readLogo(typeof stated === 'string' ? stated : stated.data)
    if (read.ok) return read.value
    context.addIssue({ code: 'custom', message: read.error })
    return z.NEVER
  })

/** Reads a picture to its end, so that no paper fails on it later. */
export function readLogo(data: string): Result<Logo, string> {
  const [, kind, base64] = HEAD.exec(data) ?? []
  if (kind === undefined || base64 === undefined)
    return fail('a logo is a PNG or JPEG file, as data:image/png;base64,…')
  const bytes = Buffer.from(base64, 'base64')
  if (bytes.length > MOST_BYTES)
    return fail(`the logo has ${Math.ceil(bytes.length / 1000)} kB; use at most ${MOST_BYTES / 1000}`)
  const size = kind === 'png' ? pngSize(bytes) : jpegSize(bytes)
  if (size === null)
    return fail(`the logo is not a whole ${kind === 'png' ? 'PNG, not interlaced' : 'JPEG'}; save it anew`)
  const { width, height } = size
  if (Math.max(width, height) > MOST_PIXELS)
    return fail(`the logo is ${width} × ${height} pixels; use at most ${MOST_PIXELS} each way`)
  return ok({ data, width, height })
}

type Size = { readonly width: number; readonly height: number } | null

/** PNG (ISO/IEC 15948): every chunk with its check sum, and as much picture as its head promises. */
function pngSize(bytes: Buffer): Size {
  if (!bytes.subarray(0, 8).equals(PNG)) return null
  const data: Buffer[] = []
  let size: { width: number; height: number } | null = null
  let rowBits = 0
  let isEnded = false
  for (let at = 8; at + 12 <= bytes.length && !isEnded; ) {
    const length = bytes.readUInt32BE(at)
    const end = at + 8 + length
    if (end + 4 > bytes.length) return null
    if (crc32(bytes.subarray(at + 4, end)) !== bytes.readUInt32BE(end)) return null
    const name = bytes.toString('latin1', at + 4, at + 8)
    const body = bytes.subarray(at + 8, end)
    if (name === 'IHDR') {
      if (length !== 13 || body[12] !== 0) return null
      size = { width: body.readUInt32BE(0), height: body.readUInt32BE(4) }
      rowBits = size.width * (body[8] ?? 0) * (SAMPLES[body[9] ?? 9] ?? 0)
    }
    if (name === 'IDAT') data.push(body)
    isEnded = name === 'IEND'
    at = end + 4
  }
  if (size === null || !isEnded || rowBits === 0 || size.height === 0) return null
  if (Math.max(size.width, size.height) > MOST_PIXELS) return size
  const want = size.height * (1 + Math.ceil(rowBits / 8))
  try {
    return inflateSync(Buffer.concat(data), { maxOutputLength: want + 1 }).length === want ? size : null
  } catch {
    // not the picture that its head promises: told as such
    return null
  }
}

/** JPEG (ISO/IEC 10918-1): segments up to the frame's head, and an end. */
function jpegSize(bytes: Buffer): Size {
  if (bytes.length < 4 || bytes.readUInt16BE(0) !== 0xffd8) return null
  if (bytes.readUInt16BE(bytes.length - 2) !== 0xffd9) return null
  for (let at = 2; at + 9 < bytes.length; ) {
    if (bytes[at] !== 0xff) return null
    const marker = bytes[at + 1] ?? 0
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)
    if (isFrame) {
      const [height, width] = [bytes.readUInt16BE(at + 5), bytes.readUInt16BE(at + 7)]
      return width > 0 && height > 0 ? { width, height } : null
    }
    at += 2 + bytes.readUInt16BE(at + 2)
  }
  return null
}
