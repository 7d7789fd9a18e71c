import { fieldAt } from '../../../core/job/index.ts'
import { TextField } from '../../parts/text-field.tsx'
import { isFresh, NO_CUT_LIST, readSaw } from '../../state/cut-list-state.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { saveCsv, saveListWorkbook } from './save-list.ts'

/** How the saw cuts the list, and what is done with it. */
export function CutListBench() {
  const session = useSession()
  const state = useJob(({ cutList }) => cutList)
  const done = state.answer?.ok === true && isFresh(state) ? state.answer.result : null
  const ready =
    state.text.trim() !== '' &&
    readSaw('cutting.kerf', state.kerf).ok &&
    readSaw('cutting.endTrim', state.endTrim).ok
  return (
    <>
      <section className="group">
        <h2>Saw</h2>
        <SawField path="cutting.kerf" name="kerf" />
        <SawField path="cutting.endTrim" name="endTrim" />
      </section>
      <section className="group">
        <h2>Plan</h2>
        <button
          type="button"
          className="button button-main"
          disabled={!ready}
          onClick={() => void session.planCutList()}
        >
          {state.running ? 'Planning; start again' : 'Plan the cuts'}
        </button>
        <p className="soft">
          The least that any order of these lengths can cost, joints apart: pieces of a list are never
          jointed.
        </p>
        <div className="cut-list-saves">
          <button
            type="button"
            className="button"
            disabled={done === null || done.plans.length === 0}
            onClick={() => done && saveCsv(session, done)}
          >
            Save order and pieces as CSV
          </button>
          <button
            type="button"
            className="button"
            disabled={done === null || done.plans.length === 0}
            onClick={() => void saveListWorkbook(session)}
          >
            Save the workbook: plan, order, cutting sheet
          </button>
        </div>
        <p className="soft">
          In the CSV file, text that a spreadsheet would take for a formula, starting with = + - or @, gets an
          apostrophe before it.
        </p>
      </section>
    </>
  )
}

function SawField({
  path,
  name,
}: {
  readonly path: 'cutting.kerf' | 'cutting.endTrim'
  readonly name: 'kerf' | 'endTrim'
}) {
  const session = useSession()
  const text = useJob(({ cutList }) => cutList[name])
  const spec = fieldAt(path)
  const read = readSaw(path, text)
  const back = () => session.editCutList({ [name]: NO_CUT_LIST[name] })
  return (
    <TextField
      label={spec.label}
      text={text}
      stated={text !== NO_CUT_LIST[name]}
      fault={read.ok ? null : read.error}
      help={spec.help}
      basis={spec.basis}
      onText={(typed) => session.editCutList({ [name]: typed })}
      onCommit={() => undefined}
      onGiveUp={back}
      onReset={back}
    />
  )
}
