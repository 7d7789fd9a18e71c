import { type CutListResult, writeDelimited } from '../../../core/cut-list/index.ts'
import {
  cutListBoundTable,
  cutListOrderTable,
  cutListRows,
  cutListSheetTable,
} from '../../../core/papers/index.ts'
import { readTextFile, writeWhole } from '../../app/files.ts'
import type { Command } from '../arguments.ts'
import { listFaultLines, pricesUsed, readPrices } from '../inputs.ts'
import type { ExitCode, Output } from '../output.ts'
import { pricesHead } from '../report.ts'
import { printable, textTable, wrap } from '../text-table.ts'

/** Order, cutting sheet, cost and bound of a list of pieces; and as a CSV file or a workbook where one is asked for. */
export async function runCut(
  { list, stock, saw, columns, prices, json, csv, xlsx }: Extract<Command, { kind: 'cut' }>,
  output: Output,
): Promise<ExitCode> {
  const text = readTextFile(list)
  const stockText = stock === null ? null : readTextFile(stock)
  for (const read of [text, stockText]) if (read?.ok === false) output.warn(`${read.error}\n`)
  const used = await readPrices(prices, null, output)
  if (!text.ok || stockText?.ok === false || used === null) return 2
  const request = {
    text: text.value,
    ...(stockText === null ? {} : { stockText: stockText.value }),
    ...(columns === null ? {} : { columns }),
    ...saw,
  }
  const { loadCalculations } = await import('../../app/calculations.ts')
  const answer = (await loadCalculations()).cutList(request, used.book)
  if (!answer.ok) {
    output.warn(listFaultLines({ list, stock: stock ?? list }, answer.faults))
    return 2
  }
  const { result } = answer
  const made = result.plans.length > 0
  const files: { readonly kind: string; readonly name: string; readonly content: string | Uint8Array }[] = []
  if (csv !== null && made)
    files.push({ kind: 'CSV', name: csv, content: writeDelimited(cutListRows(result)) })
  if (xlsx !== null && made) {
    const { makeCutListWorkbook } = await import('../../app/workbook.ts')
    files.push({ kind: 'Workbook', name: xlsx, content: await makeCutListWorkbook(result) })
  }
  for (const { name, content } of files) {
    const written = writeWhole(name, content, 'replace')
    if (!written.ok) {
      output.warn(`${written.error}\n`)
      return 2
    }
  }
  const book = result.book === null ? null : pricesUsed(used)
  if (json) output.say(`${JSON.stringify({ prices: book, result }, null, 2)}\n`)
  else output.say(report(result, result.book === null ? '' : pricesHead(used)))
  for (const { message, help } of result.infeasible)
    output.warn(`${printable(`${list}: ${message} ${help}`)}\n`)
  for (const { kind, name } of files) output.warn(`${kind}: ${name}\n`)
  return result.infeasible.length === 0 ? 0 : 1
}

function report(result: CutListResult, head: string): string {
  const remarks = result.remarks.flatMap((remark) => wrap(remark, 110)).join('\n')
  const sections = [
    head + (remarks === '' ? '' : `${remarks}\n`),
    textTable(cutListOrderTable(result)),
    textTable(cutListSheetTable(result)),
    textTable(cutListBoundTable(result)),
  ]
  return sections.filter((section) => section !== '').join('\n')
}
