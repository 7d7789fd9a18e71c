import { useJob, useSession } from '../../state/session-context.ts'
import { saveWorkbook } from './save-workbook.ts'

/** What leaves the program: the workbook and the printed plan. */
export function PapersBench() {
  const session = useSession()
  const making = useJob((state) => state.making)
  const pricing = useJob((state) => state.estimate?.pricing ?? null)
  return (
    <>
      <section className="group">
        <h2>Workbook</h2>
        <p>
          Summary, order for the yard, cutting plan, members, hardware and concrete, hours, cost and checks,
          with live formulas: a changed price changes the total.
        </p>
        <button
          type="button"
          className="button button-main"
          disabled={making}
          onClick={() => saveWorkbook(session)}
        >
          {making ? 'Making the workbook' : 'Save the workbook'}
        </button>
        {pricing && (
          <p className="soft">
            Prices of {pricing.bookName}, {pricing.bookDate}.
          </p>
        )}
      </section>
      <section className="group">
        <h2>Framing plan</h2>
        <p>One sheet, black on white, as it is drawn here.</p>
        <button type="button" className="button" onClick={() => window.print()}>
          Print the framing plan
        </button>
      </section>
      <p className="caution">
        <span aria-hidden="true">▲</span> Not a permit and not engineering. Local code and the building
        official govern; what lies outside the tables needs a licensed professional. Call before you dig.
      </p>
    </>
  )
}
