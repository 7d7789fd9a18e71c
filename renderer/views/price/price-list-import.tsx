import { useEffect, useId, useMemo, useState } from 'react'
import { readDelimited } from '../../../core/cut-list/index.ts'
import { guessPriceColumns, PRICE_MEANINGS, type PriceMeaning } from '../../../core/price-list/index.ts'
import { printUnitPrice } from '../../../core/units/index.ts'
import type { Methods } from '../../../shared/contract/index.ts'
import { Message } from '../../parts/message.tsx'
import { PlainTable } from '../../parts/plain-table.tsx'
import { plural } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { ColumnsPreview } from '../columns-preview.tsx'
import type { DecodedList } from '../decode-list.ts'
import { ListFaults } from '../list-faults.tsx'
import { sourceWords } from './source-words.ts'
import './price-list-import.css'

/** Rows and columns of the list that are shown; more is counted. */
const ROWS = 6
const WIDEST = 12
/** How long typing rests before the list is read again, ms. */
const REST = 200
/** one and the same, so that nothing is drawn anew for it */
const NOBODY: readonly never[] = []

type Answer = Methods['prices.readList'][1]

/** A list before it is taken: what its columns hold, what is wrong with it, and each price that it would change. */
export function PriceListImport({ list, onDone }: { readonly list: DecodedList; onDone(): void }) {
  const session = useSession()
  const id = useId()
  const [columns, setColumns] = useState<readonly PriceMeaning[] | null>(null)
  const [date, setDate] = useState('')
  const [supplier, setSupplier] = useState('')
  const [leaveOutUnknown, setLeaveOut] = useState(false)
  const own = useJob((state) => state.prices?.book.supplier ?? '')
  const stated = useJob((state) => state.prices?.book.suppliers ?? NOBODY)
  const [chosenBeside, setBeside] = useState<boolean | null>(null)
  // one who is another supplier already is taken for one
  const named = supplier.trim()
  const beside = chosenBeside ?? (named !== own && stated.some(({ name }) => name === named))
  const [answer, setAnswer] = useState<Answer | null>(null)
  const [busy, setBusy] = useState(false)
  const request = useMemo(
    () => ({ text: list.text, columns, date: date.trim(), supplier, leaveOutUnknown, beside }),
    [list, columns, date, supplier, leaveOutUnknown, beside],
  )

  useEffect(() => {
    let current = true
    const timer = setTimeout(async () => {
      const read = await session.readPriceList(request)
      if (current && read !== null) setAnswer(read)
    }, REST)
    return () => {
      current = false
      clearTimeout(timer)
    }
  }, [session, request])

  async function take() {
    setBusy(true)
    const faults = await session.takePriceList(request)
    setBusy(false)
    if (faults === null) return
    if (faults.length === 0) onDone()
    else setAnswer({ ok: false, faults })
  }

  const faults = answer?.ok === false ? answer.faults : []
  return (
    <div className="price-list">
      {list.readAs !== null && <p className="soft">Read as {list.readAs}.</p>}
      <div className="price-list-says entries">
        <label htmlFor={`${id}-date`}>
          Prices of
          <input
            id={`${id}-date`}
            type="date"
            value={date}
            onChange={(event) => setDate(event.target.value)}
          />
        </label>
        <label htmlFor={`${id}-supplier`}>
          Supplier
          <input
            id={`${id}-supplier`}
            maxLength={200}
            list={`${id}-suppliers`}
            value={supplier}
            onChange={(event) => setSupplier(event.target.value)}
          />
          <datalist id={`${id}-suppliers`}>
            {stated.map(({ name }) => (
              <option key={name} value={name} />
            ))}
          </datalist>
        </label>
        <label className="price-list-check">
          <input
            type="checkbox"
            checked={leaveOutUnknown}
            onChange={(event) => setLeaveOut(event.target.checked)}
          />
          Leave out what the price book does not know
        </label>
        <label className="price-list-check">
          <input type="checkbox" checked={beside} onChange={(event) => setBeside(event.target.checked)} />
          Beside what others ask
        </label>
      </div>
      <Columns list={list} columns={columns} answer={answer} onColumns={setColumns} />
      {faults.length > 0 && <ListFaults faults={faults.map((fault) => ({ source: 'list', ...fault }))} />}
      {answer?.ok === true && <Changes answer={answer} />}
      <div className="price-list-end">
        <button
          type="button"
          className="button button-main"
          disabled={answer?.ok !== true || busy}
          onClick={() => void take()}
        >
          {answer?.ok === true ? `Take ${plural(answer.changes.length, 'price')}` : 'Take the prices'}
        </button>
        <button type="button" className="button" onClick={onDone}>
          Leave the prices as they are
        </button>
      </div>
      {faults.length > 0 && (
        <p className="soft">
          With anything wrong in it nothing of the list is taken. {plural(faults.length, 'thing')} to mend.
        </p>
      )}
    </div>
  )
}

function Columns({
  list,
  columns,
  answer,
  onColumns,
}: {
  readonly list: DecodedList
  readonly columns: readonly PriceMeaning[] | null
  readonly answer: Answer | null
  onColumns(columns: readonly PriceMeaning[] | null): void
}) {
  const sheet = useMemo(() => {
    const read = readDelimited(list.text)
    return read.ok ? read.value.filter(({ cells }) => cells.some((cell) => cell !== '')) : []
  }, [list])
  const found = useMemo(() => guessPriceColumns(sheet), [sheet])
  const width = Math.max(0, ...sheet.slice(0, ROWS).map(({ cells }) => cells.length))
  if (sheet.length === 0) return null
  const shown = Array.from({ length: Math.min(WIDEST, width) }, (_, index) =>
    columns === null ? (found[index] ?? 'nothing') : (columns[index] ?? 'nothing'),
  )
  const faults = answer?.ok === false ? answer.faults : []
  return (
    <ColumnsPreview
      rows={sheet.slice(0, ROWS)}
      columns={shown}
      meanings={PRICE_MEANINGS}
      caption="What each column holds; change it where it was taken wrongly."
      told={columns !== null}
      more={Math.max(0, sheet.length - ROWS)}
      wrong={new Set(faults.map(({ row, column }) => `${row}:${column}`))}
      onColumns={onColumns}
    />
  )
}

function Changes({ answer }: { readonly answer: Extract<Answer, { readonly ok: true }> }) {
  const { changes, leftOut, ignored } = answer
  return (
    <>
      {leftOut.length > 0 && (
        <Message tone="near">
          {plural(leftOut.length, 'row')} left out, of nothing in the price book:{' '}
          {leftOut.slice(0, 5).join('; ')}
          {leftOut.length > 5 && ' …'}
        </Message>
      )}
      {ignored.length > 0 && <p className="soft">Columns not read: {ignored.join(', ')}.</p>}
      <PlainTable
        className="price-list-changes"
        label="Prices that change"
        caption="Each price as it is and as it would be"
        headings={['Item', 'Now', 'List', 'Price']}
      >
        {changes.map((change) => (
          <tr key={change.row}>
            <td>{change.label}</td>
            <td>{change.before === null ? 'new' : printUnitPrice(change.before)}</td>
            <td>{printUnitPrice(change.after)}</td>
            <td>{sourceWords(change)}</td>
          </tr>
        ))}
      </PlainTable>
    </>
  )
}
