import { describe, expect, test } from 'vitest'
import { aboutOf, layOutPages, makeSheets, type Page, type SheetId } from '../../../core/papers/index.ts'
import { inches } from '../../../core/units/index.ts'
import { makeSvg } from '../../../main/exports/svg/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { workedJob } from '../../fixtures/worked-job.ts'
import { WORKED_PRICES } from '../../fixtures/worked-prices.ts'

/** 0.2 mm on paper, in points. */
const NEAR = (0.2 / 25.4) * 72
const source = paperSource(workedJob(), WORKED_PRICES)
const pagesOf = (only: readonly SheetId[], scale: number | null = null, paper: 'letter' | 'a3' = 'letter') =>
  layOutPages(makeSheets(source, only), aboutOf(source), { paper, scale })

/** Boxes of an SVG by the id of what they show, measured from its text as any viewer would. */
function boxes(page: Page): ReadonlyMap<string, { x0: number; x1: number; y0: number; y1: number }> {
  const found = new Map<string, { x0: number; x1: number; y0: number; y1: number }>()
  for (const [, points = '', id = ''] of makeSvg(page).matchAll(
    /<polygon points="([^"]*)"[^>]*data-id="([^"]*)"/g,
  )) {
    const numbers = points.split(' ').map((pair) => pair.split(',').map(Number))
    const xs = numbers.map(([x]) => x ?? Number.NaN)
    const ys = numbers.map(([, y]) => y ?? Number.NaN)
    // a text's white ground carries no id, so the first of an id is the thing itself
    if (!found.has(id))
      found.set(id, { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) })
  }
  return found
}

describe('a drawing on paper', () => {
  test.each([48, 64, 96])('at 1:%d measures what the model measures, to 0.2 mm', (scale) => {
    const [page] = pagesOf(['framing'], scale)
    if (page === undefined) throw new Error('there is a page')
    const measured = boxes(page)
    const members = source.estimate.frame.members.filter(({ role }) =>
      ['ledger', 'rim', 'joist', 'end joist', 'beam ply', 'blocking'].includes(role),
    )
    expect(members.length).toBeGreaterThan(30)
    const per = 72 / 32 / scale
    const origin = measured.get('end-joist-left')
    if (origin === undefined) throw new Error('the left end joist is drawn')
    for (const { id, box } of members) {
      const at = measured.get(id)
      if (at === undefined) throw new Error(`${id} is not drawn`)
      expect(Math.abs(at.x0 - origin.x0 - box.x0 * per)).toBeLessThan(NEAR)
      expect(Math.abs(at.x1 - origin.x0 - box.x1 * per)).toBeLessThan(NEAR)
      expect(Math.abs(at.y0 - origin.y0 - box.y0 * per)).toBeLessThan(NEAR)
      expect(Math.abs(at.y1 - origin.y0 - box.y1 * per)).toBeLessThan(NEAR)
    }
  })

  test('takes the stated scale where it fits, and says so where it does not', () => {
    const words = (page: Page | undefined) =>
      (page?.marks ?? []).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join('\n')
    expect(words(pagesOf(['framing'], 48)[0])).toContain('Scale 1/4 in = 1 ft (1:48)')
    const small = words(pagesOf(['framing'], 12)[0])
    expect(small).toContain('the stated scale does not fit this paper')
    expect(small).not.toContain('(1:12)')
    expect(words(pagesOf(['framing'], 50, 'a3')[0])).toContain('Scale 1:50')
  })

  test('has a bar as long as it says', () => {
    const [page] = pagesOf(['framing'], 48)
    const label = page?.marks.find((mark) => mark.kind === 'text' && /^\d+ ft$/.test(mark.text))
    if (label?.kind !== 'text' || page === undefined) throw new Error('the bar is named')
    const feet = Number(label.text.replace(' ft', ''))
    const ends = page.marks.flatMap((mark) =>
      mark.kind === 'line' && mark.x1 === mark.x2 && Math.abs(mark.y1 - mark.y2) === 7 ? [mark.x1] : [],
    )
    expect(Math.max(...ends) - Math.min(...ends)).toBeCloseTo((feet * 12 * 72) / 48, 2)
  })
})

describe('a marking strip', () => {
  const pages = pagesOf(['strips'])

  test('is true to size: ten feet of it are ten feet of paper', () => {
    const bands = pages
      .flatMap(({ drawings }) => drawings)
      .filter(({ drawing }) => drawing.startsWith('rim-front-1-'))
    const whole = Math.floor(9.5)
    for (const { scale } of bands) expect(scale).toBe(72 / 32)
    // each band but the last is whole inches long, so so many bands make ten feet
    const each = (bands[1]?.x0 ?? 0) - (bands[0]?.x0 ?? 0)
    expect(each % inches(1)).toBe(0)
    expect(each).toBeGreaterThanOrEqual(inches(whole))
    const points = bands
      .filter(({ x0 }) => x0 < inches(120))
      .map(({ x0 }) => Math.min(each, inches(120) - x0) * (72 / 32))
    expect(points.reduce((sum, long) => sum + long, 0)).toBeCloseTo(120 * 72, 6)
  })

  test('has every joist line where the joist stands, on paper as in the frame', () => {
    const rim = source.estimate.frame.members.find(({ id }) => id === 'rim-front-1')
    const joists = source.estimate.frame.members.filter(
      ({ role }) => role === 'joist' || role === 'end joist',
    )
    if (rim === undefined) throw new Error('there is a rim')
    const lines = pages.flatMap(({ drawings, marks }) =>
      drawings
        .filter(({ drawing }) => drawing.startsWith('rim-front-1-'))
        .flatMap(({ left, top, x0 }) =>
          marks.flatMap((mark) =>
            mark.kind === 'line' && mark.x1 === mark.x2 && mark.y1 === top && mark.width > 1
              ? [(mark.x1 - left) / (72 / 32) + x0]
              : [],
          ),
        ),
    )
    for (const { mark, box } of joists) {
      const at = box.x0 - rim.box.x0
      const nearest = Math.min(...lines.map((line) => Math.abs(line - at)))
      expect(nearest * (25.4 / 32), mark).toBeLessThan(0.2)
    }
  })
})

describe('joist marks', () => {
  test('stand s − 3/4 in from the hooked end on the rim, and 1-1/2 in less on the ledger, as carpenters mark them', () => {
    const [sheet] = makeSheets(source, ['marking'])
    const table = sheet?.blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []))[0]
    const first = table?.rows.find(({ mark }) => mark === 'J1')
    // trade's rule: the near edge is at s − 3/4; 16 in on centre; the ledger begins 1-1/2 in from the deck's end
    expect(first?.['rim-front-1']).toBe('1\'-3 1/4"')
    expect(first?.ledger).toBe('1\'-1 3/4"')
    expect(first?.['beam-front']).toBe('1\'-3 1/4"')
    expect(table?.rows).toHaveLength(19)
  })
})
