import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply, begin, type History, redo, undo } from '../../../renderer/state/history.ts'
import { historyOf, NO_TIMELINE, timelineChange } from '../../../renderer/state/timeline.ts'
import type { Timeline, TimelineChange } from '../../../shared/contract/index.ts'

const EMPTY: Timeline = { first: 0, states: [], labels: [], at: 0 }

/** What a store does with a change, in the plainest way. */
function stored(timeline: Timeline, change: TimelineChange): Timeline {
  const all = timeline.states.map((statement, n) => ({ label: timeline.labels[n - 1] ?? '', statement }))
  const kept = [...all.slice(0, change.keep - timeline.first), ...change.add]
  return {
    first: timeline.first,
    states: kept.map((one) => one.statement),
    labels: kept.slice(1).map((one) => one.label),
    at: change.at - timeline.first,
  }
}

const copied = <T>(value: T): T => JSON.parse(JSON.stringify(value))

describe('the steps of a job over a restart', () => {
  test('any edits, undos, redos and saves come back as they were left', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('edit', 'undo', 'redo', 'save', 'restart'), { maxLength: 40 }),
        (deeds) => {
          let history: History = begin({ n: 0 })
          let saved = NO_TIMELINE
          let disk: Timeline = EMPTY
          let n = 0
          const save = () => {
            const change = timelineChange(saved, history)
            if (!change) return
            disk = stored(disk, change.change)
            saved = change.saved
          }
          for (const deed of deeds) {
            if (deed === 'edit') {
              n += 1
              history = apply(history, `step ${n}`, { n })
            } else if (deed === 'undo') history = undo(history)
            else if (deed === 'redo') history = redo(history)
            else if (deed === 'save') save()
            else {
              save()
              const opened = historyOf(copied(history.present), copied(disk))
              expect(opened.history).toEqual(history)
              history = opened.history
              saved = opened.saved
              expect(timelineChange(saved, history)).toBe(null)
            }
          }
        },
      ),
    )
  })

  test('a change that was never ended is one more step', () => {
    const disk: Timeline = { first: 0, states: [{ n: 0 }, { n: 1 }, { n: 2 }], labels: ['a', 'b'], at: 1 }
    const { history, saved } = historyOf({ n: 7 }, disk)
    expect(undo(history).present).toEqual({ n: 1 })
    expect(history.future).toEqual([])
    expect(timelineChange(saved, history)?.change).toEqual({
      keep: 2,
      add: [{ label: 'the last change', statement: { n: 7 } }],
      at: 2,
    })
  })

  test('places go on from the oldest step that is still kept', () => {
    const disk: Timeline = { first: 40, states: [{ n: 0 }, { n: 1 }], labels: ['a'], at: 1 }
    const { history, saved } = historyOf({ n: 1 }, disk)
    expect(timelineChange(saved, apply(history, 'b', { n: 2 }))?.change).toEqual({
      keep: 42,
      add: [{ label: 'b', statement: { n: 2 } }],
      at: 42,
    })
    expect(timelineChange(saved, undo(history))?.change).toEqual({ keep: 42, add: [], at: 40 })
  })
})
