import { createStore, type StoreApi } from 'zustand/vanilla'
import type { CompareRow } from '../../core/compare/index.ts'
import {
  clearField,
  type FieldPath,
  findField,
  type JobStatement,
  type JsonValue,
  setField,
} from '../../core/job/index.ts'
import { type Ticks, ticks } from '../../core/units/index.ts'
import type { Client, StoredJob } from '../../shared/contract/index.ts'
import { codeOf, sentenceOf } from '../client/call-error.ts'
import type { DesignAnswer } from '../workers/design-answer.ts'
import { autosave } from './autosave.ts'
import { type CutListInputs, cutListRequest, inputsOf, NO_CUT_LIST } from './cut-list-state.ts'
import type { StartDesigner } from './designer-port.ts'
import type { History } from './history.ts'
import * as steps from './history.ts'
import { latestOnly } from './latest.ts'
import { newsBetween } from './news.ts'
import { placeOf } from './places.ts'
import { type RackActions, rackActions } from './rack-actions.ts'
import { type SawDayActions, sawDayActions } from './saw-day-actions.ts'
import type { Place, SessionState, Why } from './session-types.ts'
import { type SizingActions, sizingActions } from './sizing-actions.ts'
import { TAPE_LENGTH, TAPE_STEP, tapeKey, tapeStart } from './tape-range.ts'

/** How long the differences of an edit stay on the sill, and how long a notice stands. */
const NEWS_FOR = 15_000
const NOTICE_FOR = 8_000
/** a save that failed is tried again after so long */
const RETRY_AFTER = 3_000
/** the tape is filled once typing has paused for so long */
const TAPE_AFTER = 250
/** moves of a drag within this time are estimated as one, ms */
const GATHER = 20
/** what was stopped for another window is asked for again after so long, ms */
const ASK_AGAIN = 600
const ASK_TAPE_AGAIN = 4_000

const EMPTY_TAPE = {
  key: '',
  from: ticks(0),
  to: ticks(0),
  rows: [],
  earlier: [],
  running: false,
  failed: null,
}

export const CLOSED: SessionState = {
  open: null,
  openFailure: null,
  jobs: null,
  history: steps.begin({}),
  edit: 0,
  saving: { state: 'unsaved' },
  design: null,
  drawing: null,
  designEdit: 0,
  faults: [],
  designFailure: null,
  estimate: null,
  estimateEdit: 0,
  estimateFailure: null,
  news: null,
  prices: null,
  priceFileFaults: [],
  tape: EMPTY_TAPE,
  drafts: {},
  cutList: NO_CUT_LIST,
  offcuts: null,
  atSaw: false,
  sawDays: {},
  place: 'frame',
  selected: null,
  hovered: null,
  why: null,
  sought: null,
  notice: null,
  making: false,
}

/** One open job and everything done to it. Views read its store and call its methods; nothing else changes it. */
export interface Session extends RackActions, SawDayActions, SizingActions {
  readonly store: StoreApi<SessionState>
  openLast(): Promise<void>
  openJob(id: string): Promise<void>
  createJob(statement: JobStatement): Promise<void>
  listJobs(): Promise<void>
  /** states a field as one step */
  state(path: FieldPath, value: JsonValue | undefined, label: string): void
  /** states a field within a gesture: shown at once, one step when it ends */
  stateLive(path: FieldPath, value: JsonValue, label: string): void
  endGesture(): void
  giveUpGesture(): void
  undo(): void
  redo(): void
  saveNow(): void
  /** after a conflict: drop what was done here, or save it over the other */
  takeTheirs(): Promise<void>
  keepMine(): Promise<void>
  draft(path: FieldPath, text: string, fault: string | null): void
  dropDraft(path: FieldPath): void
  go(place: Place): void
  select(id: string | null): void
  hover(id: string | null): void
  explain(why: Why | null): void
  /** goes to the work place of a field and brings it into view */
  seek(path: FieldPath | null): void
  say(sentence: string): void
  /** makes the workbook and gives it with its name, or null where that failed (and was said) */
  makeWorkbook(): Promise<{ readonly fileName: string; readonly base64: string } | null>
  /** has every estimate use the prices of this file; with any fault in it nothing changes and all are told */
  takePrices(text: string): Promise<void>
  backToSamplePrices(): Promise<void>
  /** the prices in use as a file, or null where that failed (and was said) */
  priceFile(): Promise<{ readonly fileName: string; readonly text: string } | null>
  /** changes the cut list's inputs; its last answer stays until a new one is there */
  editCutList(patch: Partial<CutListInputs>): void
  planCutList(): Promise<void>
  dispose(): void
}

