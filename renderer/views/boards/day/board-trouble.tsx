import { useId, useState } from 'react'
import type { Board, DayState } from '../../../../core/cutting/index.ts'
import { printLength, ticks } from '../../../../core/units/index.ts'
import { cull, isSawn, spoil } from '../../../state/saw-day.ts'
import { readPlace } from './read-entries.ts'

/** Says what is wrong with a board: all of it, a stretch of it, or a piece that was sawn from it. */
export function BoardTrouble({
  board,
  day,
  onDay,
}: {
  readonly board: Board
  readonly day: DayState
  onDay(day: DayState): void
}) {
  const id = useId()
  const [from, setFrom] = useState('')
  const [to, setTo] = useState('')
  const [pieceId, setPiece] = useState(board.cuts[0]?.pieceId ?? '')
  const [length, setLength] = useState('')
  const [fault, setFault] = useState<string | null>(null)
  const { number } = board
  const piece = board.cuts.find((cut) => cut.pieceId === pieceId)

  function cullStretch() {
    const start = from.trim() === '' ? { ok: true as const, value: ticks(0) } : readPlace(from, board.length)
    const end = to.trim() === '' ? { ok: true as const, value: board.length } : readPlace(to, board.length)
    if (!start.ok) return setFault(start.error)
    if (!end.ok) return setFault(end.error)
    if (start.value >= end.value)
      return setFault('The stretch ends before it begins: give the smaller first.')
    onDay(cull(day, number, start.value, end.value))
  }

  function cameOut() {
    if (piece === undefined) return
    const read = readPlace(length, board.length)
    if (!read.ok) return setFault(read.error)
    if (read.value === 0)
      return setFault('A piece has a length: write one such as 3 ft 6 in, or say it is lost.')
    if (read.value === piece.length)
      return setFault(`${printLength(read.value)} is what ${piece.mark} should be: mark the board as sawn.`)
    onDay(spoil(day, number, piece.pieceId, read.value))
  }

  return (
    <div className="entry-form day-wrong" role="group" aria-label={`What is wrong with board ${number}`}>
      {fault !== null && (
        <p id={id} className="field-fault" role="alert">
          <span aria-hidden="true">▲</span> {fault}
        </p>
      )}
      <div>
        {!isSawn(day, number) && (
          <button
            type="button"
            className="button"
            onClick={() => onDay(cull(day, number, ticks(0), board.length))}
          >
            Cull the whole board
          </button>
        )}
        <label>
          <span>Bad from</span>
          <input
            value={from}
            placeholder="its left end"
            aria-describedby={fault === null ? undefined : id}
            onChange={(event) => setFrom(event.target.value)}
          />
        </label>
        <label>
          <span>to</span>
          <input
            value={to}
            placeholder="its right end"
            aria-describedby={fault === null ? undefined : id}
            onChange={(event) => setTo(event.target.value)}
          />
        </label>
        <button type="button" className="button" onClick={cullStretch}>
          Cull this stretch
        </button>
      </div>
      <div>
        <label>
          <span>Piece</span>
          <select value={pieceId} onChange={(event) => setPiece(event.target.value)}>
            {board.cuts.map((cut) => (
              <option key={cut.pieceId} value={cut.pieceId}>
                {cut.mark}, {printLength(cut.length)}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>came out at</span>
          <input
            value={length}
            placeholder="3 ft 6 in"
            aria-describedby={fault === null ? undefined : id}
            onChange={(event) => setLength(event.target.value)}
          />
        </label>
        <button type="button" className="button" onClick={cameOut}>
          Came out wrong
        </button>
        <button
          type="button"
          className="button"
          onClick={() => piece && onDay(spoil(day, number, piece.pieceId, null))}
        >
          Is lost
        </button>
      </div>
    </div>
  )
}
