import { useMemo } from 'react'
import type { DayState } from '../../../../core/cutting/index.ts'
import type { Planned } from '../../../../core/estimate-types.ts'
import { productKey, productName } from '../../../../core/pricing/index.ts'
import { Message } from '../../../parts/message.tsx'
import { boardsOf, hasBegun, isSawn, marked, newDay, takenBack } from '../../../state/saw-day.ts'
import { useJob, useSession } from '../../../state/session-context.ts'
import { Working } from '../../working/working.tsx'
import { DayBoard } from './day-board.tsx'
import { RestResult } from './rest-result.tsx'
import { YardForm } from './yard-form.tsx'
import './day.css'

/** The boards of one product one by one: what became of each, what the yard has, and a plan of the rest. */
export function DayProduct({
  planned,
  longest,
  width,
  memberOf,
}: {
  readonly planned: Planned
  readonly longest: number
  readonly width: number
  readonly memberOf: ReadonlyMap<string, string>
}) {
  const session = useSession()
  const { plan, product } = planned
  const known = useJob((state) => state.sawDays[plan.jobId])
  const spareLines = useJob((state) => state.estimate?.spares?.lines)
  const present = useMemo(() => boardsOf(plan), [plan])
  const fresh = useMemo(() => {
    const own = spareLines?.filter(({ classId }) => classId === productKey(product)) ?? []
    return newDay(
      plan,
      own.map(({ stockId, count }) => ({ stockId, count })),
    )
  }, [plan, product, spareLines])
  const name = productName(product)
  if (known !== undefined && known.boards !== present && hasBegun(known)) {
    return (
      <section className="boards-product" aria-label={name}>
        <h2>{name}</h2>
        <Message
          tone="near"
          action={{ label: 'Start the day again', run: () => session.setDay(plan.jobId, null) }}
        >
          The job’s boards have changed since the first of these was marked. Undo the change to go on with
          them.
        </Message>
      </section>
    )
  }
  const state = known !== undefined && known.boards === present ? known : fresh
  const { day } = state
  const change = (next: DayState) => session.setDay(plan.jobId, marked(state, next))
  const sawn = plan.boards.filter((board) => isSawn(day, board.number)).length
  return (
    <section className="boards-product day" aria-label={name}>
      <h2>
        {name}{' '}
        <span>
          {sawn} of {plan.boards.length} sawn
        </span>
      </h2>
      <ul
        className="boards-list"
        onKeyDown={(event) => {
          if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return
          const boxes = [...event.currentTarget.querySelectorAll<HTMLElement>('input[type="checkbox"]')]
          const at = boxes.indexOf(event.target as HTMLElement)
          const next = at < 0 ? undefined : boxes[at + (event.key === 'ArrowDown' ? 1 : -1)]
          if (next === undefined) return
          event.preventDefault()
          next.focus()
        }}
      >
        {plan.boards.map((board) => (
          <DayBoard
            key={board.number}
            board={board}
            day={day}
            longest={longest}
            width={width}
            memberOf={memberOf}
            onDay={change}
          />
        ))}
      </ul>
      <YardForm planned={planned} day={day} onDay={change} />
      <div className="day-actions">
        <button
          type="button"
          className="button button-main"
          disabled={state.running}
          onClick={() => {
            session.setDay(plan.jobId, state)
            void session.planTheRest(plan.jobId)
          }}
        >
          Plan the rest again
        </button>
        {state.earlier.length > 0 && (
          <button
            type="button"
            className="button"
            onClick={() => session.setDay(plan.jobId, takenBack(state))}
          >
            Take back the last mark
          </button>
        )}
        {hasBegun(state) && (
          <button type="button" className="button" onClick={() => change(fresh.day)}>
            Start the day again
          </button>
        )}
        {state.running && <Working kind="the rest" what="Planning the rest." />}
      </div>
      {state.failure !== null && <Message tone="fails">{state.failure}</Message>}
      {state.answer !== null && (
        <div className={state.answered === day ? undefined : 'is-stale'} aria-busy={state.running}>
          {state.answered !== day && <p className="soft">Something was marked since: plan the rest again.</p>}
          {state.answer.ok ? (
            <RestResult
              answer={state.answer}
              day={state.answered ?? day}
              longest={longest}
              width={width}
              memberOf={memberOf}
            />
          ) : (
            state.answer.reasons.map((reason) => (
              <Message key={reason} tone="fails">
                {reason}
              </Message>
            ))
          )}
        </div>
      )}
    </section>
  )
}
