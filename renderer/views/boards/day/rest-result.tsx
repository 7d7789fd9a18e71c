import type { ReactNode } from 'react'
import type { Board, BoardCount, CutPlan, DayState, Replan } from '../../../../core/cutting/index.ts'
import { restBoards } from '../../../../core/papers/index.ts'
import type { ProductRest } from '../../../../core/plan-the-rest.ts'
import { cents, printMoney } from '../../../../core/units/index.ts'
import { plural, printDifference } from '../../../state/print.ts'
import { BoardStrip } from '../board-strip.tsx'
import { printStock } from '../print-stock.ts'
import { rangesOf } from './ranges.ts'
import { sameLengths } from './same-lengths.ts'

/** room that a label takes more than a board's number does, px; see day.css */
const LABEL = 60

interface Room {
  readonly longest: number
  readonly width: number
  readonly memberOf: ReadonlyMap<string, string>
}

/** The rest as it is planned now: the cheapest way, and beside it the one that changes fewer boards. */
export function RestResult({
  answer,
  day,
  ...room
}: { readonly answer: ProductRest; readonly day: DayState } & Room) {
  const { replan } = answer
  const { fewerChanges } = replan
  return (
    <div className="rest" role="region" aria-label={`The rest of ${answer.label}`}>
      <Way
        title={fewerChanges === null ? 'The rest' : 'The cheapest way'}
        plan={answer.plan}
        day={day}
        replan={replan}
        {...room}
      />
      {fewerChanges === null ? (
        <p className="soft">There is no way that changes fewer boards.</p>
      ) : (
        <details className="folded">
          <summary>
            Fewer changes: {plural(fewerChanges.changed.length, 'board')} instead of {replan.changed.length},
            for {printMoney(cents(fewerChanges.money.extra - replan.money.extra))} more
          </summary>
          <Way title="Fewer changes" plan={answer.plan} day={day} replan={fewerChanges} {...room} />
        </details>
      )}
    </div>
  )
}

function Way({
  title,
  plan,
  day,
  replan,
  ...room
}: {
  readonly title: string
  readonly plan: CutPlan
  readonly day: DayState
  readonly replan: Replan
} & Room) {
  const { money, changed } = replan
  const same = sameLengths(plan, day, replan)
  return (
    <>
      <h3>{title}</h3>
      <p className="soft">{replan.why}</p>
      <dl className="rest-sums">
        <Sum label="Boards that change">
          {changed.length === 0 ? 'none' : `${changed.length}: no. ${rangesOf(changed)}`}
          {same > 0 && `; ${same} of them cut to the same lengths under other marks`}
        </Sum>
        <Sum label="Still to buy">{countsOf(replan.buy)}</Sum>
        <Sum label="More than planned">{countsOf(replan.more)}</Sum>
        <Sum label="No longer to be bought">{countsOf(replan.notToBuy)}</Sum>
        <Sum label="Can go back">
          {countsOf(replan.over)}
          {replan.over.length > 0 &&
            (money.refund > 0 ? `, for ${printMoney(money.refund)}` : ', for nothing as the yard is stated')}
        </Sum>
        <Sum label="Still to pay">{printMoney(money.now)}</Sum>
        {money.joints !== 0 && (
          <Sum label="Joints against the plan">
            {printDifference(money.joints, (size) => printMoney(cents(size)))}
          </Sum>
        )}
        <Sum label="Extra cost">
          <strong>{printMoney(money.extra)}</strong>
        </Sum>
      </dl>
      <Boards replan={replan} {...room} />
    </>
  )
}

function Sum({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{children}</dd>
    </div>
  )
}

/** What is cut otherwise, and from what. */
function Boards({ replan, longest, width, memberOf }: { readonly replan: Replan } & Room) {
  const boards = restBoards(replan)
  if (boards.length === 0) return null
  return (
    <ul className="boards-list rest-boards">
      {boards.map(({ from, board }) => (
        <li key={board.number}>
          <span>{from}</span>
          <BoardStrip
            group={groupOf(board)}
            longest={longest}
            width={Math.max(160, width - LABEL)}
            memberOf={memberOf}
          />
        </li>
      ))}
    </ul>
  )
}

function groupOf(board: Board) {
  return { key: `${board.number}`, length: board.length, boards: [board] }
}

function countsOf(lines: readonly BoardCount[]): string {
  return lines.length === 0
    ? 'nothing'
    : lines.map(({ count, length }) => `${count} × ${printStock(length)}`).join(', ')
}
