import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

/** Goods of a catalogue deck by sku, whole pieces. */
function goodsOf(file: string) {
  const deck = CATALOGUE.find((one) => one.file === file)
  const made = deck === undefined ? null : design(deck.job)
  if (made === null || !made.ok) throw new Error(file)
  return new Map(made.value.takeoff.goods.map((good) => [good.sku, good]))
}

const hangers = (file: string): Record<string, number> =>
  Object.fromEntries(
    [...goodsOf(file)].flatMap(([sku, { thousandths }]) =>
      sku.startsWith('joist-hanger') ? [[sku, thousandths / 1000]] : [],
    ),
  )

// Counted by hand on the framing plans; the corners stand in the catalogue's files.
describe('hangers by what they hold and how they meet it', () => {
  it('are straight ones for one board where joists meet the ledger square', () => {
    // 16 ft at 16 in on centre: 13 joists, two of them end joists in angles
    expect(hangers('rectangle-16-by-10.json')).toEqual({ 'joist-hanger-2x10': 11 })
  })

  it('are for two boards at both ends of a doubled header', () => {
    // a tree in the middle: two headers of two plies, two ends each
    expect(hangers('tree.json')['joist-hanger-double-2x10']).toBe(4)
  })

  it('are skewed where a joist hangs from a slanting ledger', () => {
    // two joists of fourteen meet the bay's sides at 45°, the others its front and the wall
    expect(hangers('bay-window.json')).toEqual({ 'joist-hanger-2x10': 12, 'joist-hanger-skewed-2x10': 2 })
    expect(goodsOf('bay-window.json').get('joist-hanger-skewed-2x10')?.cause.rule).toContain(
      'set to the joist’s 45° off square',
    )
  })

  it('are skewed along a hip, and one for both plies at its inside corner', () => {
    const counts = hangers('wrap-hip.json')
    // six jacks on either side of the hip
    expect(counts['joist-hanger-skewed-2x10']).toBe(12)
    expect(counts['joist-hanger-double-skewed-2x10']).toBe(1)
  })

  it('are to be made to the angle where none is adjustable so far', () => {
    // the side runs 4 ft along the wall in 12 ft away from it: atan(3) = 71.6° off square
    const good = goodsOf('angled-side.json').get('joist-hanger-skewed-2x10')
    expect(good?.thousandths).toBe(3_000)
    expect(good?.cause.rule).toContain('71.6° off square, beyond the 45°')
  })

  it('for two boards take nails that reach into both', () => {
    // 4 doubled hangers: 8 face and 4 joist nails each of 10d common, 22 single ones 8 face and 4 of 1-1/2 in
    const rule = goodsOf('tree.json').get('nail-10d-common')?.cause.rule ?? ''
    expect(rule).toContain('32 nails')
    expect(rule).toContain('16 nails')
    expect(rule).toContain('long enough for two')
  })
})
