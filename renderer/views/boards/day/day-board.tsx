import { useState } from 'react'
import type { Board, DayState } from '../../../../core/cutting/index.ts'
import { forgive, isSawn, markSawn } from '../../../state/saw-day.ts'
import { BoardStrip } from '../board-strip.tsx'
import { printStock } from '../print-stock.ts'
import { BoardTrouble } from './board-trouble.tsx'
import { troublesOf } from './troubles.ts'

/** One board at the saw: sawn or not, what went wrong with it, and the way to say so. */
export function DayBoard({
  board,
  day,
  longest,
  width,
  memberOf,
  onDay,
}: {
  readonly board: Board
  readonly day: DayState
  readonly longest: number
  readonly width: number
  readonly memberOf: ReadonlyMap<string, string>
  onDay(day: DayState): void
}) {
  const [open, setOpen] = useState(false)
  const { number, length } = board
  const troubles = troublesOf(board, day)
  const name = `Board ${number}, ${printStock(length)}`
  return (
    <li className={troubles.length > 0 ? 'day-board has-trouble' : 'day-board'}>
      <label className="boards-number">
        <input
          type="checkbox"
          checked={isSawn(day, number)}
          aria-label={`${name} is sawn`}
          onChange={(event) => onDay(markSawn(day, number, event.target.checked))}
        />{' '}
        {printStock(length)} <span className="soft">no. {number}</span>
      </label>
      <BoardStrip
        group={{ key: `${number}`, length, boards: [board] }}
        longest={longest}
        width={width}
        memberOf={memberOf}
      />
      <button
        type="button"
        className="button"
        aria-expanded={open}
        aria-label={`Wrong? Board ${number}`}
        onClick={() => setOpen(!open)}
      >
        Wrong?
      </button>
      {troubles.length > 0 && (
        <p className="day-trouble">
          <span aria-hidden="true">▲</span> {troubles.join('; ')}{' '}
          <button
            type="button"
            className="link"
            aria-label={`Take back what is wrong with board ${number}`}
            onClick={() => onDay(forgive(day, number))}
          >
            Take back
          </button>
        </p>
      )}
      {open && (
        <BoardTrouble
          board={board}
          day={day}
          onDay={(next) => {
            onDay(next)
            setOpen(false)
          }}
        />
      )}
    </li>
  )
}
