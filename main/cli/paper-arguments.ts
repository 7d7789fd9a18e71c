import { PAPERS, type PageOptions, SHEET_IDS, type SheetId, USUAL_SHEETS } from '../../core/papers/index.ts'
import { fail, isDate, ok, type Result } from '../../core/units/index.ts'
import { PAPER_FORMATS, type PaperFormat, USUAL_FORMATS } from '../app/paper-formats.ts'
import type { Command } from './arguments.ts'
import { suggestion } from './suggestion.ts'

export type PaperOption = 'to' | 'only' | 'paper' | 'scale' | 'units' | 'as' | 'date' | 'revision' | 'firm'

/** Lengths on papers: feet and inches, or millimetres. */
const UNITS = ['feet', 'mm'] as const

/** Largest scale that is asked for, 1 : n. */
const SMALLEST_DRAWING = 1000

export function readPaperOptions(
  job: string,
  values: { get(option: PaperOption | 'prices'): string | undefined },
): Result<Extract<Command, { kind: 'papers' }>, string> {
  const to = values.get('to')
  if (to === undefined) return fail('"papers" needs a folder: --to FOLDER.')
  const only = readList<SheetId>('--only', values.get('only'), SHEET_IDS, USUAL_SHEETS)
  const formats = readList<PaperFormat>('--as', values.get('as'), PAPER_FORMATS, USUAL_FORMATS)
  const page = readPage(values.get('paper'), values.get('scale'), values.get('units'))
  const date = values.get('date') ?? null
  if (!only.ok) return only
  if (!formats.ok) return formats
  if (!page.ok) return page
  if (date !== null && !isDate(date)) return fail(`--date: "${date}" is no day; write it as 2026-03-31.`)
  const revision = values.get('revision') ?? null
  if (revision !== null && revision.length > 40) return fail('--revision: at most 40 characters.')
  return ok({
    kind: 'papers',
    job,
    to,
    prices: values.get('prices') ?? null,
    firm: values.get('firm') ?? null,
    only: only.value,
    formats: formats.value,
    page: page.value,
    date,
    revision,
  })
}

function readPage(
  paperText: string | undefined,
  scaleText: string | undefined,
  unitsText: string | undefined,
): Result<PageOptions, string> {
  const paper = PAPERS.find((name) => name === (paperText ?? 'letter'))
  if (paper === undefined)
    return fail(`--paper: there is no "${paperText}"${suggestion(paperText ?? '', PAPERS)}`)
  const units = UNITS.find((name) => name === (unitsText ?? 'feet'))
  if (units === undefined)
    return fail(`--units: there is no "${unitsText}"${suggestion(unitsText ?? '', UNITS)}`)
  const metric = units === 'mm'
  if (scaleText === undefined) return ok({ paper, scale: null, metric })
  const scale = /^(?:1:)?(\d{1,4})$/.exec(scaleText)?.[1]
  if (scale === undefined || Number(scale) < 1 || Number(scale) > SMALLEST_DRAWING)
    return fail(
      `--scale: "${scaleText}" is no scale; 48 is 1/4 in to the foot, the largest number is ${SMALLEST_DRAWING}.`,
    )
  return ok({ paper, scale: Number(scale), metric })
}

function readList<T extends string>(
  option: string,
  text: string | undefined,
  names: readonly T[],
  usual: readonly T[],
): Result<readonly T[], string> {
  if (text === undefined) return ok(usual)
  const chosen: T[] = []
  for (const word of text.split(',').map((each) => each.trim())) {
    const name = names.find((one) => one === word)
    if (name === undefined) return fail(`${option}: there is no "${word}"${suggestion(word, names)}`)
    chosen.push(name)
  }
  return ok(chosen)
}
