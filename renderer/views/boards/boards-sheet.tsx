import { useState } from 'react'
import { printMoney, TICKS_PER_FOOT } from '../../../core/units/index.ts'
import { useSize } from '../../drawing/use-size.ts'
import { Message } from '../../parts/message.tsx'
import { OrderChoice } from '../../parts/order-choice.tsx'
import { plural } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { useBoardIndex } from '../../state/use-derived.ts'
import { BOARD_ORDERS, type BoardOrder, groupBoards } from './board-groups.ts'
import { BoardStrip } from './board-strip.tsx'
import { DayProduct } from './day/day-product.tsx'
import { JointRuns } from './joints/joint-runs.tsx'
import { proofOf } from './proof.ts'
import { OrderList } from './wishes/order-list.tsx'
import './boards.css'

const NUMBERS = 128

/** The order and its cutting plan: each product with what to buy, then every board to scale. */
export function BoardsSheet() {
  const estimate = useJob((state) => state.estimate)
  const fresh = useJob((state) => state.estimateEdit === state.edit)
  const failure = useJob((state) => state.estimateFailure)
  const session = useSession()
  const atSaw = useJob((state) => state.atSaw)
  const index = useBoardIndex()
  const [order, setOrder] = useState<BoardOrder>('length')
  const [room, size] = useSize<HTMLDivElement>({ width: 540, height: 400 })
  if (!estimate || !index) {
    return (
      <section className="sheet-pane" aria-label="Boards" aria-busy={failure === null}>
        <h2>Boards</h2>
        {failure === null ? (
          <p className="soft">Working out the order and the cuts.</p>
        ) : (
          <Message tone="fails">{failure}</Message>
        )}
      </section>
    )
  }
  const longest = Math.max(
    ...estimate.plans.flatMap(({ plan }) => plan.boards.map((board) => board.length as number)),
    1,
  )
  return (
    <section
      className={fresh ? 'sheet-pane' : 'sheet-pane is-stale'}
      aria-label="Boards"
      tabIndex={0}
      ref={room}
    >
      {estimate.infeasible.map((each) => (
        <Message key={`${each.jobId} ${each.subject}`} tone="fails">
          {each.subject}: {each.message} {each.help}
        </Message>
      ))}
      <div className="boards-head">
        <button type="button" className="button" aria-pressed={atSaw} onClick={() => session.goToSaw(!atSaw)}>
          At the saw
        </button>
        {!atSaw && <OrderChoice of="Boards" orders={BOARD_ORDERS} order={order} onOrder={setOrder} />}
        {atSaw && (
          <p className="soft">
            Mark each board as it is sawn, say what went wrong, and plan the rest. The marks are kept with the
            job here; its file has none.
          </p>
        )}
      </div>
      {estimate.plans.map(
        (planned) =>
          atSaw && (
            <DayProduct
              key={planned.plan.jobId}
              planned={planned}
              longest={longest}
              width={Math.max(160, size.width - NUMBERS - 100)}
              memberOf={index.memberOf}
            />
          ),
      )}
      {!atSaw &&
        estimate.plans.map((planned) => {
          const { product, plan } = planned
          return (
            <section key={plan.jobId} className="boards-product">
              <h2>
                {product.size} {product.species} {product.grade}{' '}
                <span className="soft">{product.treatment}</span>
              </h2>
              <OrderList job={estimate.job} planned={planned} />
              <p className="soft">{proofOf(plan, estimate.job)}</p>
              <ul className="boards-list">
                {groupBoards(plan, { order }).map((group) => (
                  <li key={group.key}>
                    <span className="boards-number">
                      {group.boards.length > 1 && <strong>{group.boards.length} × </strong>}
                      {group.length / TICKS_PER_FOOT}'{' '}
                      <span className="soft">no. {numbers(group.boards.map((board) => board.number))}</span>
                    </span>
                    <BoardStrip
                      group={group}
                      longest={longest}
                      width={Math.max(200, size.width - NUMBERS - 40)}
                      memberOf={index.memberOf}
                    />
                  </li>
                ))}
              </ul>
              <p className="soft">
                {plural(plan.boards.length, 'board')}, {plural(plan.joints.length, 'joint')}
                {plan.jointCost > 0 && ` (${printMoney(plan.jointCost)} in plates, nails and minutes)`}
              </p>
              <JointRuns estimate={estimate} planned={planned} />
            </section>
          )
        })}
    </section>
  )
}

/** Board numbers as a range where they follow each other. */
export function numbers(of: readonly number[]): string {
  const [first] = of
  const last = of.at(-1)
  if (first === undefined || last === undefined) return ''
  if (of.length > 1 && last - first === of.length - 1) return `${first}–${last}`
  return of.length > 3 ? `${first} …` : of.join(', ')
}
