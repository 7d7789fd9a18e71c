import { describe, expect, it } from 'vitest'
import { hardwareTable } from '../../../core/papers/index.ts'
import { SAMPLE_BOOK } from '../../../core/pricing/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

function orderOf(file: string) {
  const { estimate } = paperSource(CATALOGUE.find((deck) => deck.file === file)?.job ?? {})
  const rows = hardwareTable(estimate, SAMPLE_BOOK.goods).rows
  const label = (words: string) => rows.find((row) => row.label?.startsWith(words))?.label ?? ''
  return { estimate, label }
}

/** Every "listed for N lb" that the findings of checks with this title say. */
function toldBy(
  checks: readonly { readonly title: string; readonly message: string }[],
  title: RegExp,
): number[] {
  return checks
    .filter((check) => title.test(check.title))
    .flatMap(({ message }) => [...message.matchAll(/listed for ([\d,]+) lb/g)])
    .map(([, pounds = '']) => Number(pounds.replaceAll(',', '')))
}

describe('the order says by what strength metal is to be chosen', () => {
  it('of hangers, angles, bases and caps, the greatest that the checks find', () => {
    const { estimate, label } = orderOf('l-shape.json')
    const hangers = toldBy(estimate.checks, /^Joist hangers$/)
    const posts = toldBy(estimate.checks, /^Post bases and caps$/)
    expect(hangers.length * posts.length).toBeGreaterThan(0)
    expect(label('Joist hanger for a 2x10')).toContain(`(listed for ${Math.max(...hangers)} lb or more each)`)
    const most = Math.max(...posts).toLocaleString('en-US')
    expect(label('Post base')).toContain(`listed for ${most} lb or more each, pressing down`)
    expect(label('Post cap')).toContain(`listed for ${most} lb or more each, pressing down`)
    // by hand, of 16 in of deck: 40 psf on the span of 11 ft 9 in alone, 10 psf on the 2 ft past the beam too:
    // 53.3 × 11.75 ÷ 2 + 13.3 × (11.75² − 2²) ÷ (2 × 11.75) = 389 lb, a little more to the middles of the bearings
    expect(label('Angle, end joist')).toContain('listed for 394 lb or more each')
  })

  it('under a flight of stairs with what the stairs bring', () => {
    const { estimate, label } = orderOf('high-stairs-landing.json')
    const stairs = toldBy(estimate.checks, /^Load of the stairs on the deck$/)
    const posts = toldBy(estimate.checks, /^Post bases and caps$/)
    expect(Math.max(...stairs)).toBeGreaterThan(Math.max(...posts))
    expect(label('Post base')).toContain(
      `listed for ${Math.max(...stairs).toLocaleString('en-US')} lb or more`,
    )
  })

  it('and nothing of what no check reckons', () => {
    const { label } = orderOf('l-shape.json')
    expect(label('Uplift tie')).not.toContain('listed for')
    expect(label('Anchor bolt')).not.toContain('listed for')
  })
})
