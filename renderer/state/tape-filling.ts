import type { CompareRow } from '../../core/compare/index.ts'
import { type Ticks, ticks } from '../../core/units/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'
import { TAPE_LENGTH, TAPE_STEP, tapeKey, tapeStart } from './tape-range.ts'

/** the tape is filled once typing has paused for so long */
const TAPE_AFTER = 250
/** the number of no edit: what still comes is of a deck that is left behind */
const NO_EDIT = -1
/** what was stopped for another window is asked for again after so long, ms */
const ASK_AGAIN = 4_000

export interface TapeFilling {
  /** Sets the tape to the width and has missing rows computed behind the edit. */
  aim(width: Ticks): void
  /** what is on the tape is of another job: nothing more is asked for it */
  forget(): void
  dispose(): void
}

/** Compares the widths on the tape behind the edits. */
export function tapeFilling({ client, get, set, watched }: SessionParts): TapeFilling {
  let timer: ReturnType<typeof setTimeout> | undefined
  let tapeEdit = 0

  async function fill() {
    const { tape, open, history, edit } = get()
    tapeEdit = edit
    try {
      let stopping = false
      const { complete } = await watched('widths', async (task) => {
        const answer = await client.call('compare.run', {
          edit,
          statement: history.present,
          jobId: open?.id,
          task,
          from: tape.from,
          to: tape.to,
          step: TAPE_STEP,
        })
        stopping = get().tasks.widths?.task === task && get().tasks.widths?.stopping === true
        return answer
      })
      if (tapeEdit !== edit) return
      if (stopping) set({ tape: { ...get().tape, earlier: [], running: false, stopped: true } })
      else if (complete) set({ tape: { ...get().tape, earlier: [], running: false } })
      else {
        clearTimeout(timer)
        timer = setTimeout(fill, ASK_AGAIN)
      }
    } catch (error) {
      if (tapeEdit === edit) set({ tape: { ...get().tape, running: false, failed: sentenceOf(error) } })
    }
  }

  function takeRow(edit: number, row: CompareRow) {
    const { tape } = get()
    if (edit !== tapeEdit) return
    const rows = [...tape.rows.filter((each) => each.width !== row.width), row].sort(
      (a, b) => a.width - b.width,
    )
    set({ tape: { ...tape, rows } })
  }

  /** Widths of the deck as it was are not worked out beside the edits that follow: these want the machine. */
  function leaveBehind() {
    tapeEdit = NO_EDIT
    const running = get().tasks.widths
    if (running === undefined) return
    client.call('work.stop', { task: running.task }).catch(() => {
      // it has ended meanwhile
    })
  }

  const stopRows = client.on('compare.row', ({ edit, row }) => takeRow(edit, row))

  return {
    aim(width) {
      const { tape, history } = get()
      const key = tapeKey(history.present)
      const held = history.gesture !== null && width >= tape.from && width <= tape.to
      const from = held ? tape.from : tapeStart(width, tape.key === '' ? null : tape.from)
      if (key === tape.key && from === tape.from) return
      if (key !== tape.key) leaveBehind()
      const kept = key === tape.key ? tape.rows : []
      const earlier = tape.rows.length > tape.earlier.length / 2 ? tape.rows : tape.earlier
      set({
        tape: {
          key,
          from,
          to: ticks(from + TAPE_LENGTH),
          rows: kept,
          earlier,
          running: true,
          stopped: false,
          failed: null,
        },
      })
      clearTimeout(timer)
      timer = setTimeout(fill, TAPE_AFTER)
    },
    forget: () => clearTimeout(timer),
    dispose() {
      stopRows()
      clearTimeout(timer)
    },
  }
}
