import type { FieldPath, Job } from '../job/index.ts'
import { isRow } from '../rules/index.ts'
import { worse } from './finding.ts'
import type { Check, CheckStatus, Finding, Listing } from './types.ts'

/** Above this share of its limit a member is near it. */
const NEAR = 0.9

/** Rounding noise of a ratio of computed numbers; a tick over a limit of 18 ft is a thousand times more. */
const NOISE = 1e-9

export interface Question {
  readonly id: string
  readonly title: string
  readonly subjects: readonly string[]
  readonly fields: readonly FieldPath[]
  /** by table or clause; null: none covers it */
  readonly prescriptive: Finding | null
  readonly calculated: Finding | null
  /** false where its table has no page that can be relied on; true where none is said */
  readonly paged?: boolean
  /** shown with the others, deciding nothing */
  readonly beside?: readonly Finding[]
  /** one line for a ratio within the limit */
  readonly good: (share: string) => string
  /** one line for a ratio over the limit */
  readonly bad: string
  /** one line where no table covers it, beginning with what is not covered */
  readonly uncovered: string
  /** what the calculation says where it stands alone; else its share of the limit */
  readonly byCalculation?: string
  /** what to do about a failure */
  readonly remedy: string
  /** what to do where nothing covers it, in place of asking for a licensed designer */
  readonly whenUncovered?: string
  /** a caution that holds whatever the outcome; empty where there is none */
  readonly caution: string
  /** what bought metal must be listed for; nothing where absent */
  readonly listings?: readonly Listing[]
}

const LICENSED = 'Outside prescriptive scope: needs a licensed designer.'
const OFFICIAL =
  'No table row that can be relied on covers this; ask the building official whether the calculation will do.'

/**
 * Status of one rule, as the job's choice of method and the confidence of the row decide:
 * a row that was read decides by itself where the job goes by the tables; a row that was recalled and reproduced
 * counts only with the calculation, the more conservative of the two; without a row a calculation stands alone.
 */
export function judge(job: Job, question: Question): Check {
  const { prescriptive, calculated } = question
  const row = prescriptive !== null && isRow(prescriptive.confidence) ? prescriptive : null
  const governing = row === null ? worse(prescriptive, calculated) : decider(job, row, calculated)
  const status = statusOf(row, governing, calculated)
  return {
    id: question.id,
    title: question.title,
    subjects: question.subjects,
    status,
    governing,
    basis: basisOf(job, row, governing),
    findings: [prescriptive, calculated, ...(question.beside ?? [])].filter((finding) => finding !== null),
    message: messageFor(status, governing, question),
    remedy: remedyFor(status, question, row === null ? '' : disagreement(row, calculated)),
    fields: question.fields,
    paged: question.paged ?? true,
    ...(question.listings === undefined || question.listings.length === 0
      ? {}
      : { listings: question.listings }),
  }
}

function decider(job: Job, row: Finding, calculated: Finding | null): Finding {
  if (calculated === null) return row
  if (job.code.governs === 'calculated') return calculated
  return row.confidence === 'verified' ? row : (worse(row, calculated) ?? row)
}

function statusOf(row: Finding | null, governing: Finding | null, calculated: Finding | null): CheckStatus {
  if (governing === null) return 'outside scope'
  if (governing.ratio !== null && governing.ratio > 1 + NOISE) return 'fails'
  if (row === null) return calculated === null ? 'outside scope' : 'calculated only'
  return governing.ratio !== null && governing.ratio > NEAR ? 'near' : 'passes'
}

function messageFor(status: CheckStatus, governing: Finding | null, question: Question): string {
  if (status === 'fails') return question.bad
  if (status === 'outside scope') return `${question.uncovered}.`
  const share = percent(governing?.ratio ?? 0)
  if (status !== 'calculated only') return question.good(share)
  return `${question.uncovered}; by ${howFound(governing)} ${question.byCalculation ?? `${share} is used`}.`
}

function remedyFor(status: CheckStatus, question: Question, disagreement: string): string {
  const parts = [
    status === 'fails' ? question.remedy : '',
    status === 'outside scope' ? (question.whenUncovered ?? LICENSED) : '',
    status === 'calculated only' ? OFFICIAL : '',
    disagreement,
    question.caution,
  ]
  return parts.filter((part) => part !== '').join(' ')
}

/** What decides where no row that can be relied on does. */
function howFound(governing: Finding | null): string {
  return governing?.method === 'prescriptive' ? 'a figure that is no table row' : 'calculation'
}

/** Which of table and calculation decides, and how well it is known. */
function basisOf(job: Job, row: Finding | null, governing: Finding | null): string {
  if (governing === null) return ''
  if (governing === row) return `table, ${row.confidence}`
  if (row === null) {
    return `${howFound(governing)}${governing.method === 'calculated' ? ' alone' : ''}, ${governing.confidence}`
  }
  if (job.code.governs === 'calculated') return 'calculation, as the job chooses'
  return (row.ratio ?? 0) > 1 + NOISE
    ? 'calculation'
    : 'calculation, safer than the table, which allows it too'
}

/** Table and calculation part where one allows what the other does not. */
function disagreement(row: Finding, calculated: Finding | null): string {
  if (calculated === null || calculated.ratio === null || row.ratio === null) return ''
  const allows = row.ratio <= 1 + NOISE
  if (allows === calculated.ratio <= 1 + NOISE) return ''
  return allows
    ? `The table allows it; the calculation does not (${percent(calculated.ratio)}).`
    : `The calculation would allow it (${percent(calculated.ratio)}); the table does not.`
}

/**
 * A share of a limit in whole percent; what is over the limit never reads 100 %, and where a table allows nothing there
 * is no figure.
 */
export function percent(ratio: number): string {
  if (ratio > 9.99) return '>999 %'
  return `${ratio > 1 ? Math.ceil(ratio * 100 - 1e-9) : Math.round(ratio * 100)} %`
}
