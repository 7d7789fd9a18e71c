import { crc32, deflateSync } from 'node:zlib'

/** A PNG of one colour (ISO/IEC 15948), RGB at 8 bits. */
export function pngOf(width: number, height: number): Buffer {
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width, 0)
  head.writeUInt32BE(height, 4)
  head.set([8, 2, 0, 0, 0], 8)
  const rows = Buffer.alloc(height * (1 + 3 * width), 0x60)
  for (let y = 0; y < height; y += 1) rows[y * (1 + 3 * width)] = 0
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

function chunk(name: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), body])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(body.length)
  const sum = Buffer.alloc(4)
  sum.writeUInt32BE(crc32(named))
  return Buffer.concat([length, named, sum])
}
