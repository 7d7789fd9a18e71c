import { printLength } from '../../../core/units/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { holeColumns } from './hole-columns.ts'
import { holesOf } from './holes.ts'

/** The hole schedule: where each centre lies, what proves it, how deep, what goes in. */
export function GroundSheet() {
  const session = useSession()
  const design = useJob((state) => state.design)
  const selected = useJob((state) => state.selected)
  if (!design) return null
  const { frame, takeoff } = design
  const { volumes } = takeoff
  const holes = holesOf(design)
  const { columns, same } = holeColumns(holes)
  return (
    <section className="sheet-pane" aria-labelledby="holes-title" tabIndex={0}>
      <p className="caution">
        <span aria-hidden="true">▲</span> Have utilities marked before digging: call your local one-call
        centre (811 in the United States). Frost depth, soil and snow are local facts; local code and the
        building official govern.
      </p>
      <h2 id="holes-title">Holes</h2>
      <div className="scroll-x" role="group" aria-labelledby="holes-title">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Hole</th>
              {columns.map(({ label }) => (
                <th key={label} scope="col">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {holes.map((hole) => (
              <tr
                key={hole.id}
                className={hole.id === selected ? 'is-chosen' : undefined}
                onPointerEnter={() => session.hover(hole.id)}
                onPointerLeave={() => session.hover(null)}
              >
                <th scope="row">
                  <button
                    type="button"
                    className="link"
                    aria-pressed={hole.id === selected}
                    onClick={() => session.select(hole.id)}
                  >
                    {hole.number}
                  </button>
                </th>
                {columns.map(({ label, read }) => (
                  <td key={label}>{read(hole)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {same.length > 0 && <p>Every one: {same.join(', ')}.</p>}
      <p>
        <strong>{volumes.bags} bags</strong> of mix for {volumes.concrete.toFixed(2)} cu ft of concrete, waste
        counted once for all. Dug: {volumes.holes.toFixed(1)} cu ft; left over, loose:{' '}
        {volumes.spoilLoose.toFixed(1)} cu ft.
      </p>
      <p className="soft">
        Offsets are from the deck’s left corner at the wall to hole centres. The frame is square when both
        long diagonals are {printLength(frame.longDiagonal)}.
      </p>
      {frame.layoutNotes.map((note) => (
        <p key={note} className="soft">
          {note}
        </p>
      ))}
    </section>
  )
}
