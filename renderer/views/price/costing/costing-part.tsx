import { useMemo, useState } from 'react'
import { costJob, type Held, heldAgainst, isBegun, keptIn } from '../../../../core/costing/index.ts'
import type { HoursWorked, Job, Purchase } from '../../../../core/job/index.ts'
import { draftOf, type EntryDraft, namedLines } from '../../../state/costing-entries.ts'
import { useJob } from '../../../state/session-context.ts'
import { today } from '../../today.ts'
import { BeginJob } from './begin-job.tsx'
import { BoardStates } from './board-states.tsx'
import { CostedLines } from './costed-lines.tsx'
import { CostingSummary } from './costing-summary.tsx'
import { type EntryFields, EntryForm, HOURS_FIELDS, PURCHASE_FIELDS } from './entry-form.tsx'
import { EntryTable } from './entry-table.tsx'
import { ProposedRates } from './proposed-rates.tsx'
import './costing.css'

/** What a job under way took beside its estimate, and the forms to write it down. */
export function CostingPart() {
  const job = useJob((state) => state.design?.job ?? null)
  const estimate = useJob((state) => state.estimate)
  const book = useJob((state) => state.prices?.book ?? null)
  const held = useMemo((): Held | null => {
    if (job === null) return null
    if (estimate?.pricing == null || book === null) return keptIn(job)
    return heldAgainst({ ...estimate, job, pricing: estimate.pricing }, book)
  }, [job, estimate, book])
  if (job === null || held === null) return <p className="soft">Adding up.</p>
  return (
    <>
      {isBegun(job) ? <UnderWay job={job} held={held} /> : <BeginJob />}
      <ProposedRates />
    </>
  )
}

/** An entry that is being typed: a new one, or one of the list in its place. */
interface Typed {
  readonly draft: EntryDraft
  readonly at: number | null
}

function UnderWay({ job, held }: { readonly job: Job; readonly held: Held }) {
  const costing = useMemo(() => costJob(job, held), [job, held])
  const [bought, setBought] = useState<Typed>({ draft: { date: today() }, at: null })
  const [worked, setWorked] = useState<Typed>({ draft: { date: today() }, at: null })
  const { goods, works } = useMemo(() => namedLines(held.lines), [held])
  const named = [...goods, ...works]
  const form = (fields: EntryFields, typed: Typed, keep: (typed: Typed) => void) => ({
    fields,
    draft: typed.draft,
    at: typed.at,
    onDraft: (draft: EntryDraft) => keep({ ...typed, draft }),
    onEnd: (draft: EntryDraft) => keep({ draft, at: null }),
  })

  /** puts an entry of the list back into its form */
  function change(
    entry: Purchase | HoursWorked | undefined,
    at: number,
    keep: (typed: Typed) => void,
    first: string,
  ) {
    if (entry !== undefined) keep({ draft: draftOf(entry, named), at })
    document.getElementById(first)?.focus()
  }

  /** puts a line into the form it belongs to, and the focus on what is asked next */
  function pick(line: string) {
    const found = held.lines.find((one) => one.line === line)
    if (found === undefined) return
    const isWork = found.part === 'labour'
    const [typed, keep] = isWork ? [worked, setWorked] : [bought, setBought]
    keep({ draft: { ...typed.draft, what: found.what }, at: null })
    document.getElementById(isWork ? 'worked-hours' : 'bought-quantity')?.focus()
  }

  return (
    <>
      <CostingSummary job={job} costing={costing} />
      <section aria-labelledby="bought-title">
        <h2 id="bought-title">Bought</h2>
        <EntryForm list="bought" lines={named} {...form(PURCHASE_FIELDS, bought, setBought)} />
        <EntryTable
          list="bought"
          entries={job.costing.bought}
          lines={named}
          onChange={(at) => change(job.costing.bought[at], at, setBought, 'bought-what')}
        />
      </section>
      <section aria-labelledby="worked-title">
        <h2 id="worked-title">Worked</h2>
        <EntryForm list="worked" lines={works} {...form(HOURS_FIELDS, worked, setWorked)} />
        <EntryTable
          list="worked"
          entries={job.costing.worked}
          lines={named}
          onChange={(at) => change(job.costing.worked[at], at, setWorked, 'worked-what')}
        />
      </section>
      <CostedLines costing={costing} onPick={pick} />
      <BoardStates costing={costing} planned={job.cutting.unusableShare} />
    </>
  )
}
