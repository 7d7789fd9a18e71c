import { describe, expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { footingLayout } from '../../../core/papers/drawings/footing-layout.ts'
import { framingPlan } from '../../../core/papers/drawings/framing-plan.ts'
import { guardPlans } from '../../../core/papers/drawings/guard-plan.ts'
import { deckSection } from '../../../core/papers/drawings/upright-views.ts'
import { layOutPages, type Mark, type Sheet } from '../../../core/papers/index.ts'
import type { Drawing, Layer } from '../../../core/papers/types.ts'
import { LITTLE_ABOUT as ABOUT } from '../../fixtures/about.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const DECKS = ['l-shape', 'high-stairs-landing', 'picture-frame-l', 'diagonal', 'largest', 'wrap-hip']
const LAYERS: readonly Layer[] = [
  'house',
  'decking',
  'stairs',
  'footings',
  'strings',
  'beams',
  'joists',
  'posts',
  'joints',
  'guard',
  'marks',
  'dimensions',
]
type Text = Extract<Mark, { kind: 'text' }>

/** What a text takes of its page: of its height the letters alone, for what hangs under a line meets nothing. */
function roomOf({ x, y, width, size, anchor, turned }: Text) {
  const before = anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0
  const tall = size * 0.6
  return turned
    ? { x0: x - tall, x1: x, y0: y - (width - before), y1: y + before }
    : { x0: x - before, x1: x - before + width, y0: y - tall, y1: y }
}

const plansOf = (name: string): readonly Drawing[] => {
  const made = design(CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {})
  if (!made.ok) throw new Error(name)
  const { guard } = made.value
  return [
    framingPlan(made.value),
    footingLayout(made.value),
    ...(guard === null ? [] : guardPlans(made.value, guard)),
  ]
}

describe.each(DECKS)('the plans of %s', (name) => {
  test('have every label on Letter, and no two over each other', () => {
    for (const drawing of plansOf(name)) {
      const sheet: Sheet = {
        id: 'framing',
        title: '',
        audience: 'crew',
        across: true,
        blocks: [{ kind: 'drawing', drawing, layers: LAYERS }],
      }
      const own = new Set(drawing.primitives.map(({ id }) => id))
      const texts = layOutPages([sheet], ABOUT, { paper: 'letter', scale: null })
        .flatMap(({ marks }) => marks)
        .flatMap((mark) => (mark.kind === 'text' && own.has(mark.id) ? [mark] : []))
      // nothing gave way: each is there, and the word on the house beside them
      const asked = drawing.primitives.filter(({ kind }) => kind === 'text' || kind === 'dimension').length
      expect(texts.length, drawing.id).toBeGreaterThanOrEqual(asked)
      const met = texts.flatMap((one, i) =>
        texts.slice(i + 1).flatMap((other) => {
          const [a, b] = [roomOf(one), roomOf(other)]
          const over = a.x0 < b.x1 && a.x1 > b.x0 && a.y0 < b.y1 && a.y1 > b.y0
          return over ? [`${drawing.id}: ${one.text} and ${other.text}`] : []
        }),
      )
      expect(met).toEqual([])
    }
  })
})

test('the section of a deck around a corner names its ledger beside no beam that is seen beyond', () => {
  const made = design(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
  if (!made.ok) throw new Error('wrap-hip')
  const { primitives } = deckSection(made.value)
  const name = primitives.find((p) => p.kind === 'text' && p.text.startsWith('ledger'))
  const beams = new Set(made.value.frame.members.flatMap(({ id, role }) => (role === 'beam ply' ? [id] : [])))
  if (name?.kind !== 'text') throw new Error('the ledger is named')
  const behind = primitives.filter(
    (p) => p.kind === 'rect' && beams.has(p.id) && p.y - 32 < name.y && p.y + p.h + 32 > name.y,
  )
  expect(behind).toEqual([])
})