export function createSession(client: Client, startDesigner: StartDesigner): Session {
  const store = createStore<SessionState>(() => CLOSED)
  const get = store.getState
  const set = (patch: Partial<SessionState>) => store.setState(patch)
  const saver = autosave(() => requestSave(undefined))
  const designer = startDesigner(takeDesign, (message) => set({ designFailure: message }))
  /** the estimate shown before the present step: what the news is measured against */
  let baseline = get().estimate
  let newsTimer: ReturnType<typeof setTimeout> | undefined
  let noticeTimer: ReturnType<typeof setTimeout> | undefined
  let estimateTimer: ReturnType<typeof setTimeout> | undefined
  let retryTimer: ReturnType<typeof setTimeout> | undefined
  let tapeTimer: ReturnType<typeof setTimeout> | undefined
  let tapeEdit = 0
  let cutListRun = 0
  let savedStatement: JobStatement | null = null

  function takeDesign(answer: DesignAnswer) {
    const { edit, open } = get()
    if (!open || answer.edit < get().designEdit) return
    if (!answer.ok) {
      if (answer.edit === edit) set({ faults: answer.faults, designFailure: null })
      return
    }
    const { design, drawing } = answer
    set({
      design,
      drawing,
      designEdit: answer.edit,
      designFailure: null,
      ...(answer.edit === edit ? { faults: [] } : {}),
    })
    aimTape(design.job.size.width)
  }

  async function runEstimate() {
    const { edit, open, history } = get()
    try {
      const answer = await client.call('estimate.run', { edit, statement: history.present, jobId: open?.id })
      if (answer.edit !== get().edit) return
      const { result } = answer
      if (!result.ok) {
        set({ faults: result.faults, estimateFailure: null })
        return
      }
      const news = newsBetween(baseline, result.estimate)
      set({ estimate: result.estimate, estimateEdit: edit, estimateFailure: null, news })
      clearTimeout(newsTimer)
      if (news) newsTimer = setTimeout(() => set({ news: null }), NEWS_FOR)
    } catch (error) {
      if (edit !== get().edit) return
      // stopped for another window's edit: this window's is still wanted
      if (codeOf(error) === 'stopped') requestEstimate(ASK_AGAIN)
      else set({ estimateFailure: sentenceOf(error) })
    }
  }

  /** The machine works on the newest of what it is asked; a short wait gathers the moves of one drag. */
  function requestEstimate(wait: number = GATHER) {
    clearTimeout(estimateTimer)
    estimateTimer = setTimeout(runEstimate, wait)
  }

  const requestSave = latestOnly(async (_: undefined) => {
    const { open, history } = get()
    const statement = history.present
    if (!open || statement === savedStatement || get().saving.state === 'conflict') return
    const label = history.gesture?.label ?? history.past.at(-1)?.label ?? 'change'
    try {
      const saved = await client.call('jobs.save', { id: open.id, revision: open.revision, statement, label })
      if (get().open?.id !== open.id) return
      savedStatement = statement
      set({ open: { ...open, revision: saved.revision } })
      if (get().history.present === statement) set({ saving: { state: 'saved', at: saved.savedAt } })
      else saver.touch()
    } catch (error) {
      const message = sentenceOf(error)
      if (codeOf(error) !== 'conflict') retryTimer = setTimeout(() => requestSave(undefined), RETRY_AFTER)
      set({
        saving: codeOf(error) === 'conflict' ? { state: 'conflict', message } : { state: 'failed', message },
      })
    }
  })

  function turnTo(history: History) {
    const before = get().history
    if (history.present === before.present) {
      set({ history })
      return
    }
    if (!before.gesture) baseline = get().estimate
    const edit = get().edit + 1
    const saving = get().saving.state === 'conflict' ? get().saving : ({ state: 'unsaved' } as const)
    set({ history, edit, saving })
    designer.design(edit, history.present)
    requestEstimate()
    saver.touch()
  }

  /** Sets the tape to the width and has missing rows computed behind the edit. */
  function aimTape(width: Ticks) {
    const { tape, history } = get()
    const key = tapeKey(history.present)
    const held = history.gesture !== null && width >= tape.from && width <= tape.to
    const from = held ? tape.from : tapeStart(width, tape.key === '' ? null : tape.from)
    if (key === tape.key && from === tape.from) return
    const kept = key === tape.key ? tape.rows : []
    const earlier = tape.rows.length > tape.earlier.length / 2 ? tape.rows : tape.earlier
    set({
      tape: { key, from, to: ticks(from + TAPE_LENGTH), rows: kept, earlier, running: true, failed: null },
    })
    clearTimeout(tapeTimer)
    tapeTimer = setTimeout(fillTape, TAPE_AFTER)
  }

  async function fillTape() {
    const { tape, open, history, edit } = get()
    tapeEdit = edit
    try {
      const { complete } = await client.call('compare.run', {
        edit,
        statement: history.present,
        jobId: open?.id,
        from: tape.from,
        to: tape.to,
        step: TAPE_STEP,
      })
      if (tapeEdit !== edit) return
      if (complete) set({ tape: { ...get().tape, earlier: [], running: false } })
      else {
        clearTimeout(tapeTimer)
        tapeTimer = setTimeout(fillTape, ASK_TAPE_AGAIN)
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

  function show(job: StoredJob) {
    clearTimeout(newsTimer)
    clearTimeout(tapeTimer)
    baseline = null
    savedStatement = job.statement
    const edit = get().edit + 1
    set({
      ...CLOSED,
      jobs: get().jobs,
      prices: get().prices,
      offcuts: get().offcuts,
      place: get().place,
      ...(get().open?.id === job.id ? { atSaw: get().atSaw, sawDays: get().sawDays } : {}),
      edit,
      open: { id: job.id, revision: job.revision, recovered: job.recovered },
      history: steps.begin(job.statement),
      saving: { state: 'saved', at: job.savedAt },
    })
    designer.design(edit, job.statement)
    requestEstimate(0)
  }

  async function openBy(read: () => Promise<StoredJob>) {
    saver.flush()
    try {
      show(await read())
    } catch (error) {
      if (get().open) say(sentenceOf(error))
      else set({ openFailure: sentenceOf(error) })
    }
  }

  function say(sentence: string) {
    set({ notice: sentence })
    clearTimeout(noticeTimer)
    noticeTimer = setTimeout(() => set({ notice: null }), NOTICE_FOR)
  }

  /** With other prices or offcuts all is computed anew; the figures shown until then are marked as stale. */
  function recompute() {
    if (!get().open) return
    baseline = get().estimate
    const edit = get().edit + 1
    set({ edit, tape: { ...get().tape, key: 'out of date' } })
    designer.design(edit, get().history.present)
    requestEstimate(0)
  }

  async function readPrices(changed: boolean) {
    try {
      const prices = await client.call('prices.current', {})
      set({ prices })
      if (changed) recompute()
    } catch (error) {
      say(sentenceOf(error))
    }
  }

  const rack = rackActions(client, store, say)
  const stopOffcuts = client.on('offcuts.changed', () => {
    void rack.listOffcuts()
    recompute()
  })
  const stopPrices = client.on('prices.changed', () => void readPrices(true))
  const stopRows = client.on('compare.row', ({ edit, row }) => takeRow(edit, row))
  const stopChanges = client.on('jobs.changed', ({ id, revision }) => {
    const { open, saving } = get()
    if (open?.id !== id || revision <= open.revision) return
    if (saving.state !== 'saved') return
    void openBy(() => client.call('jobs.open', { id }))
  })

  return {
    store,
    ...rack,
    ...sawDayActions(client, store),
    ...sizingActions(client, store),
    openLast() {
      void readPrices(false)
      return openBy(() => client.call('jobs.last', {}))
    },
    openJob: (id) => openBy(() => client.call('jobs.open', { id })),
    createJob: (statement) => openBy(() => client.call('jobs.create', { statement })),
    async listJobs() {
      try {
        set({ jobs: await client.call('jobs.list', {}) })
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    state(path, value, label) {
      const settled = steps.commit(get().history)
      const { present } = settled
      turnTo(
        steps.apply(
          settled,
          label,
          value === undefined ? clearField(present, path) : setField(present, path, value),
        ),
      )
    },
    stateLive(path, value, label) {
      turnTo(steps.live(get().history, label, setField(get().history.present, path, value)))
    },
    endGesture() {
      if (!get().history.gesture) return
      turnTo(steps.commit(get().history))
      const { design } = get()
      if (design) aimTape(design.job.size.width)
    },
    giveUpGesture: () => turnTo(steps.giveUp(get().history)),
    undo() {
      const step = steps.commit(get().history).past.at(-1)
      set({ drafts: {} })
      turnTo(steps.undo(get().history))
      if (step) say(`Undone: ${step.label}`)
    },
    redo() {
      const [step] = get().history.future
      set({ drafts: {} })
      turnTo(steps.redo(get().history))
      if (step) say(`Redone: ${step.label}`)
    },
    saveNow() {
      set({ saving: get().saving.state === 'failed' ? { state: 'unsaved' } : get().saving })
      saver.flush()
      requestSave(undefined)
    },
    async takeTheirs() {
      const { open } = get()
      if (open) await openBy(() => client.call('jobs.open', { id: open.id }))
    },
    async keepMine() {
      const { open } = get()
      if (!open) return
      try {
        const theirs = await client.call('jobs.open', { id: open.id })
        set({ open: { ...open, revision: theirs.revision }, saving: { state: 'unsaved' } })
        requestSave(undefined)
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    draft: (path, text, fault) => set({ drafts: { ...get().drafts, [path]: { text, fault } } }),
    dropDraft(path) {
      const { [path]: dropped, ...drafts } = get().drafts
      if (dropped) set({ drafts })
    },
    go: (place) => set({ place, why: null }),
    select: (selected) => set({ selected, why: null }),
    hover(hovered) {
      if (get().hovered !== hovered) set({ hovered })
    },
    explain: (why) => set({ why }),
    seek(sought) {
      const field = sought === null ? undefined : findField(sought)
      set({ sought, ...(field ? { place: placeOf(field.section), why: null } : {}) })
    },
    say,
    editCutList(patch) {
      set({ cutList: { ...get().cutList, ...patch } })
    },
    async planCutList() {
      const answered = inputsOf(get().cutList)
      const request = cutListRequest(answered)
      if (request === null) return
      cutListRun += 1
      const run = cutListRun
      // an answer that comes after a newer plan was asked for is dropped
      const settle = (patch: Partial<SessionState['cutList']>) => {
        if (run === cutListRun) set({ cutList: { ...get().cutList, running: false, ...patch } })
      }
      set({ cutList: { ...get().cutList, running: true, failure: null } })
      try {
        settle({ answer: await client.call('cutlist.run', request), answered })
      } catch (error) {
        settle({ failure: sentenceOf(error) })
      }
    },
    async takePrices(text) {
      try {
        const taken = await client.call('prices.import', { text })
        set({ priceFileFaults: taken.ok ? [] : taken.faults })
        if (taken.ok) say(`Prices taken: ${taken.prices.book.name}, ${taken.prices.book.date}`)
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    async backToSamplePrices() {
      try {
        await client.call('prices.useSample', {})
        set({ priceFileFaults: [] })
        say('The sample prices are used again')
      } catch (error) {
        say(sentenceOf(error))
      }
    },
    async priceFile() {
      try {
        return await client.call('prices.export', {})
      } catch (error) {
        say(sentenceOf(error))
        return null
      }
    },
    async makeWorkbook() {
      set({ making: true })
      try {
        return await client.call('workbook.make', {
          statement: get().history.present,
          jobId: get().open?.id,
        })
      } catch (error) {
        say(sentenceOf(error))
        return null
      } finally {
        set({ making: false })
      }
    },
    dispose() {
      saver.flush()
      stopRows()
      stopOffcuts()
      stopPrices()
      stopChanges()
      designer.dispose()
      for (const timer of [newsTimer, noticeTimer, tapeTimer, retryTimer, estimateTimer]) clearTimeout(timer)
    },
  }
}
