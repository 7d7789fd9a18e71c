import { useMemo, useState } from 'react'
import { type PriceBook, suppliersOf } from '../../../core/pricing/index.ts'
import { Message } from '../../parts/message.tsx'
import { type Sorting, sortedBy } from '../../parts/sorting.ts'
import { BOOK_PARTS } from '../../state/book-look.ts'
import { plural } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { sourceWords } from '../price/source-words.ts'
import { BookGrid } from './book-grid.tsx'
import { bookTable, lineAt, linesWith, PART_NAMES } from './book-table.ts'
import './price-book.css'

/** The whole price book, part by part, each as a table to be typed over. */
export function PriceBookSheet() {
  const prices = useJob((state) => state.prices)
  return (
    <section className="sheet-pane book-sheet" aria-label="Prices and rates" tabIndex={0}>
      <h2>Prices and rates</h2>
      {prices === null ? (
        <p className="soft">Reading the prices.</p>
      ) : (
        <>
          <p className="soft">
            {prices.book.name}, of {prices.book.date}. Every change counts in all jobs at once; quotes that
            were sent stay as they were. Sales tax, overhead and margin belong to each job and stand under
            Price.
          </p>
          {prices.stale.count > 0 && (
            <Message tone="near">
              {plural(prices.stale.count, 'price', 'prices')} of {prices.stale.of}{' '}
              {prices.stale.count === 1 ? 'is' : 'are'} older than 60 days, the oldest{' '}
              {sourceWords(prices.stale.oldest)}: ask again before you quote.
            </Message>
          )}
          <Parts book={prices.book} />
        </>
      )}
    </section>
  )
}

function Parts({ book }: { readonly book: PriceBook }) {
  const session = useSession()
  const { part, row } = useJob((state) => state.bookLook)
  const [sought, setSought] = useState('')
  const [supplier, setSupplier] = useState('')
  const [sorting, setSorting] = useState<Sorting>(null)
  const table = useMemo(() => bookTable(book, part), [book, part])
  const suppliers = suppliersOf(book)
  const priced = part === 'boards' || part === 'goods'
  const found = linesWith(table.lines, sought, priced && suppliers.includes(supplier) ? supplier : '')
  const lines =
    sorting === null ? found : sortedBy(found, ({ cells }) => cells[sorting.column] ?? '', sorting.down)
  return (
    <>
      <div className="book-parts" role="group" aria-label="Parts of the price book">
        {BOOK_PARTS.map((one) => (
          <button
            key={one}
            type="button"
            className="button"
            aria-pressed={one === part}
            onClick={() => {
              setSorting(null)
              session.lookAtBook(one)
            }}
          >
            {PART_NAMES[one]}
          </button>
        ))}
      </div>
      <div className="book-tools entries">
        <label>
          Find
          <input value={sought} maxLength={100} onChange={(event) => setSought(event.target.value)} />
        </label>
        {priced && suppliers.length > 1 && (
          <label>
            Of
            <select value={supplier} onChange={(event) => setSupplier(event.target.value)}>
              <option value="">all suppliers</option>
              {suppliers.map((name) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        )}
        <span className="soft" role="status">
          {plural(lines.length, 'row', 'rows')}
        </span>
      </div>
      <p id="book-keys" className="soft book-keys">
        Choose a cell and type. Enter takes it, Escape leaves it. Rows and blocks are copied and pasted as a
        spreadsheet has them.
      </p>
      {lines.length === 0 ? (
        <p className="soft">
          {sought.trim() === '' ? 'Nothing stands here.' : `Nothing here holds “${sought}”.`}
        </p>
      ) : (
        <BookGrid
          key={part}
          name={PART_NAMES[part]}
          table={table}
          lines={lines}
          chosen={lineAt(lines, row)?.key ?? null}
          sorting={sorting}
          onSort={setSorting}
          onChoose={(line) => session.standOn(line.row)}
        />
      )}
    </>
  )
}
