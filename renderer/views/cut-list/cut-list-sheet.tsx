import { Message } from '../../parts/message.tsx'
import { isFresh } from '../../state/cut-list-state.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { Working } from '../working/working.tsx'
import { ListResult } from './list-result.tsx'
import { ListSource } from './list-source.tsx'
import './cut-list.css'

const LIST_HINT = `Paste cells or CSV here, such as
Qty, Length, Mark, Product
4, 12'-6", J1, 2x10
10, 3 ft, B, 2x6`

const STOCK_HINT = `Length, Price, Supply
12 ft, 9.50,
16 ft, 12.90, 8`

/** Any list of pieces, planned without a deck: the list, the stock where it is not the price book's, the result. */
export function CutListSheet() {
  const session = useSession()
  const state = useJob(({ cutList }) => cutList)
  const fresh = isFresh(state)
  const faults = fresh && state.answer?.ok === false ? state.answer.faults : []
  return (
    <section className="sheet-pane cut-list" aria-label="Cut list">
      <h2>Cut list</h2>
      <p className="soft">
        Pieces of any job, from a spreadsheet or a CSV file. Lengths are feet and inches; bare numbers are
        inches, or feet under “Length (ft)”. Nothing here changes the deck.
      </p>
      <div className="cut-list-inputs">
        <ListSource
          source="list"
          label="Pieces"
          hint={LIST_HINT}
          text={state.text}
          columns={state.columns}
          faults={faults.filter(({ source }) => source === 'list')}
          onText={(text) => session.editCutList({ text })}
          onColumns={(columns) => session.editCutList({ columns })}
        />
        <ListSource
          source="stock"
          label="Stock, where it is not the price book’s"
          hint={STOCK_HINT}
          text={state.stockText}
          columns={state.stockColumns}
          faults={faults.filter(({ source }) => source === 'stock')}
          onText={(stockText) => session.editCutList({ stockText })}
          onColumns={(stockColumns) => session.editCutList({ stockColumns })}
        />
      </div>
      {state.failure !== null && (
        <Message tone="fails" action={{ label: 'Try again', run: () => void session.planCutList() }}>
          {state.failure}
        </Message>
      )}
      <div aria-busy={state.running} className={fresh || state.answer === null ? '' : 'is-stale'}>
        {state.running && <Working kind="cut list" what="Planning the cuts." />}
        {state.answer?.ok === true && (
          <>
            {!fresh && !state.running && (
              <Message tone="near" action={{ label: 'Plan again', run: () => void session.planCutList() }}>
                The list has changed since this plan.
              </Message>
            )}
            <ListResult result={state.answer.result} />
          </>
        )}
      </div>
    </section>
  )
}
