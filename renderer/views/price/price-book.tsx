import { useState } from 'react'
import { ChooseFile } from '../../parts/choose-file.tsx'
import { Message } from '../../parts/message.tsx'
import { plural } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { FileFaults } from '../file-faults.tsx'
import { readFileText } from '../read-file-text.ts'
import { saveText } from '../save-blob.ts'
import { PriceListButton } from './price-list-button.tsx'
import { sourceWords } from './source-words.ts'
import './price-book.css'

const LONGEST = 2_000_000

/**
 * The prices that every estimate uses: whose they are, how old, and the way to the user's own. Asked in a dialog, it does
 * not lead away from it.
 */
export function PriceBookPart({ isAsked = false }: { readonly isAsked?: boolean }) {
  const session = useSession()
  const prices = useJob((state) => state.prices)
  const place = useJob((state) => state.place)
  const faults = useJob((state) => state.priceFileFaults)
  const [unread, setUnread] = useState<string | null>(null)

  async function take(chosen: File) {
    const read = await readFileText(chosen, {
      what: 'a price book',
      longest: LONGEST,
      make: 'Save it as UTF-8.',
    })
    setUnread(read.ok ? null : read.error)
    if (read.ok) await session.takePrices(read.value)
  }

  async function save() {
    const made = await session.priceFile()
    if (made) saveText(made.fileName, made.text, 'application/json')
  }

  return (
    <section className="group" aria-labelledby="prices-title">
      <h2 id="prices-title">Price book</h2>
      {prices === null ? (
        <p className="soft">Reading the prices.</p>
      ) : (
        <>
          <dl className="price-book">
            <dt>Name</dt>
            <dd>{prices.book.name}</dd>
            <dt>Supplier</dt>
            <dd>{prices.book.supplier}</dd>
            <dt>Prices of</dt>
            <dd>{prices.book.date}</dd>
          </dl>
          {prices.stale.count > 0 && (
            <Message tone="near">
              {plural(prices.stale.count, 'price', 'prices')} of {prices.stale.of}{' '}
              {prices.stale.count === 1 ? 'is' : 'are'} older than 60 days, the oldest{' '}
              {sourceWords(prices.stale.oldest)}: ask the yard again before you quote.
            </Message>
          )}
          {prices.book.invented && (
            <Message tone="near">
              They are invented: give your yard’s own before you rely on a figure.
            </Message>
          )}
        </>
      )}
      <div className="price-book-tools">
        <button type="button" className="button" onClick={() => void save()}>
          Save as a file to edit
        </button>
        {!isAsked && place !== 'price book' && (
          <button type="button" className="button" onClick={() => session.go('price book')}>
            Look through the prices
          </button>
        )}
        <PriceListButton />
        <ChooseFile
          name="File of a price book"
          accept=".json,.jsonc,.txt,application/json"
          onChosen={(file) => void take(file)}
        >
          Take a price book
        </ChooseFile>
        {prices !== null && prices.importedAt !== null && (
          <button type="button" className="button" onClick={() => void session.backToSamplePrices()}>
            Use the sample prices
          </button>
        )}
        {prices !== null && prices.lastChange !== null && (
          <button type="button" className="button" onClick={() => void session.takePricesBack()}>
            Take back “{prices.lastChange}”
          </button>
        )}
      </div>
      {unread !== null && (
        <p className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {unread}
        </p>
      )}
      {unread === null && faults.length > 0 && (
        <FileFaults lead="The file was not taken, and the prices are as they were." faults={faults} />
      )}
    </section>
  )
}
