import { calculatedLedgerSpacing, figure, impliedFastenerLoad, ledgerSpacing } from '../rules/index.ts'
import { inches, type Ticks, ticks, toInches } from '../units/index.ts'
import type { JoistContext } from './context.ts'
import { length } from './finding.ts'
import { hangingJoists } from './hanging-joists.ts'
import { judge } from './judge.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { feetInches, spacingText } from './words.ts'

/**
 * Fasteners of the ledger, IRC 2021 Table R507.9.1.3(1): the rule sets their spacing and the order follows it, so there
 * is no ratio. Nothing to say of a freestanding deck.
 */
export function checkLedgerFasteners(context: JoistContext): readonly Check[] {
  const { job } = context
  const span = longestAt(context.spans)
  if (span === null) return []
  const { ledgerFastener, sheathing } = job.site
  const name = ledgerFastener === 'lag' ? '1/2 in lag screws' : '1/2 in bolts'
  const lookup = underTables(context, ledgerSpacing(span.clear, ledgerFastener, sheathing, context.load))
  const tabled = lookup.kind === 'row' && lookup.value !== null ? inches(lookup.value) : null
  const prescriptive: Finding | null =
    lookup.kind === 'row' && tabled !== null
      ? {
          method: 'prescriptive',
          document: lookup.source.document,
          edition: lookup.source.edition,
          clause: lookup.source.clause,
          demand: length(span.clear),
          capacity: length(tabled),
          ratio: null,
          confidence: lookup.source.confidence,
          lookup: lookup.sentence,
          steps: [
            `Joist span ${feetInches(span.clear)}: ${lookup.sentence}`,
            `${name} at ${spacingText(tabled)} on centre or closer, staggered top and bottom`,
          ],
        }
      : null
  // one ledger may carry joists of several spans: each spacing holds where its own hang
  const where = context.groups.length > 1 ? `, along ${hangingJoists(context)},` : ''
  const calculated = calculate(context)
  const reckoned = calculated?.capacity?.value ?? 0
  return [
    judge(job, {
      id: `ledger-fasteners${context.suffix}`,
      title: 'Ledger fasteners',
      subjects: context.group.supports.flatMap(({ id, kind }) => (kind === 'ledger' ? [id] : [])),
      fields: ['site.ledgerFastener', 'site.sheathing', 'size.depth'],
      prescriptive,
      calculated,
      paged: lookup.paged,
      good: () =>
        `The ledger${where} takes ${name} at ${toInches(tabled ?? reckoned)} in on centre${held(context, tabled)}.`,
      bad: `The load on the ledger${where} is more than ${name} can carry.`,
      uncovered: `No table row covers ${name} through sheathing ${sheathing} at ${context.load} psf, ${job.site.deadLoad} psf dead, and a joist span of ${feetInches(span.clear)}`,
      byCalculation: `${toInches(reckoned)} in on centre`,
      remedy: 'Use bolts, or a beam nearer the house.',
      caution: 'Flash the ledger. It may not hang on masonry veneer, and the band behind it must be sound.',
    }),
  ]
}

/** The longest span that ends at a ledger; null where none does. */
function longestAt(spans: JoistContext['spans']): JoistContext['spans'][number] | null {
  const at = spans.filter(({ from, to }) => from.kind === 'ledger' || to.kind === 'ledger')
  return at.reduce<(typeof at)[number] | null>((a, b) => (a === null || b.clear > a.clear ? b : a), null)
}

/** What is drawn and ordered where other joists on one of the same ledgers ask for less: the closest, all along it. */
function held(context: JoistContext, own: Ticks | null): string {
  const { ledgerFastener, sheathing } = context.job.site
  const ledgers = new Set(context.group.supports.flatMap(({ id, kind }) => (kind === 'ledger' ? [id] : [])))
  const others = context.groups.flatMap(({ supports, spans }) => {
    const span = supports.some(({ id }) => ledgers.has(id)) ? longestAt(spans) : null
    if (span === null) return []
    const lookup = ledgerSpacing(span.clear, ledgerFastener, sheathing, context.load)
    return lookup.kind === 'row' && lookup.value !== null ? [inches(lookup.value)] : []
  })
  const closest = Math.min(...others)
  return own === null || !(closest < own)
    ? ''
    : `; marks and order hold ${toInches(ticks(closest))} in along the whole ledger, the closest that any of its joists asks for`
}

/** Spacing by the joists' greatest reaction at the ledger and the least load that the table implies for a fastener. */
function calculate(context: JoistContext): Finding | null {
  const { group, joist } = context
  const { ledgerFastener, sheathing } = context.job.site
  const each = impliedFastenerLoad(ledgerFastener, sheathing)
  const reactions = group.supports.flatMap(({ kind }, i) =>
    kind === 'ledger' ? [joist?.envelope.supports[i]?.greatest ?? 0] : [],
  )
  if (each === null || joist === null || reactions.length === 0) return null
  // joists that lift off the ledger do not load it: see the check of uplift
  const reaction = Math.max(0, ...reactions)
  const apart = toInches(context.job.frame.joists.spacing)
  const spacing = calculatedLedgerSpacing(reaction / apart, each)
  return {
    method: 'calculated',
    document: 'IRC',
    edition: '2021',
    clause: 'R507.9.1.3',
    demand: { value: (reaction / apart) * 12, unit: 'plf' },
    capacity: length(inches(spacing)),
    // a spacing under an inch cannot be built
    ratio: spacing >= 1 ? null : Number.MAX_VALUE,
    confidence: 'computed only',
    lookup: 'Least load per fastener that the table implies',
    steps: [
      `Each joist brings ${figure(reaction)} lb to the ledger: ${figure((reaction / apart) * 12)} plf`,
      `A fastener carries ${figure(each, 1)} lb, the least that any cell of the 60 psf table implies (no published value)`,
      `Spacing, rounded down: ${spacing} in`,
    ],
  }
}
