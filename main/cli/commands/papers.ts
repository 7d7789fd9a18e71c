import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileNameFor } from '../../../core/job/index.ts'
import {
  fingerprint,
  NO_FIRM,
  NO_QUOTE,
  PERMIT_SHEETS,
  permitGaps,
  permitScaleGaps,
  quoteWarnings,
} from '../../../core/papers/index.ts'
import { isPriced, needsAttention, reasonsForNoPrice } from '../../app/estimate-outcome.ts'
import { readTextFile, writeWhole } from '../../app/files.ts'
import { pricedOptions } from '../../app/priced-options.ts'
import type { Command } from '../arguments.ts'
import { readJobFile, readPrices } from '../inputs.ts'
import { type ExitCode, faultLines, type Output } from '../output.ts'
import { pricesHead } from '../report.ts'
import { printable } from '../text-table.ts'

/** The papers of a job file into a folder: all are made before the first is written, and each is written whole. */
export async function runPapers(
  command: Extract<Command, { kind: 'papers' }>,
  output: Output,
): Promise<ExitCode> {
  const { job, to, prices, only, formats, page, date, revision } = command
  const file = readJobFile(job, output)
  const used = await readPrices(prices, file, output)
  const firm = await readFirm(command.firm, output)
  if (file === null || used === null || firm === null) return 2
  const { book } = used
  const { loadCalculations } = await import('../../app/calculations.ts')
  const calculations = await loadCalculations()
  const result = calculations.estimate(file.statement, book)
  if (!result.ok) {
    output.warn(faultLines(job, result.faults))
    return 2
  }
  const { estimate } = result
  if (!isPriced(estimate)) {
    const at = used.path ?? `${job}, with the sample prices`
    for (const reason of reasonsForNoPrice(estimate)) output.warn(`${printable(`${at}: ${reason}`)}\n`)
    return 2
  }
  const { makePapers, makePdf } = await import('../../app/papers-here.ts')
  const options = await pricedOptions(file.statement, estimate, (changed) =>
    calculations.estimate(changed, book),
  )
  const source = {
    estimate,
    book,
    firm,
    date: date ?? '',
    revision: revision ?? fingerprint(estimate.job),
    quote: { ...NO_QUOTE, options },
  }
  const stem = fileNameFor(file.statement, 'x').slice(0, -2)
  const { files, pages } = await makePapers(source, { only, formats, page, stem }, makePdf)
  if (files.length === 0) {
    output.warn('The job has nothing for these sheets; no file was written.\n')
    return 2
  }
  const forPermit = pages.some(({ sheet }) => PERMIT_SHEETS.has(sheet))
  if (forPermit) {
    const missing = [...permitGaps({ estimate }), ...permitScaleGaps(pages, page.paper)]
    output.say(`For the permit office:\n${missing.map((text) => `  ${printable(text)}\n`).join('')}`)
  }
  const forCustomer = pages.some(({ sheet }) => sheet === 'quote') ? quoteWarnings(source) : []
  if (forCustomer.length > 0)
    output.say(`Before the quote goes out:\n${forCustomer.map((text) => `  ${printable(text)}\n`).join('')}`)
  const folder = makeFolder(to)
  const written =
    folder ??
    files.map(({ name, content }) => writeWhole(join(to, name), content, 'replace')).find(({ ok }) => !ok)
  if (written !== undefined && !written.ok) {
    output.warn(`${written.error}\n`)
    return 2
  }
  output.say(pricesHead(used))
  for (const { name } of files) output.say(`${printable(join(to, name))}\n`)
  output.say(`${pages.length} ${pages.length === 1 ? 'page' : 'pages'} on ${page.paper}\n`)
  return estimate.checks.some(needsAttention) ? 1 : 0
}

/** The folder is made where only it is missing; a fault, or undefined. */
function makeFolder(path: string): { readonly ok: false; readonly error: string } | undefined {
  try {
    mkdirSync(path)
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code !== 'EEXIST') {
      return {
        ok: false,
        error: `The folder ${path} cannot be made (${code ?? 'unknown reason'}). Nothing was written.`,
      }
    }
  }
  return undefined
}

async function readFirm(path: string | null, output: Output) {
  if (path === null) return NO_FIRM
  const text = readTextFile(path)
  const { readFirmText } = await import('../../app/firm-file.ts')
  const read = text.ok ? readFirmText(text.value, path) : text
  if (read.ok) return read.value
  output.warn(`${printable(read.error)}\n`)
  return null
}
