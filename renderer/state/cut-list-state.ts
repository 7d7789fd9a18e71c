import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import { fieldAt, readValue } from '../../core/job/index.ts'
import { fail, ok, type Result, type Ticks, ticks } from '../../core/units/index.ts'
import type { CutListInputs } from '../../shared/contract/index.ts'

/** A list that is planned by itself, apart from the deck. */
export interface CutListState extends CutListInputs {
  /** the newest answer, and the inputs that it answers */
  readonly answer: CutListAnswer | null
  readonly answered: CutListInputs | null
  readonly running: boolean
  readonly failure: string | null
}

export const NO_CUT_LIST: CutListState = {
  text: '',
  stockText: '',
  columns: null,
  stockColumns: null,
  kerf: String(fieldAt('cutting.kerf').default),
  endTrim: String(fieldAt('cutting.endTrim').default),
  answer: null,
  answered: null,
  running: false,
  failure: null,
}

/** Kerf or end trim as typed, within the bounds that a job has for it; the fault is a sentence. */
export function readSaw(path: 'cutting.kerf' | 'cutting.endTrim', text: string): Result<Ticks, string> {
  const read = readValue(fieldAt(path), text)
  if (read.ok) return ok(ticks(Number(read.value)))
  const [fault] = read.error
  return fail(`${fault?.message}; ${fault?.fix}.`)
}

/** What the program is asked for these inputs; null while a saw setting cannot be read. */
export function cutListRequest(inputs: CutListInputs): CutListRequest | null {
  const kerf = readSaw('cutting.kerf', inputs.kerf)
  const endTrim = readSaw('cutting.endTrim', inputs.endTrim)
  if (!kerf.ok || !endTrim.ok) return null
  return {
    text: inputs.text,
    stockText: inputs.stockText,
    kerf: kerf.value,
    endTrim: endTrim.value,
    ...(inputs.columns === null ? {} : { columns: inputs.columns }),
    ...(inputs.stockColumns === null ? {} : { stockColumns: inputs.stockColumns }),
  }
}

/** The inputs alone, for asking whether an answer still belongs to them. */
export function inputsOf({
  text,
  stockText,
  columns,
  stockColumns,
  kerf,
  endTrim,
}: CutListState): CutListInputs {
  return { text, stockText, columns, stockColumns, kerf, endTrim }
}

export function isFresh(state: CutListState): boolean {
  return state.answered !== null && JSON.stringify(state.answered) === JSON.stringify(inputsOf(state))
}
