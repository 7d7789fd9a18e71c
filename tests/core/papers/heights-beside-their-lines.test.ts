import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { deckElevation, deckSection } from '../../../core/papers/drawings/upright-views.ts'
import { layOutPages, type Mark, type Sheet } from '../../../core/papers/index.ts'
import { LITTLE_ABOUT as ABOUT } from '../../fixtures/about.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

function deck(name: string) {
  const made = design(CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {})
  if (!made.ok) throw new Error(name)
  return made.value
}

/** A dimension's own line, and no line that leads to it. */
const isUpright = (mark: Mark) => mark.kind === 'line' && Math.abs(mark.x1 - mark.x2) < 0.01

describe.each(['high-stairs-landing', 'l-shape', 'clipped-corner'])('the heights of %s', (name) => {
  const made = deck(name)
  const drawings = [deckSection(made), deckElevation(made, 'front'), deckElevation(made, 'side')]

  test.each(drawings.map((drawing) => [drawing.id, drawing] as const))(
    'on %s: that of what lies over the posts stands between the ends of its line, not over it beside the guard',
    (id, drawing) => {
      const sheet: Sheet = {
        id: 'section',
        title: '',
        audience: 'crew',
        across: true,
        blocks: [
          {
            kind: 'drawing',
            drawing,
            layers: ['house', 'footings', 'beams', 'joists', 'posts', 'guard', 'dimensions'],
          },
        ],
      }
      const own = `${id.replace('deck-', '')}-height-1`
      const marks = layOutPages([sheet], ABOUT, { paper: 'letter', scale: 48 })
        .flatMap((page) => page.marks)
        .filter((mark) => 'id' in mark && mark.id === own)
      const [text] = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []))
      const [line] = marks.flatMap((mark) => (mark.kind === 'line' && isUpright(mark) ? [mark] : []))
      if (text === undefined || line === undefined) throw new Error(own)
      const [top, bottom] = [Math.min(line.y1, line.y2), Math.max(line.y1, line.y2)]
      const before = text.anchor === 'middle' ? text.width / 2 : 0
      const middle = text.turned ? text.y - (text.width / 2 - before) : text.y
      expect(middle).toBeGreaterThan(top)
      expect(middle).toBeLessThan(bottom + text.size)
    },
  )
})
