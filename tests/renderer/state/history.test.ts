import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  apply,
  begin,
  commit,
  giveUp,
  type History,
  live,
  redo,
  undo,
} from '../../../renderer/state/history.ts'

const width = (value: string) => ({ size: { width: value } })

describe('history of a statement', () => {
  test('undo brings back the statement before a step, redo the one after', () => {
    const after = apply(begin(width('20 ft')), 'width 24 ft', width('24 ft'))
    expect(undo(after).present).toEqual(width('20 ft'))
    expect(redo(undo(after)).present).toEqual(width('24 ft'))
  })

  test('a gesture of many changes is one step under the name it had last', () => {
    let history = begin(width('20 ft'))
    for (const value of ['21 ft', '22 ft', '23 ft']) history = live(history, `width ${value}`, width(value))
    const done = commit(history)
    expect(done.past.map((step) => step.label)).toEqual(['width 23 ft'])
    expect(undo(done).present).toEqual(width('20 ft'))
  })

  test('a gesture given up leaves no step and the statement before it', () => {
    const given = giveUp(live(begin(width('20 ft')), 'width 30 ft', width('30 ft')))
    expect(given.present).toEqual(width('20 ft'))
    expect(given.past).toEqual([])
  })

  test('a gesture that ends where it began is no step', () => {
    const there = live(begin(width('20 ft')), 'width 21 ft', width('21 ft'))
    expect(commit(live(there, 'width 20 ft', width('20 ft'))).past).toEqual([])
  })

  test('a new step after an undo ends what could be redone', () => {
    const first = apply(begin(width('20 ft')), 'width 24 ft', width('24 ft'))
    const other = apply(undo(first), 'width 18 ft', width('18 ft'))
    expect(redo(other).present).toEqual(width('18 ft'))
  })

  test('undo during a gesture takes the whole gesture back', () => {
    expect(undo(live(begin(width('20 ft')), 'width 30 ft', width('30 ft'))).present).toEqual(width('20 ft'))
  })

  test('as many undos as steps lead back to the start, as many redos to the end, whatever the steps', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 4, max: 100 }), { maxLength: 30 }), (widths) => {
        const start = begin(width('3 ft'))
        const end = widths.reduce<History>(
          (history, w) => apply(history, `width ${w}`, width(`${w} ft`)),
          start,
        )
        let back = end
        for (const _ of end.past) back = undo(back)
        expect(back.present).toEqual(start.present)
        for (const _ of end.past) back = redo(back)
        expect(back.present).toEqual(end.present)
      }),
    )
  })
})
