import { printInches } from '../../units/index.ts'
import type { Page } from '../page-types.ts'
import { PAPER_NAMES } from '../pages/paper.ts'
import { POINTS_PER_TICK, permitScale, scaleName } from '../pages/scales.ts'
import type { PaperName, SheetId } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'

/** Sheets of a permit set: with one of them among the papers, what the set misses is said before anything is printed. */
export const PERMIT_SHEETS: ReadonlySet<SheetId> = new Set<SheetId>(['framing', 'checks', 'section'])

/** What permit offices usually want in a set, and where in this one it stands: common practice, lists of offices differ. */
export function permitList({ estimate }: PaperSource): readonly string[] {
  const { job, frame, stairs } = estimate
  const ledger = job.site.attachment === 'ledger'
  return [
    'Framing plan to scale with sizes, spans, spacing and cantilevers: sheet “Framing plan”.',
    'Footing plan and schedule with places, diameters and depths: sheet “Footing layout”.',
    'Section and elevations with heights over the ground: sheet “Section and elevations”.',
    ledger
      ? 'Ledger: size, fasteners and flashing: sheets “Details” and “Section and elevations”, and the checks below.'
      : 'Freestanding: bracing and lateral load: the checks below.',
    ...(estimate.stairs.length === 0 && estimate.guard === null
      ? []
      : [
          stairs.length === 0
            ? 'Guard: sheet “Guard”, and the checks below.'
            : 'Stairs and guard: sheet “Stairs and guard”, and the checks below.',
        ]),
    `Connectors: ${connectorWords([...frame.connectors, ...stairs.flatMap(({ connectors }) => connectors)])}; listed products are chosen at the yard, their sheets go with the permit.`,
    `Frost depth ${printInches(job.site.frostDepth)} and soil: to be confirmed by the office.`,
  ]
}

/** What this set does not hold and an office may send it back for; said before anything is printed. */
export function permitGaps({
  estimate,
}: {
  readonly estimate: Pick<PaperSource['estimate'], 'job' | 'checks' | 'guard' | 'stairs'>
}): readonly string[] {
  const { job, checks } = estimate
  const open = checks.filter(({ status }) => status !== 'passes' && status !== 'near')
  return [
    'Missing: a site plan. Draw the deck on the plat or survey with its distances to the lot lines.',
    ...(estimate.guard === null && job.scope.guard.included && job.scope.guard.allowance > 0
      ? [
          'Missing: the guard’s drawing. It is in the price as a sum; a bought system needs its maker’s sheets.',
        ]
      : []),
    ...(estimate.stairs.length === 0 && job.scope.stairs.included && job.scope.stairs.allowance > 0
      ? ['Missing: the stair’s drawing. It is in the price as a sum, and is not framed here.']
      : []),
    ...(job.customer.address.trim() === ''
      ? ['Missing: the address of the site. State it with the job; the sheets have a line to fill.']
      : []),
    ...(job.site.frostSource === ''
      ? ['Missing: who told the frost depth. Ask the building department.']
      : []),
    ...(job.site.soil === 'unknown' ? ['Missing: what the soil is. The office may want it looked at.'] : []),
    ...open.map(({ title, status }) => `Open: ${title}, ${status}.`),
  ]
}

/** Drawings that a permit office wants at its own scale. */
const PERMIT_DRAWINGS: ReadonlyMap<string, string> = new Map([
  ['framing-plan', 'the framing plan'],
  ['footing-layout', 'the footing layout'],
  ['deck-section', 'the section'],
  ['deck-front', 'the elevation from the yard'],
  ['deck-side', 'the elevation from the side'],
])

/** Which of them are smaller than 1/4 in to the foot, or 1:50, on this paper; said before it is printed. */
export function permitScaleGaps(
  pages: readonly Pick<Page, 'drawings'>[],
  paper: PaperName,
): readonly string[] {
  const wanted = permitScale(paper)
  const small = pages
    .flatMap(({ drawings }) => drawings)
    .flatMap(({ drawing, scale }) => {
      const name = PERMIT_DRAWINGS.get(drawing)
      const denominator = POINTS_PER_TICK / scale
      return name === undefined || denominator < wanted + 0.5
        ? []
        : [`${name} (1:${Math.round(denominator)})`]
    })
  if (small.length === 0) return []
  const larger =
    paper === 'letter' ? 'Tabloid' : paper === 'a4' ? 'A3' : 'a larger sheet than this program prints'
  return [
    `Smaller than ${scaleName(wanted)}, which permit offices ask for: ${small.join(', ')}. On ${PAPER_NAMES[paper]} they do not fit at that scale: try ${larger}.`,
  ]
}

/** So many of each kind, whatever their size. */
function connectorWords(connectors: readonly { readonly kind: string; readonly count: number }[]): string {
  const kinds = Map.groupBy(connectors, ({ kind }) => kind)
  return [...kinds]
    .map(([kind, all]) => ({ kind, count: all.reduce((sum, one) => sum + one.count, 0) }))
    .map(({ kind, count }) => `${count} ${kind}${count === 1 ? '' : 's'}`)
    .join(', ')
}
