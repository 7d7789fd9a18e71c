import { faultWords } from '../../../core/cut-list/index.ts'
import { type PriceListTaken, takePriceList } from '../../../core/price-list/index.ts'
import { type PriceBook, writePriceBook } from '../../../core/pricing/index.ts'
import { printUnitPrice } from '../../../core/units/index.ts'
import { readTextFile, writeWhole } from '../../app/files.ts'
import { readPrices } from '../inputs.ts'
import type { ExitCode, Output } from '../output.ts'
import type { PriceListCommand } from '../price-list-arguments.ts'
import { printable, textTable } from '../text-table.ts'

/** What a list of prices changes in a price book, and the changed book as a new file where one is asked for. */
export async function runPrices(
  { list, prices, says, write, json }: PriceListCommand,
  output: Output,
): Promise<ExitCode> {
  const text = readTextFile(list)
  if (!text.ok) output.warn(`${text.error}\n`)
  const used = await readPrices(prices, null, output)
  if (!text.ok || used === null) return 2
  const taken = takePriceList(used.book, { text: text.value, ...says })
  if (!taken.ok) {
    for (const fault of taken.error)
      output.warn(`${printable(`${list}:${fault.line}: ${faultWords({ source: 'list', ...fault })}`)}\n`)
    return 2
  }
  const { book, ...told } = taken.value
  if (write !== null) {
    const written = writeWhole(write, `${JSON.stringify(writePriceBook(book), null, 2)}\n`, 'create')
    if (!written.ok) {
      output.warn(`${written.error}\n`)
      return 2
    }
  }
  output.say(json ? `${JSON.stringify(told, null, 2)}\n` : report(told, used.book))
  if (write !== null) output.warn(`Price book: ${write}\n`)
  return 0
}

function report({ changes, leftOut, ignored }: Omit<PriceListTaken, 'book'>, before: PriceBook): string {
  const table = textTable({
    id: 'prices',
    title: `Prices of the list against those of ${before.name}, ${before.date}`,
    columns: [
      { key: 'item', label: 'Item', align: 'left' },
      { key: 'before', label: 'Now', align: 'right' },
      { key: 'after', label: 'List', align: 'right' },
      { key: 'date', label: 'Of', align: 'left' },
      { key: 'supplier', label: 'Supplier', align: 'left' },
    ],
    rows: changes.map((change) => ({
      item: change.label,
      before: change.before === null ? 'new' : printUnitPrice(change.before),
      after: printUnitPrice(change.after),
      date: change.date,
      supplier: change.supplier,
    })),
  })
  const remarks = [
    ...(leftOut.length === 0 ? [] : [`Left out, of nothing in the price book: ${leftOut.join('; ')}`]),
    ...(ignored.length === 0 ? [] : [`Columns not read: ${ignored.join(', ')}`]),
  ]
  return `${table}${remarks.map((words) => `${printable(words)}\n`).join('')}`
}
