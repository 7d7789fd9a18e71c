import { ticks } from '../../core/units/index.ts'
import { NO_CUT_LIST } from './cut-list-state.ts'
import { FIRST_LOOK } from './drawing/look.ts'
import { NO_GROUND } from './ground-actions.ts'
import { NO_HELP } from './help-actions.ts'
import * as steps from './history.ts'
import { NO_PAPERS } from './papers-state.ts'
import type { SessionState } from './session-types.ts'

const EMPTY_TAPE = {
  key: '',
  from: ticks(0),
  to: ticks(0),
  rows: [],
  earlier: [],
  running: false,
  stopped: false,
  failed: null,
}

export const CLOSED: SessionState = {
  open: null,
  openFailure: null,
  jobs: null,
  refusedFile: null,
  history: steps.begin({}),
  edit: 0,
  saving: { state: 'unsaved' },
  design: null,
  drawing: null,
  designEdit: 0,
  answeredEdit: 0,
  faults: [],
  designFailure: null,
  estimate: null,
  estimateEdit: 0,
  estimateFailure: null,
  news: null,
  prices: null,
  priceFileFaults: [],
  bookLook: { part: 'boards', row: null },
  sinceQuote: null,
  tape: EMPTY_TAPE,
  sizeGrid: null,
  tasks: {},
  wishPrices: {},
  joints: {},
  drafts: {},
  cutList: NO_CUT_LIST,
  offcuts: null,
  atSaw: false,
  sawDays: {},
  papers: NO_PAPERS,
  ground: NO_GROUND,
  memory: null,
  help: NO_HELP,
  place: 'frame',
  priceView: 'estimate',
  look: FIRST_LOOK,
  held: null,
  selected: null,
  hovered: null,
  lit: [],
  litPoint: null,
  why: null,
  sought: null,
  notice: null,
  making: false,
}
