import { useEffect } from 'react'
import type { Job } from '../../../../core/job/index.ts'
import { productName } from '../../../../core/pricing/index.ts'
import { printLength } from '../../../../core/units/index.ts'
import { useJob, useSession } from '../../../state/session-context.ts'
import { AddOffcuts } from './add-offcuts.tsx'
import { TakeOffcuts } from './take-offcuts.tsx'
import { togetherOf } from './together.ts'
import './rack.css'

/** The offcuts kept from job to job: what is on hand, more to be added, and those that this job leaves. */
export function Rack({ job }: { readonly job: Job }) {
  const session = useSession()
  const offcuts = useJob((state) => state.offcuts)
  useEffect(() => {
    void session.listOffcuts()
  }, [session])
  return (
    <section className="group" aria-labelledby="rack-title">
      <h2 id="rack-title">Offcuts on hand</h2>
      {offcuts === null ? (
        <p className="soft">Reading the rack.</p>
      ) : offcuts.length === 0 ? (
        <p className="soft">None. What you keep from a job can be cut in the next one at no cost.</p>
      ) : (
        <ul className="rack-list">
          {togetherOf(offcuts).map(({ key, product, length, ids, from }) => {
            const name = `${productName(product)}, ${printLength(length)}`
            return (
              <li key={key}>
                <span>
                  <strong>{ids.length}</strong> × {printLength(length)} {product.size}{' '}
                  <span className="soft">
                    {product.species} {product.grade} {product.treatment}
                    {from !== '' && `, of ${from}`}
                  </span>
                </span>
                <button
                  type="button"
                  className="quiet"
                  aria-label={`Take one off the rack: ${name}`}
                  title="Take one off the rack"
                  onClick={() => void session.removeOffcuts(ids.slice(-1))}
                >
                  −
                </button>
                <button
                  type="button"
                  className="quiet"
                  aria-label={`Take all off the rack: ${name}`}
                  title="Take all off the rack"
                  onClick={() => void session.removeOffcuts(ids)}
                >
                  ✕
                </button>
              </li>
            )
          })}
        </ul>
      )}
      {!job.cutting.useOffcuts && offcuts !== null && offcuts.length > 0 && (
        <p className="soft">This job is not cut from them: see the fields under Cutting.</p>
      )}
      <AddOffcuts />
      <TakeOffcuts job={job} />
    </section>
  )
}
