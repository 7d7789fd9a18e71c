import { dressedSizes, IRC_LIMITS } from '../data/index.ts'
import { ledgerSpacing } from '../rules/index.ts'
import { inches } from '../units/index.ts'
import type { CheckContext } from './context.ts'
import { byLimit, length } from './finding.ts'
import { judge } from './judge.ts'
import { ledgerIds } from './members.ts'
import { underTables } from './tables.ts'
import type { Check, Finding } from './types.ts'
import { feetInches } from './words.ts'

/** Fasteners of the ledger, IRC 2021 Table R507.9.1.3(1): the rule sets their spacing, and the order follows it. */
export function checkLedgerFasteners(context: CheckContext): readonly Check[] {
  const { job } = context
  const span = context.spans.find((one) => one.from.kind === 'ledger')
  if (span === undefined) return []
  const { ledgerFastener, sheathing } = job.site
  const lookup = underTables(context, ledgerSpacing(span.clear, ledgerFastener, sheathing, context.load))
  const spacing = lookup.kind === 'row' && lookup.value !== null ? inches(lookup.value) : null
  const name = ledgerFastener === 'lag' ? '1/2 in lag screws' : '1/2 in bolts'
  const prescriptive: Finding | null =
    lookup.kind === 'row' && spacing !== null
      ? {
          method: 'prescriptive',
          document: lookup.source.document,
          edition: lookup.source.edition,
          clause: lookup.source.clause,
          demand: length(span.clear),
          capacity: length(spacing),
          ratio: null,
          confidence: lookup.source.confidence,
          lookup: lookup.sentence,
          steps: [
            `Joist span ${feetInches(span.clear)}: ${lookup.sentence}`,
            `${name} at ${feetInches(spacing)} on centre or closer, staggered top and bottom`,
          ],
        }
      : null
  const check = judge(job, {
    id: 'ledger-fasteners',
    title: 'Ledger fasteners',
    subjects: ledgerIds(context.frame),
    fields: ['site.ledgerFastener', 'site.sheathing', 'size.depth'],
    prescriptive,
    calculated: null,
    good: () => `The ledger takes ${name} at ${spacing === null ? '' : feetInches(spacing)} on centre.`,
    bad: '',
    uncovered: `No table row covers ${name} through sheathing ${sheathing} at ${context.load} psf and a joist span of ${feetInches(span.clear)}`,
    remedy: '',
    caution: 'Flash the ledger. It may not hang on masonry veneer, and the band behind it must be sound.',
  })
  return [check, checkLedgerSize(context)]
}

/** Least size of a ledger, 2x8, IRC 2021 R507.9.1.1. */
function checkLedgerSize(context: CheckContext): Check {
  const { job } = context
  const { size } = job.frame.joists
  const depth = dressedSizes[size].depth
  const least = dressedSizes['2x8'].depth
  const found = byLimit(IRC_LIMITS.leastLedger, length(least), length(depth), [
    `The ledger is ${size}, as the joists; 2x8 is the least`,
  ])
  return judge(job, {
    id: 'ledger-size',
    title: 'Ledger size',
    subjects: ledgerIds(context.frame),
    fields: ['frame.joists.size'],
    // sizes come in steps: the least that is allowed is not near a limit
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () => `A ${size} ledger is large enough.`,
    bad: `A ${size} ledger is too small; 2x8 is the least.`,
    uncovered: 'No rule covers the size of the ledger',
    remedy: 'Use 2x8 joists or deeper.',
    caution: '',
  })
}

/** Hold-downs that keep the deck from pulling away from the house, IRC 2021 R507.9.2. */
export function checkLateralLoad(context: CheckContext): Check {
  const { job, frame } = context
  if (job.site.attachment === 'freestanding') {
    return judge(job, {
      id: 'lateral-stability',
      title: 'Sideways stability',
      subjects: frame.posts.map((post) => post.id),
      fields: ['site.attachment'],
      prescriptive: null,
      calculated: null,
      good: () => '',
      bad: '',
      uncovered: 'No table covers what holds a freestanding deck upright sideways',
      remedy: '',
      caution: 'Knee braces or braced posts are usual.',
    })
  }
  const holdDowns = frame.connectors.filter((one) => one.kind === 'hold-down')
  const count = holdDowns.reduce((sum, one) => sum + one.count, 0)
  const limit = IRC_LIMITS.lateralDevices
  const found = byLimit(limit, { value: limit.value, unit: 'count' }, { value: count, unit: 'count' }, [
    `${limit.value} hold-downs of 1,500 lb within 24 in of the deck's ends, or ${IRC_LIMITS.weakLateralDevices.value} of 750 lb`,
    `Counted in the frame: ${count}`,
  ])
  return judge(job, {
    id: 'lateral-load',
    title: 'Lateral load connection',
    subjects: holdDowns.flatMap((one) => one.at),
    fields: ['site.attachment'],
    prescriptive: found.ratio === 1 ? { ...found, ratio: null } : found,
    calculated: null,
    good: () => `${count} hold-downs tie the deck to the house.`,
    bad: `The deck has ${count} hold-downs; ${limit.value} are needed.`,
    uncovered: 'No rule covers the lateral load',
    remedy: `Add hold-downs: ${limit.value} of 1,500 lb, or ${IRC_LIMITS.weakLateralDevices.value} of 750 lb.`,
    caution: '',
  })
}
