import type { ReactNode } from 'react'
import { cents, printMoney, printShare } from '../../../core/units/index.ts'
import { MarkSign } from '../../parts/mark-sign.tsx'
import { countMarks, figuresOf } from '../../state/figures.ts'
import { plural, printDifference, printDollars, printHours, printPercent } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import type { Figure as FigureName } from '../../state/session-types.ts'
import { Working } from '../working/working.tsx'
import './sill.css'

/** The strip at the bottom: what the deck costs and holds, what the last step changed, and a way to each why. */
export function Sill() {
  const estimate = useJob((state) => state.estimate)
  const fresh = useJob((state) => state.estimate !== null && state.estimateEdit === state.edit)
  const failure = useJob((state) => state.estimateFailure)
  const news = useJob((state) => state.news)
  const checks = useJob((state) => state.design?.checks) ?? []
  const figures = estimate && figuresOf(estimate)
  const totals = estimate?.pricing?.totals
  const marks = countMarks(checks)
  const owner = totals?.method === 'none'
  const priceLabel = totals && !owner ? `Price, ${printShare(totals.methodShare)} ${totals.method}` : 'Price'
  const nothing = estimate && !figures ? 'not known' : '…'

  return (
    <footer
      className={fresh && failure === null ? 'sill' : 'sill is-stale'}
      aria-label="The estimate"
      aria-busy={!fresh}
    >
      <Figure
        why="cost"
        label="Cost"
        value={figures ? printDollars(figures.cost) : nothing}
        news={news && moved(news.cost)}
        good={news !== null && news.cost < 0}
      />
      {!owner && (
        <Figure
          why="price"
          label={priceLabel}
          value={figures ? printDollars(figures.price) : nothing}
          news={news && moved(news.price)}
          good={news !== null && news.price < 0}
        />
      )}
      <Figure
        why="per square foot"
        label={owner ? 'Cost per square foot' : 'per square foot'}
        value={figures ? printMoney(cents(figures.perSquareFoot)) : nothing}
        news={
          news && news.perSquareFoot !== 0
            ? printDifference(news.perSquareFoot, (size) => printMoney(cents(size)))
            : null
        }
        good={news !== null && news.perSquareFoot < 0}
      />
      <Figure
        why="order"
        label="Order"
        value={figures ? plural(figures.boards, 'board') : nothing}
        aside={
          figures
            ? figures.proven
              ? 'least possible, proven'
              : `${figures.stopped ? 'stopped; ' : ''}at most ${printDollars(figures.gap)} above the least`
            : null
        }
        asideGood={figures?.proven ?? false}
        news={news && news.boards !== 0 ? printDifference(news.boards, String) : null}
      />
      <Figure
        why="joints"
        label="Joints in all"
        value={figures ? `${figures.joints}` : nothing}
        news={news && news.joints !== 0 ? printDifference(news.joints, String) : null}
      />
      <Figure why="waste" label="Waste" value={figures ? printPercent(figures.waste) : nothing} />
      <Figure
        why="checks"
        label="Checks"
        value={
          <span className="sill-marks">
            <span>
              <MarkSign mark="passes" /> {marks.passes}
            </span>
            <span className={marks.near > 0 ? 'mark-near' : undefined}>
              <MarkSign mark="near" /> {marks.near}
            </span>
            <span className={marks.fails > 0 ? 'mark-fails' : undefined}>
              <MarkSign mark="fails" /> {marks.fails}
            </span>
          </span>
        }
      />
      <Figure why="hours" label="Crew hours" value={figures ? printHours(figures.crewHours) : nothing} />
      <div className="sill-working">
        <Working kind="estimate" what="Cutting and pricing." />
      </div>
      {failure !== null && (
        <p className="sill-failure" role="alert">
          ▲ {failure}
        </p>
      )}
    </footer>
  )
}

function moved(amount: number): string | null {
  return amount === 0 ? null : printDifference(amount, printDollars)
}

function Figure(props: {
  readonly why: FigureName
  readonly label: string
  readonly value: ReactNode
  readonly news?: string | null
  readonly good?: boolean
  readonly aside?: string | null
  readonly asideGood?: boolean
}) {
  const session = useSession()
  const open = useJob((state) => state.why === props.why)
  return (
    <button
      type="button"
      className={`figure figure-${props.why.replaceAll(' ', '-')}`}
      aria-expanded={open}
      title="Why?"
      onClick={() => session.explain(open ? null : props.why)}
    >
      <span className="figure-label">{props.label}</span>
      <span className="figure-value">
        {props.value}
        {props.aside && (
          <span className={props.asideGood ? 'figure-news good' : 'figure-news'}> {props.aside}</span>
        )}
      </span>
      {props.news && (
        <span className={props.good ? 'figure-news is-change good' : 'figure-news is-change'}>
          {' '}
          {props.news}
        </span>
      )}
    </button>
  )
}
