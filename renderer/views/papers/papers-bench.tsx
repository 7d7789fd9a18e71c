import { useEffect } from 'react'
import { PAPERS, SHEET_IDS, SHEET_SETS, SHEET_TITLES, USUAL_SHEETS } from '../../../core/papers/index.ts'
import { plural } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { FirmPart } from './firm-part.tsx'
import { MissingForPermit } from './missing.tsx'
import { QuotePart } from './quote-part.tsx'
import { saveOrder, savePapers, saveWorkbook } from './save-workbook.ts'

/** The scales a person asks for by name, 1 : n. */
const SCALES = [
  { value: '', label: 'as large as fits' },
  { value: '24', label: '1/2 in = 1 ft' },
  { value: '32', label: '3/8 in = 1 ft' },
  { value: '48', label: '1/4 in = 1 ft' },
  { value: '64', label: '3/16 in = 1 ft' },
  { value: '96', label: '1/8 in = 1 ft' },
  { value: '20', label: '1:20' },
  { value: '50', label: '1:50' },
  { value: '100', label: '1:100' },
] as const

const ALL_OR_NONE = [
  { label: 'All', only: USUAL_SHEETS },
  { label: 'None', only: [] },
] as const

const ORDER_FILES = [
  { kind: 'txt', label: 'text' },
  { kind: 'csv', label: 'CSV' },
] as const

/** What leaves the program: which sheets, on what paper, dated how; the firm on them; and the workbook. */
export function PapersBench() {
  const session = useSession()
  const making = useJob((state) => state.making)
  const papers = useJob((state) => state.papers)
  const isPriced = useJob((state) => state.estimate?.pricing != null)
  const { only, paper, scale, metric, date, revision, pages, busy, firm } = papers

  useEffect(() => {
    if (firm === null) void session.readFirm()
  }, [firm, session])

  return (
    <>
      <section className="group" aria-labelledby="sheets-title">
        <h2 id="sheets-title">Sheets</h2>
        <p className="paper-all">
          {ALL_OR_NONE.map(({ label, only: sheets }) => (
            <button
              key={label}
              type="button"
              className="link"
              onClick={() => session.choosePapers({ only: sheets })}
            >
              {label}
            </button>
          ))}
        </p>
        <p className="paper-all">
          <span className="soft">Only for</span>
          {SHEET_SETS.map(({ reader, sheets }) => (
            <button
              key={reader}
              type="button"
              className="link"
              aria-label={`Only the sheets for the ${reader.toLowerCase()}`}
              onClick={() => session.choosePapers({ only: sheets })}
            >
              {reader}
            </button>
          ))}
        </p>
        <fieldset className="paper-choice" aria-labelledby="sheets-title">
          {SHEET_IDS.map((id) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={only.includes(id)}
                onChange={({ target }) =>
                  session.choosePapers({
                    only: SHEET_IDS.filter((one) => (one === id ? target.checked : only.includes(one))),
                  })
                }
              />
              {SHEET_TITLES[id]}
            </label>
          ))}
        </fieldset>
        <div className="field">
          <label htmlFor="paper-size">Paper</label>
          <select
            id="paper-size"
            value={paper}
            onChange={({ target }) => {
              const chosen = PAPERS.find((one) => one === target.value)
              if (chosen) session.choosePapers({ paper: chosen })
            }}
          >
            <option value="letter">Letter, 8 1/2 × 11 in</option>
            <option value="tabloid">Tabloid, 11 × 17 in</option>
            <option value="a4">A4</option>
            <option value="a3">A3</option>
          </select>
        </div>
        <div className="field">
          <label htmlFor="paper-units">Lengths</label>
          <select
            id="paper-units"
            value={metric ? 'metric' : 'feet'}
            onChange={({ target }) => session.choosePapers({ metric: target.value === 'metric' })}
          >
            <option value="feet">feet and inches</option>
            <option value="metric">millimetres</option>
          </select>
        </div>
        <div className="field">
          <label htmlFor="paper-scale">Scale of drawings</label>
          <select
            id="paper-scale"
            value={scale === null ? '' : `${scale}`}
            onChange={({ target }) =>
              session.choosePapers({ scale: target.value === '' ? null : Number(target.value) })
            }
          >
            {SCALES.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </div>
        <div className="field">
          <label htmlFor="paper-date">Date on them</label>
          <input
            id="paper-date"
            type="date"
            value={date}
            onChange={({ target }) => session.choosePapers({ date: target.value })}
          />
        </div>
        <div className="field">
          <label htmlFor="paper-revision">Revision</label>
          <input
            id="paper-revision"
            type="text"
            maxLength={40}
            value={revision}
            placeholder="by the job’s state"
            onChange={({ target }) => session.choosePapers({ revision: target.value })}
          />
        </div>
        <MissingForPermit />
        <button
          type="button"
          className="button button-main"
          disabled={busy === 'file' || only.length === 0 || !isPriced}
          onClick={() => void savePapers(session)}
        >
          {busy === 'file' ? 'Making the PDF' : 'Save as PDF'}
        </button>
        <p className="soft">
          {plural(pages.length, 'page')}. Print at 100 %, not fitted to the page: then the scales are true.
        </p>
      </section>
      <section className="group">
        <h2>Order for the yard</h2>
        <p>As text, to paste into a message, or as a table for a spreadsheet; one for each supplier.</p>
        <p className="paper-all">
          {ORDER_FILES.map(({ kind, label }) => (
            <button
              key={kind}
              type="button"
              className="button"
              disabled={!isPriced}
              onClick={() => saveOrder(session, kind)}
            >
              Save it as {label}
            </button>
          ))}
        </p>
      </section>
      <section className="group">
        <h2>Workbook</h2>
        <p>
          Summary, order for the yard, cutting plan, members, hardware and concrete, ground, hours, cost,
          checks, joist marks and pieces by place, with live formulas: a changed price changes the total.
        </p>
        <button type="button" className="button" disabled={making} onClick={() => saveWorkbook(session)}>
          {making ? 'Making the workbook' : 'Save the workbook'}
        </button>
      </section>
      <QuotePart />
      {firm !== null && <FirmPart firm={firm} />}
      <p className="caution">
        <span aria-hidden="true">▲</span> Not a permit and not engineering. Local code and the building
        official govern; what lies outside the tables needs a licensed professional. Call before you dig.
      </p>
    </>
  )
}
