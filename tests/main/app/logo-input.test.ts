import { describe, expect, test } from 'vitest'
import { readFirmText } from '../../../main/app/firm-file.ts'
import { readLogo } from '../../../main/app/logo-input.ts'
import { pngOf } from '../exports/png-of.ts'

const png = (bytes: Uint8Array): string => `data:image/png;base64,${Buffer.from(bytes).toString('base64')}`

/** Start, a frame's head of 40 × 30 (ISO/IEC 10918-1, B.2.2), end. */
const JPEG = Buffer.from('ffd8ffc0000b08001e0028010111000000ffd9', 'hex')
const jpeg = `data:image/jpeg;base64,${JPEG.toString('base64')}`

describe('a firm’s logo', () => {
  test('is read with its own size, PNG or JPEG, whatever size was stated', () => {
    expect(readLogo(png(pngOf(60, 20)))).toMatchObject({ ok: true, value: { width: 60, height: 20 } })
    expect(readLogo(jpeg)).toMatchObject({ ok: true, value: { width: 40, height: 30 } })
    const firm = readFirmText(
      JSON.stringify({ name: 'A', logo: { data: png(pngOf(6, 2)), width: 999, height: 1 } }),
      'firm.json',
    )
    expect(firm).toMatchObject({ ok: true, value: { logo: { width: 6, height: 2 } } })
  })

  const whole = pngOf(60, 20)
  const bent = Buffer.from(whole)
  bent[50] = (bent[50] ?? 0) ^ 0xff
  test.each([
    ['a picture of another kind', 'data:image/svg+xml;base64,PHN2Zy8+', 'PNG or JPEG file'],
    ['no picture at all', 'hello', 'PNG or JPEG file'],
    ['a PNG cut short', png(whole.subarray(0, whole.length - 8)), 'not a whole PNG'],
    ['a PNG with a wrong check sum', png(bent), 'not a whole PNG'],
    ['a PNG under the name of a JPEG', png(whole).replace('image/png', 'image/jpeg'), 'not a whole JPEG'],
    ['a JPEG cut short', jpeg.slice(0, -4), 'not a whole JPEG'],
    ['a picture of too many pixels', png(pngOf(2001, 2)), '2001 × 2 pixels'],
    ['a file that is too large', png(Buffer.alloc(300_001)), 'use at most 300'],
  ])('that is %s is refused in a sentence', (_, data, sentence) => {
    const read = readLogo(data)
    expect(read).toMatchObject({ ok: false, error: expect.stringContaining(sentence) })
    const firm = readFirmText(JSON.stringify({ logo: data }), 'firm.json')
    expect(firm).toMatchObject({ ok: false, error: expect.stringContaining(sentence) })
  })
})
