import { useState } from 'react'
import type { CutListResult, ListPlan } from '../../../core/cut-list/index.ts'
import { cutWords, listCost } from '../../../core/papers/index.ts'
import { printLength, TICKS_PER_FOOT, type Ticks } from '../../../core/units/index.ts'
import { useSize } from '../../drawing/use-size.ts'
import { Message } from '../../parts/message.tsx'
import { OrderChoice } from '../../parts/order-choice.tsx'
import { plural } from '../../state/print.ts'
import { BOARD_ORDERS, type BoardOrder, groupBoards } from '../boards/board-groups.ts'
import { BoardStrip } from '../boards/board-strip.tsx'
import { numbers } from '../boards/boards-sheet.tsx'
import '../boards/boards.css'

/** Groups of boards drawn; a list of thousands is for the CSV file. */
const DRAWN = 200
/** width of a board's count, length and number in boards.css, px */
const NUMBERS = 128
const NO_MEMBERS: ReadonlyMap<string, string> = new Map()

/** Each product of a list: what to buy, how good that is, and every board to scale. */
export function ListResult({ result }: { readonly result: CutListResult }) {
  const [room, size] = useSize<HTMLDivElement>({ width: 540, height: 400 })
  const [order, setOrder] = useState<BoardOrder>('length')
  const longest = Math.max(
    1,
    ...result.plans.flatMap(({ plan }) => plan.boards.map(({ length }) => length as number)),
  )
  return (
    <div ref={room}>
      {result.infeasible.map((each) => (
        <Message key={`${each.jobId} ${each.subject}`} tone="fails">
          {each.message} {each.help}
        </Message>
      ))}
      {result.remarks.map((remark) => (
        <p key={remark} className="soft">
          {remark}
        </p>
      ))}
      {result.book !== null && (
        <p className="soft">
          Prices of {result.book.name}, {result.book.date}
          {result.book.invented && '; they are invented: give your yard’s before you rely on a figure'}.
        </p>
      )}
      {result.plans.length > 0 && (
        <OrderChoice of="Boards" orders={BOARD_ORDERS} order={order} onOrder={setOrder} />
      )}
      {result.plans.map((each) => {
        const groups = groupBoards(each.plan, { byMark: true, order })
        return (
          <section key={each.plan.jobId} className="boards-product">
            <h2>{each.product === '' ? 'Boards' : each.product}</h2>
            <Order {...each} />
            <p className="soft">{proofOf(each)}</p>
            <CutInPlace {...each} />
            <ul className="boards-list">
              {groups.slice(0, DRAWN).map((group) => (
                <li key={group.key}>
                  <span className="boards-number">
                    {group.boards.length > 1 && <strong>{group.boards.length} × </strong>}
                    {stockLength(group.length as Ticks)}{' '}
                    <span className="soft">no. {numbers(group.boards.map((board) => board.number))}</span>
                  </span>
                  <BoardStrip
                    group={group}
                    longest={longest}
                    width={Math.max(200, size.width - NUMBERS - 12)}
                    memberOf={NO_MEMBERS}
                  />
                </li>
              ))}
            </ul>
            <p className="soft">
              {plural(each.plan.boards.length, 'board')}
              {groups.length > DRAWN &&
                `; the first ${DRAWN} ways of cutting are drawn, the CSV file has all`}
            </p>
          </section>
        )
      })}
    </div>
  )
}

function Order({ stock, plan, lengthUnit }: ListPlan) {
  return (
    <ul className="boards-order">
      {plan.order.map((line) => {
        const named = stock.find(({ id }) => id === line.stockId)
        return (
          <li key={line.stockId}>
            <strong>{line.count}</strong> × {stockLength(line.length)}{' '}
            <span className="soft">
              {named?.offcut === true
                ? 'on hand'
                : lengthUnit === null
                  ? listCost({ lengthUnit }, line.amount)
                  : ''}
            </span>
          </li>
        )
      })}
      <li className="boards-sum">{listCost({ lengthUnit }, plan.stockCost)}</li>
    </ul>
  )
}

/** Which pieces run wild, and to what they are cut in place. */
function CutInPlace({ plan }: ListPlan) {
  const cuts = plan.boards.flatMap((board) => board.cuts)
  const words = cuts.flatMap((cut) => (cut.wild === undefined ? [] : [cutWords(cut)]))
  if (words.length === 0) return null
  return <p>Cut in place: {[...new Set(words)].slice(0, DRAWN).join('; ')}.</p>
}

function proofOf({ lengthUnit, plan }: ListPlan): string {
  const gap = listCost({ lengthUnit }, plan.gap)
  const [costs, verb] = lengthUnit === null ? ['costs', 'cost'] : ['is', 'be']
  switch (plan.status) {
    case 'proven optimal':
      return `Proven: no order of these lengths ${costs} less.`
    case 'feasible':
      return `No order can ${verb} more than ${gap} less than this one.`
    case 'stopped':
      return `Stopped before its proof: up to ${gap} might still be saved.`
  }
}

function stockLength(length: Ticks): string {
  return length % TICKS_PER_FOOT === 0 ? `${length / TICKS_PER_FOOT}'` : printLength(length)
}
