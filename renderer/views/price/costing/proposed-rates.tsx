import { useEffect, useState } from 'react'
import type { ProposedRate } from '../../../../core/costing/index.ts'
import { PlainTable } from '../../../parts/plain-table.tsx'
import { plural, printThousandths } from '../../../state/print.ts'
import { useJob, useSession } from '../../../state/session-context.ts'

/** Crew hours per unit as the price book has them. */
const HOUR = 100_000

/** What finished jobs teach: by task, hours estimated and worked, and the rate that would have been right. */
export function ProposedRates() {
  const session = useSession()
  const [rates, setRates] = useState<readonly ProposedRate[]>([])
  const saving = useJob((state) => state.saving.state)
  const book = useJob((state) => state.prices?.book)
  const lastChange = useJob((state) => state.prices?.lastChange ?? null)
  const finished = useJob((state) => state.design?.job.costing.finished ?? '')

  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again where the book, or what is saved of the jobs, is another
  useEffect(() => {
    if (saving !== 'saved') return
    let gone = false
    void session.proposedRates().then((proposed) => {
      if (!gone && proposed !== null) setRates(proposed)
    })
    return () => {
      gone = true
    }
  }, [session, saving, book, finished])

  if (rates.length === 0)
    return finished === '' ? null : (
      <p className="soft">
        Hours on tasks of the estimate teach the price book’s rates: this job has none written down.
      </p>
    )
  return (
    <section aria-labelledby="rates-title">
      <h2 id="rates-title">Rates that finished jobs propose</h2>
      <p className="soft">
        Crew hours for one unit, freed of what each job’s own conditions made longer. Few jobs prove little:
        nothing is changed until you take a rate.
      </p>
      <PlainTable
        titled="rates-title"
        caption="Rates proposed by finished jobs"
        headings={['Task', 'Estimated', 'Worked', 'In the book', 'Proposed']}
        tools="Take"
      >
        {rates.map((rate) => (
          <tr key={rate.rate}>
            <th scope="row">
              {rate.label}
              <span className="costing-under">
                {plural(rate.jobs.length, 'job')}
                {rate.jobs.length > 1 && `, from ${hours(rate.least)} to ${hours(rate.greatest)}`}
              </span>
            </th>
            <td>{printThousandths(rate.estimated)} h</td>
            <td>{printThousandths(rate.worked)} h</td>
            <td>{hours(rate.now)}</td>
            <td>
              {hours(rate.proposed)}
              <span className="costing-under">per {rate.unit}</span>
            </td>
            <td>
              {rate.proposed === rate.now ? (
                'taken'
              ) : (
                <button
                  type="button"
                  className="button"
                  aria-label={`Take the rate of ${rate.label}`}
                  onClick={() => void session.takeRate(rate)}
                >
                  Take
                </button>
              )}
            </td>
          </tr>
        ))}
      </PlainTable>
      {lastChange?.startsWith('Rate of ') === true && (
        <p>
          <button type="button" className="button" onClick={() => void session.takePricesBack()}>
            Take back “{lastChange}”
          </button>
        </p>
      )}
    </section>
  )
}

function hours(crewHours: number): string {
  return `${crewHours / HOUR} h`
}
