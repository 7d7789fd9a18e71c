import type { ReactNode } from 'react'
import type { Estimate } from '../../../core/estimate-types.ts'
import { productName } from '../../../core/pricing/index.ts'
import { cents, printMoney, TICKS_PER_FOOT } from '../../../core/units/index.ts'
import { wasteOf } from '../../../core/waste.ts'
import { planId } from '../../../core/why-things.ts'
import { printHours, printPercent, printThousandths } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import type { Figure, Why } from '../../state/session-types.ts'
import { CheckList } from '../bench/check-list.tsx'
import { proofOf } from '../boards/proof.ts'
import { WhyButton } from './why-button.tsx'
import { WhyChain } from './why-chain.tsx'
import './why.css'

const TITLES: { readonly [figure in Figure]: string } = {
  cost: 'Why this cost',
  price: 'Why this price',
  'per square foot': 'Per square foot',
  order: 'Why this order',
  joints: 'Where the joints are',
  waste: 'What becomes of the lumber',
  checks: 'Checks',
  hours: 'Where the hours go',
}

/** What a figure of the sill is made of, or what caused a thing. */
export function WhyPanel({ why }: { readonly why: Why }) {
  const session = useSession()
  const estimate = useJob((state) => state.estimate)
  const checks = useJob((state) => state.design?.checks) ?? []
  return (
    <section className="group why" aria-labelledby="why-title">
      <h2 id="why-title">
        {typeof why === 'string' ? TITLES[why] : 'Why'}
        <button
          type="button"
          className="quiet"
          aria-label="Back to the fields"
          onClick={() => session.explain(null)}
        >
          ✕
        </button>
      </h2>
      {why === 'checks' ? (
        <CheckList checks={checks} />
      ) : estimate === null ? (
        <p className="soft">The estimate is not there yet.</p>
      ) : typeof why === 'string' ? (
        explain(why, estimate)
      ) : (
        <WhyChain key={why.id} estimate={estimate} id={why.id} />
      )}
    </section>
  )
}

function explain(why: Exclude<Figure, 'checks'>, estimate: Estimate): ReactNode {
  switch (why) {
    case 'cost':
      return <Money estimate={estimate} total="totals.cost" />
    case 'price':
      return (
        <Money
          estimate={estimate}
          total={estimate.pricing?.totals.priceTax === 0 ? 'totals.price' : 'totals.priceWithTax'}
        />
      )
    case 'per square foot':
      return <Money estimate={estimate} total="totals.perSquareFoot" />
    case 'order':
      return <Order estimate={estimate} />
    case 'joints':
      return <Joints estimate={estimate} />
    case 'waste':
      return <Waste estimate={estimate} />
    case 'hours':
      return <Hours estimate={estimate} />
  }
}

/** How each total came about, down to its lines; the sum itself stands first. */
function Money({ estimate, total }: { readonly estimate: Estimate; readonly total: string }) {
  const { pricing } = estimate
  if (!pricing) return <NoTotal estimate={estimate} />
  return (
    <>
      <WhyChain estimate={estimate} id={total} />
      <p className="soft">
        Each line is rounded once, to the cent. Prices of {pricing.bookName}, {pricing.bookDate}. Every line
        stands under Price.
      </p>
    </>
  )
}

function NoTotal({ estimate }: { readonly estimate: Estimate }) {
  const said = [
    ...estimate.infeasible.map((each) => `${each.subject}: ${each.message} ${each.help}`),
    ...estimate.priceFaults.map((each) => `${each.subject}: ${each.message} ${each.fix}`),
  ]
  return (
    <>
      <p>No total can be trusted yet:</p>
      <ul className="why-list">
        {said.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  )
}

function Order({ estimate }: { readonly estimate: Estimate }) {
  return estimate.plans.map((planned) => {
    const { product, plan } = planned
    return (
      <div key={plan.jobId} className="why-block">
        <h3>
          {product.size} {product.species}
          <span>{printMoney(plan.stockCost)}</span>
        </h3>
        <p>{plan.order.map((line) => `${line.count} × ${line.length / TICKS_PER_FOOT}'`).join(', ')}</p>
        <p className="soft">
          {proofOf(plan, estimate.job)} {plan.why} Least possible by the bound: {printMoney(plan.bound)}.
        </p>
        <WhyButton id={planId(planned)} of={productName(product)} />
      </div>
    )
  })
}

function Joints({ estimate }: { readonly estimate: Estimate }) {
  const runs = new Map(estimate.takeoff.runs.map((run) => [run.id, run]))
  const joints = estimate.plans.flatMap(({ plan }) => plan.joints)
  const byRun = [...Map.groupBy(joints, (joint) => joint.runId)]
  if (byRun.length === 0) return <p>There are none: every run comes whole from one board.</p>
  return byRun.map(([id, list]) => {
    const places = [...Map.groupBy(list, (joint) => joint.label)]
    const refused = runs.get(id)?.refused ?? []
    return (
      <div key={id} className="why-block">
        <h3>
          {runs.get(id)?.label ?? id}
          <span>{printMoney(cents(list.reduce((sum, joint) => sum + joint.cost, 0)))}</span>
        </h3>
        <WhyButton id={id} of={runs.get(id)?.label ?? id} />
        <p>{places.map(([label, at]) => (at.length > 1 ? `${label} (${at.length})` : label)).join(', ')}</p>
        {refused.length > 0 && (
          <details>
            <summary className="soft">Where none is allowed</summary>
            <ul className="why-list">
              {refused.map((point) => (
                <li key={`${point.at}`}>
                  {point.label}: {point.why}
                </li>
              ))}
            </ul>
          </details>
        )}
      </div>
    )
  })
}

function Waste({ estimate }: { readonly estimate: Estimate }) {
  const waste = wasteOf(estimate)
  const rows = [
    ['In the deck', waste.used],
    ['Offcuts worth keeping', waste.kept],
    ['Offcuts thrown away', waste.thrown],
    ['Saw kerfs', waste.kerf],
    ['End trims', waste.trim],
    ...(estimate.spares === null ? [] : [['Spare boards', waste.spares] as const]),
  ] as const
  return (
    <table className="table">
      <tbody>
        {rows.map(([label, length]) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{(length / TICKS_PER_FOOT).toFixed(1)} ft</td>
            <td>{printPercent(waste.bought === 0 ? 0 : (10_000 * length) / waste.bought)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function Hours({ estimate }: { readonly estimate: Estimate }) {
  const { pricing, takeoff } = estimate
  const labour = pricing?.lines.filter((line) => line.part === 'labour') ?? []
  return (
    <>
      {pricing && (
        <p>
          {printHours(pricing.totals.crewHours)} hours on the clock for the crew,{' '}
          {printHours(pricing.totals.workerHours)} paid worker hours.
        </p>
      )}
      <table className="table">
        <tbody>
          {labour.length > 0
            ? labour.map((line) => (
                <tr key={line.id}>
                  <th scope="row">{line.label}</th>
                  <td>{printThousandths(line.thousandths)} h</td>
                  <td>{printMoney(line.amount)}</td>
                  <td>
                    <WhyButton id={line.id} of={line.label} />
                  </td>
                </tr>
              ))
            : takeoff.tasks.map((task) => (
                <tr key={task.id}>
                  <th scope="row">{task.label}</th>
                  <td>
                    {printThousandths(task.thousandths)} {task.unit}
                  </td>
                </tr>
              ))}
        </tbody>
      </table>
      <p className="soft">
        Rates are from the price book. A finished job’s real hours are the better source.
      </p>
    </>
  )
}
