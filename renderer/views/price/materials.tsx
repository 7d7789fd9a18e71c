import { useMemo } from 'react'
import { type Job, setField } from '../../../core/job/index.ts'
import type { PriceBook, Totals } from '../../../core/pricing/index.ts'
import { cents, printMoney, printMoneyChange } from '../../../core/units/index.ts'
import { type MaterialChoice, materialChoices } from '../../state/material-choices.ts'
import { useJob, useSession } from '../../state/session-context.ts'

/** The deck in every material that the price book has, priced side by side when asked; one of them is taken by a click. */
export function Materials({
  job,
  book,
  totals,
}: {
  readonly job: Job
  readonly book: PriceBook
  readonly totals: Totals
}) {
  const session = useSession()
  const [present, ...others] = useMemo(() => materialChoices(job, book), [job, book])
  const edit = useJob((state) => state.edit)
  const answers = useJob((state) => state.wishPrices)
  if (present === undefined || others.length === 0) return null
  const basis = job.builder === 'owner' ? 'cost' : 'price'
  const asked = others.some(({ key }) => answers[key]?.edit === edit)

  function take({ name, changes }: MaterialChoice) {
    const { present: before } = session.store.getState().history
    session.restate(
      changes.reduce((statement, { path, value }) => setField(statement, path, value), before),
      name,
    )
  }

  return (
    <section aria-labelledby="materials-title">
      <h2 id="materials-title">Materials side by side</h2>
      <p className="soft">
        The same deck walked on otherwise, each estimated whole: boards, joints, fasteners and hours. Joists
        that stand too wide for thinner boards are told by the checks once it is taken.
      </p>
      {!asked && (
        <button
          type="button"
          className="button"
          onClick={() => {
            for (const { key, changes } of others) void session.priceChanges(key, changes)
          }}
        >
          Price {others.length + 1} materials
        </button>
      )}
      {asked && (
        <table className="table">
          <caption className="unseen">Materials and their {basis}</caption>
          <thead>
            <tr>
              <th scope="col">Material</th>
              <th scope="col">{basis === 'cost' ? 'Cost' : 'Price'}</th>
              <th scope="col">Difference</th>
              <th scope="col">
                <span className="unseen">Take</span>
              </th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{present.name}</th>
              <td>{printMoney(totals[basis])}</td>
              <td>as it is</td>
              <td />
            </tr>
            {others.map((choice) => {
              const answer = answers[choice.key]
              const price = answer?.edit === edit ? answer.price : null
              return (
                <tr key={choice.key}>
                  <th scope="row">{choice.name}</th>
                  {price === null && <td colSpan={2}>working it out</td>}
                  {price?.ok === false && <td colSpan={2}>{price.message}</td>}
                  {price?.ok === true && (
                    <>
                      <td>{printMoney(cents(totals[basis] + price[basis]))}</td>
                      <td>{printMoneyChange(price[basis])}</td>
                    </>
                  )}
                  <td>
                    <button
                      type="button"
                      className="link"
                      aria-label={`Take ${choice.name}`}
                      onClick={() => take(choice)}
                    >
                      Take it
                    </button>
                  </td>
                </tr>
              )
            })}
          </tbody>
        </table>
      )}
    </section>
  )
}
