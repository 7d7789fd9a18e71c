import { describe, expect, it } from 'vitest'
import { percent } from '../../../core/checks/index.ts'
import { design } from '../../../core/design.ts'
import { quantityText } from '../../../core/papers/quantity-text.ts'
import { checksTable } from '../../../core/papers/tables/checks-table.ts'
import { reviewTable } from '../../../core/papers/tables/review-table.ts'
import { checksReport } from '../../../main/cli/checks-report.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { checkNamed } from './worked-deck.ts'

/** Long joists beside short ones on one ledger, over a beam each. */
const L = CATALOGUE.find(({ file }) => file === 'l-shape.json')?.job

function designed(statement: unknown) {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe('a share of a limit, in words', () => {
  it('is rounded, and never reads 100 % where it is more', () => {
    expect(percent(0.934)).toBe('93 %')
    expect(percent(0.936)).toBe('94 %')
    expect(percent(1)).toBe('100 %')
    expect(percent(1.0001)).toBe('101 %')
  })

  it('is no figure where a table allows nothing, in the checks, for a reviewer and on the command line', () => {
    // 2x8 over more than 14 ft: past the last span for which IRC 2021 Table R507.6 lets them reach past a beam
    const { checks } = designed({
      size: { width: '12 ft', depth: '18 ft', height: '48 in' },
      site: { snowLoad: 0 },
      frame: { joists: { size: '2x8' }, beams: { front: { setback: '24 in' } } },
    })
    const found = checkNamed(checks, 'joist-cantilever-front')
    expect(found.status).toBe('fails')
    expect(found.message).toContain('the table allows none')
    expect(found.remedy).toMatch(/^Use deeper joists, or shorten the span/)
    expect(checksReport([found])).toContain(' >999 %  IRC 2021 Table R507.6')
    expect(checksTable({ checks: [found] }).rows[0]).toMatchObject({ used: '>999 %' })
    expect(reviewTable([found]).rows[0]).toMatchObject({ ratio: '>9.990' })
  })
})

describe('what a check finds, in words', () => {
  const { checks, frame } = designed(L)

  it('names the joists where not all are alike, and no joist in two groups', () => {
    const marks = new Map(frame.members.map(({ id, mark }) => [id, mark]))
    for (const title of ['Joist span', 'Joist bearing', 'Joist hangers', 'Ledger fasteners']) {
      const found = checks.filter((check) => check.title === title)
      expect([title, found.length, new Set(found.map(({ message }) => message)).size]).toEqual([title, 2, 2])
    }
    const spans = checks.filter(({ title }) => title === 'Joist span')
    for (const { message, subjects } of spans) {
      for (const id of [subjects[0], subjects.at(-1)]) expect(message).toContain(marks.get(id ?? ''))
    }
    const all = spans.flatMap(({ subjects }) => subjects)
    expect(new Set(all).size).toBe(all.length)
  })

  it('calls a second beam on the same side by its mark', () => {
    expect(frame.beams.map(({ key, mark }) => [key, mark])).toEqual([
      ['front', 'B1'],
      ['front-b', 'B3'],
    ])
    const said = JSON.stringify(checks)
    expect(said).toContain('front beam B3')
    expect(said).not.toContain('front b beam')
  })

  it('asks for one and the same hanger at the bearing and at the hanger', () => {
    const listed = (id: string) => {
      const { message, remedy } = checkNamed(checks, id)
      return /listed for ([\d,]+) lb or more/.exec(`${message} ${remedy}`)?.[1]
    }
    expect(listed('hanger-load')).toBeDefined()
    expect(listed('joist-bearing')).toBe(listed('hanger-load'))
    expect(listed('joist-bearing-2')).toBe(listed('hanger-load-2'))
  })

  it('prints a load in the finding as in the row', () => {
    const { governing, message } = checkNamed(checks, 'dead-load')
    if (governing === null) throw new Error('the dead load is checked')
    expect(message).toContain(quantityText(governing.demand, 'demand'))
    const height = checkNamed(checks, 'post-height-front').findings.find(({ demand }) => demand.unit === 'lb')
    if (height === undefined) throw new Error('posts are reckoned in pounds')
    const ends = checkNamed(checks, 'post-ends-front')
    expect(ends.message).toContain(`listed for ${quantityText(height.demand, 'demand')} or more`)
    expect(ends.governing?.steps.join(' ')).toContain(`on a post: ${quantityText(height.demand, 'demand')}`)
  })
})
