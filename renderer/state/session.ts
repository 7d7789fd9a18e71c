import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Client } from '../../shared/contract/index.ts'
import type { DesignAnswer } from '../workers/design-answer.ts'
import { type BookLookActions, bookLookActions } from './book-look.ts'
import { CLOSED } from './closed-session.ts'
import { type CostingActions, costingActions } from './costing-actions.ts'
import { type CutListActions, cutListActions } from './cut-list-actions.ts'
import type { StartDesigner } from './designer-port.ts'
import { type DrawingActions, drawingActions } from './drawing/look-at.ts'
import { estimating } from './estimating.ts'
import { type MoveActions, moveActions } from './grips/moving.ts'
import { type GroundActions, groundActions } from './ground-actions.ts'
import { type HelpActions, helpActions } from './help-actions.ts'
import { type JobActions, jobActions } from './job-actions.ts'
import { type JobFileActions, jobFileActions } from './job-file-actions.ts'
import { type JointActions, jointActions } from './joint-actions.ts'
import { type LookActions, lookActions } from './look-actions.ts'
import { notices } from './notices.ts'
import { type PaperActions, paperActions } from './paper-actions.ts'
import { type PriceActions, priceActions } from './price-actions.ts'
import { type RackActions, rackActions } from './rack-actions.ts'
import { saving } from './saving.ts'
import { type SawDayActions, sawDayActions } from './saw-day-actions.ts'
import type { SessionParts } from './session-parts.ts'
import type { SessionState } from './session-types.ts'
import { type ShelfActions, shelfActions } from './shelf-actions.ts'
import { type SinceQuoteActions, sinceQuoteActions } from './since-quote-actions.ts'
import { type SizeGridActions, sizeGridActions } from './size-grid-actions.ts'
import { type SizingActions, sizingActions } from './sizing-actions.ts'
import { type Stating, stating } from './stating.ts'
import { tapeFilling } from './tape-filling.ts'
import { type Tasks, tasks } from './tasks.ts'
import { type WindowMemoryActions, windowMemoryActions } from './window-memory.ts'
import { type WishActions, wishActions } from './wish-actions.ts'
import { type WorkbookActions, workbookActions } from './workbook-actions.ts'

/** One open job and everything done to it. Views read its store and call its methods; nothing else changes it. */
export interface Session
  extends JobActions,
    JobFileActions,
    Stating,
    LookActions,
    DrawingActions,
    MoveActions,
    PriceActions,
    BookLookActions,
    CostingActions,
    SinceQuoteActions,
    RackActions,
    ShelfActions,
    SawDayActions,
    SizingActions,
    SizeGridActions,
    CutListActions,
    WishActions,
    JointActions,
    Pick<Tasks, 'stopTask'>,
    PaperActions,
    GroundActions,
    WindowMemoryActions,
    HelpActions,
    WorkbookActions {
  readonly store: StoreApi<SessionState>
  say(sentence: string): void
  dispose(): void
}

export function createSession(client: Client, startDesigner: StartDesigner): Session {
  const store = createStore<SessionState>(() => CLOSED)
  const get = store.getState
  const notice = notices(store)
  const set = (patch: Partial<SessionState>) => store.setState(patch)
  const work = tasks({ client, store, get, set })
  const parts: SessionParts = { client, store, get, set, watched: work.watched, say: notice.say }
  const saves = saving(parts)
  const estimates = estimating(parts)
  const tape = tapeFilling(parts)
  const designer = startDesigner(takeDesign, (message) => set({ designFailure: message }))
  const followers = { designer, estimates, saves, tape }
  const jobs = jobActions(parts, followers)
  const prices = priceActions(parts, recompute)
  const states = stating(parts, followers)
  const moves = moveActions(parts, states)
  const list = cutListActions(parts)
  const sizeGrid = sizeGridActions(parts, { restate: states.restate, stopTask: work.stopTask })
  const rack = rackActions(client, store, notice.say)
  const days = sawDayActions(parts)
  const windowMemory = windowMemoryActions(parts)
  let daysOf: string | undefined
  const stopOpening = store.subscribe(() => {
    const { open } = get()
    if (open?.id === daysOf) return
    daysOf = open?.id
    void days.recallDays()
  })

  function takeDesign(answer: DesignAnswer) {
    const { edit, open } = get()
    if (!open || answer.edit < get().designEdit) return
    if (!answer.ok) {
      if (answer.edit === edit) set({ answeredEdit: answer.edit, faults: answer.faults, designFailure: null })
      return
    }
    const { design, drawing } = answer
    set({
      design,
      drawing,
      designEdit: answer.edit,
      answeredEdit: answer.edit,
      designFailure: null,
      ...(answer.edit === edit ? { faults: [] } : {}),
    })
    tape.aim(design.job.size.width)
  }

  /** With other prices or offcuts all is computed anew; the figures shown until then are marked as stale. */
  function recompute() {
    if (!get().open) return
    estimates.measureFrom(get().estimate)
    const edit = get().edit + 1
    set({ edit, tape: { ...get().tape, key: 'out of date' }, sizeGrid: null })
    designer.design(edit, get().history.present)
    estimates.request(0)
  }

  const stopOffcuts = client.on('offcuts.changed', () => {
    void rack.listOffcuts()
    recompute()
  })

  return {
    store,
    ...jobs.actions,
    ...jobFileActions(parts, jobs.actions),
    ...states,
    ...lookActions(parts),
    ...drawingActions(parts),
    ...moves,
    ...prices.actions,
    ...bookLookActions(parts),
    ...costingActions(parts, states),
    ...sinceQuoteActions(parts),
    ...rack,
    ...shelfActions(parts, { jobs: jobs.actions, restate: states.restate }),
    ...days,
    ...sizingActions(parts),
    ...sizeGrid.actions,
    ...list,
    ...wishActions(parts),
    ...jointActions(parts),
    stopTask: work.stopTask,
    ...paperActions(parts),
    ...groundActions(parts, states),
    ...workbookActions(parts),
    ...windowMemory,
    ...helpActions(parts),
    openLast() {
      void windowMemory.recallWindow()
      void prices.read(false)
      void list.recallCutList()
      return jobs.actions.openLast()
    },
    say: notice.say,
    dispose() {
      moves.forget()
      saves.dispose()
      list.keepCutList()
      for (const part of [work, estimates, tape, jobs, prices, sizeGrid, windowMemory, notice]) part.dispose()
      stopOffcuts()
      stopOpening()
      designer.dispose()
    },
  }
}
