import { inflateSync } from 'node:zlib'

const HEADER = 44
const ENTRY = 20

/**
 * A font as it is before it is packed for the web: WOFF 1.0 (W3C, 2012) holds the tables of an OpenType font, each
 * deflated by itself. Read packed, the tables would be inflated anew for every letter.
 */
export function unwrapWoff(packed: Buffer): Buffer {
  const count = packed.readUInt16BE(12)
  const entries = Array.from({ length: count }, (_, i) => {
    const at = HEADER + i * ENTRY
    const [offset, short, length] = [4, 8, 12].map((by) => packed.readUInt32BE(at + by))
    const stored = packed.subarray(offset, (offset ?? 0) + (short ?? 0))
    const data = short === length ? stored : inflateSync(stored)
    return { tag: packed.subarray(at, at + 4), sum: packed.subarray(at + 16, at + 20), data }
  })
  const power = 2 ** Math.floor(Math.log2(count))
  const head = Buffer.alloc(12 + 16 * count)
  packed.copy(head, 0, 4, 8)
  ;[count, power * 16, Math.log2(power), (count - power) * 16].forEach((value, i) => {
    head.writeUInt16BE(value, 4 + 2 * i)
  })
  const parts: Buffer[] = [head]
  let offset = head.length
  for (const [i, { tag, sum, data }] of entries.entries()) {
    const at = 12 + 16 * i
    tag.copy(head, at)
    sum.copy(head, at + 4)
    head.writeUInt32BE(offset, at + 8)
    head.writeUInt32BE(data.length, at + 12)
    const padded = Buffer.alloc(Math.ceil(data.length / 4) * 4)
    data.copy(padded)
    parts.push(padded)
    offset += padded.length
  }
  return Buffer.concat(parts)
}
