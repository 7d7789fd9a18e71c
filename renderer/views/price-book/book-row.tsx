import { useMemo } from 'react'
import { type PriceBook, productKey, productName } from '../../../core/pricing/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { AddGood, AddLength, AddPrice, AddProduct, AddSupplier } from './add-forms.tsx'
import { sentence } from './book-grid.tsx'
import { type BookLine, bookTable, lineAt } from './book-table.ts'

/** Beside the table: what can be added to the row in which one stands, and to the part of the book that is shown. */
export function BookRowPart() {
  const book = useJob((state) => state.prices?.book ?? null)
  const { part, row } = useJob((state) => state.bookLook)
  const line = useMemo(
    () => (book === null ? null : lineAt(bookTable(book, part).lines, row)),
    [book, part, row],
  )
  if (book === null || part === 'hours' || part === 'joints') return null
  if (part === 'suppliers')
    return (
      <section className="group" aria-label="Add a supplier">
        <AddSupplier />
      </section>
    )
  return (
    <>
      <section className="group" aria-labelledby="book-row-title">
        <h2 id="book-row-title">{line === null ? 'The chosen row' : line.label}</h2>
        {line === null ? (
          <p className="soft">
            Choose a row to add another supplier’s price of it{part === 'boards' ? ', or another length' : ''}
            .
          </p>
        ) : (
          <>
            <AddPrice book={book} line={line} />
            <BoardTools book={book} line={line} />
          </>
        )}
      </section>
      <details className="folded">
        <summary>
          {part === 'boards' ? 'A board that is not in the book' : 'A good that is not in the book'}
        </summary>
        {part === 'boards' ? <AddProduct book={book} /> : <AddGood book={book} />}
      </details>
    </>
  )
}

function BoardTools({ book, line: { row } }: { readonly book: PriceBook; readonly line: BookLine }) {
  const session = useSession()
  if (row.of !== 'board') return null
  const entry = book.lumber.find(({ product }) => productKey(product) === row.product)
  if (entry === undefined) return null
  const name = productName(entry.product)

  async function removeAll(product: string) {
    const faults = await session.editPrices([{ kind: 'remove', row: { of: 'product', product } }])
    const [fault] = faults ?? []
    if (fault !== undefined) session.say(sentence(fault))
  }

  return (
    <>
      <AddLength book={book} product={row.product} name={name} />
      <button type="button" className="button" onClick={() => void removeAll(row.product)}>
        Remove {name}, all {entry.stock.length} lengths
      </button>
    </>
  )
}
