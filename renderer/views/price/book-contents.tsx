import { Modal } from '@mantine/core'
import { useMemo, useState } from 'react'
import type { PriceBook } from '../../../core/pricing/index.ts'
import { today } from '../today.ts'
import { bookGroups, rowsWith } from './book-rows.ts'
import { isOldOn, sourceWords } from './source-words.ts'
import './price-list-import.css'

/** Opens everything that stands in the price book. */
export function BookContents({ book }: { readonly book: PriceBook }) {
  const [opened, setOpened] = useState(false)
  return (
    <>
      <button type="button" className="button" onClick={() => setOpened(true)}>
        Look through the prices
      </button>
      <Modal
        opened={opened}
        onClose={() => setOpened(false)}
        title={`Price book: ${book.name}`}
        attributes={{ header: { role: 'none' } }}
        size="xl"
        overlayProps={{ backgroundOpacity: 0.4 }}
        closeButtonProps={{ 'aria-label': 'Close the price book' }}
      >
        <Contents book={book} />
      </Modal>
    </>
  )
}

function Contents({ book }: { readonly book: PriceBook }) {
  const [sought, setSought] = useState('')
  const groups = useMemo(() => bookGroups(book), [book])
  const found = rowsWith(groups, sought)
  const day = today()
  return (
    <>
      <div className="price-list-says">
        <label htmlFor="book-sought">
          Find in it
          <input
            id="book-sought"
            value={sought}
            maxLength={100}
            onChange={(event) => setSought(event.target.value)}
          />
        </label>
      </div>
      {found.length === 0 && <p className="soft">Nothing in the price book holds “{sought}”.</p>}
      {found.map(({ title, rows }) => (
        <section key={title} aria-label={title}>
          <h3>{title}</h3>
          <div className="scroll-x" role="group" aria-label={`${title}: prices`} tabIndex={0}>
            <table className="table">
              <caption className="unseen">{title}</caption>
              <thead>
                <tr>
                  <th scope="col">Item</th>
                  <th scope="col">Code</th>
                  <th scope="col">Price</th>
                  <th scope="col">From</th>
                </tr>
              </thead>
              <tbody>
                {rows.map(({ key, code, item, price, source }) => (
                  <tr key={key}>
                    <td>{item}</td>
                    <td>{code}</td>
                    <td>{price}</td>
                    <td>
                      {source !== null && (
                        <>
                          {isOldOn(day, source) && <span title="Older than 60 days">◐ old, </span>}
                          {sourceWords(source)}
                        </>
                      )}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </section>
      ))}
    </>
  )
}
