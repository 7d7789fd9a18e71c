import { siteFacts } from '../quote/customer-facts.ts'
import type { Block, Sheet, SheetId } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { SHEET_SETS } from './sets.ts'

/** What one does with each sheet, in a line. */
const USES: { readonly [id in Exclude<SheetId, 'contents'>]: string } = {
  framing: 'where every member, joint and connector is',
  section: 'heights over the ground, from the yard and from the side',
  details: 'how members meet, with this job’s sizes',
  footings: 'set out the strings, dig and pour',
  marking: 'mark ledgers, rims and beams for their joists',
  decking: 'lay the boards, each by its name',
  stairs: 'its parts, their places and their marks',
  cutting: 'saw each board, tick it off',
  order: 'what is bought, and what waits',
  checks: 'loads, sources and every check with its numbers',
  steps: 'the order of work, with tools, proofs and cautions',
  inspections: 'what must be seen before work goes on',
  cost: 'every line from the yard’s price to the customer’s',
  quote: 'what is built, and for how much',
  change: 'what changed since the quote sent last',
  record: 'what was bought, left and worked, to fill in',
  strips: 'marks at true size, to lie beside the board',
}

/** The first page of a set: what job it is, and which sheets follow, on which pages, for whom. */
export function contentsSheet({ estimate, firm }: PaperSource, sheets: readonly Sheet[]): Sheet {
  const { job } = estimate
  const kept = sheets.filter(({ audience }) => audience === 'office').map(({ title }) => `“${title}”`)
  return {
    id: 'contents',
    title: 'Sheets in this set',
    audience: 'crew',
    across: false,
    blocks: [
      { kind: 'facts', rows: [['Job', job.name], ...siteFacts(job), ['Built to', job.code.edition]] },
      {
        kind: 'contents',
        rows: sheets.map((sheet) => ({
          title: sheet.title,
          readers: readersOf(sheet),
          use: sheet.id === 'contents' ? '' : purposeOf(sheet.id, firm),
        })),
      },
      ...(kept.length === 0
        ? []
        : [
            {
              kind: 'caution',
              text: `Kept in the office, taken out before the set is handed on: ${kept.join(' and ')}.`,
            } satisfies Block,
          ]),
      {
        kind: 'text',
        tone: 'soft',
        text: 'One revision, one date and one job stand at the foot of every page: sheets of another revision do not belong to this set.',
      },
    ],
  }
}

/** A quote says when it is paid where the firm states it. */
function purposeOf(id: Exclude<SheetId, 'contents'>, { stages }: PaperSource['firm']): string {
  return id === 'quote' && stages.length > 0 ? 'what is built, for how much, paid when' : USES[id]
}

/** Everybody whose own set has the sheet. */
function readersOf({ id, audience }: Sheet): string {
  if (audience === 'office') return 'office only'
  const readers = SHEET_SETS.filter(({ sheets }) => sheets.includes(id)).map(({ reader }) =>
    reader.toLowerCase(),
  )
  return (readers.length === 0 ? [audience] : readers).join(', ')
}
