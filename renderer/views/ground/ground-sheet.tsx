import { printLength } from '../../../core/units/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { holesOf } from './holes.ts'

/** The hole schedule: where each centre lies, what proves it, how deep, what goes in. */
export function GroundSheet() {
  const session = useSession()
  const design = useJob((state) => state.design)
  const selected = useJob((state) => state.selected)
  if (!design) return null
  const { frame, job, takeoff } = design
  const { volumes } = takeoff
  const each = new Map(volumes.concreteEach.map(({ footingId, cubicFeet }) => [footingId, cubicFeet]))
  return (
    <section className="sheet-pane" aria-labelledby="holes-title">
      <h2 id="holes-title">Holes</h2>
      <div className="scroll-x" role="group" aria-labelledby="holes-title">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Hole</th>
              <th scope="col">Along wall</th>
              <th scope="col">From wall</th>
              <th scope="col">Diagonal, left corner</th>
              <th scope="col">Right corner</th>
              <th scope="col">Depth</th>
              <th scope="col">Across</th>
              <th scope="col">Tube</th>
              <th scope="col">Base</th>
              <th scope="col">Concrete</th>
            </tr>
          </thead>
          <tbody>
            {holesOf(frame, job).map((hole) => (
              <tr
                key={hole.id}
                aria-selected={hole.id === selected}
                onPointerEnter={() => session.hover(hole.id)}
                onPointerLeave={() => session.hover(null)}
              >
                <th scope="row">
                  <button type="button" className="link" onClick={() => session.select(hole.id)}>
                    {hole.number}
                  </button>
                </th>
                <td>{hole.across}</td>
                <td>{hole.away}</td>
                <td>{hole.fromLeft}</td>
                <td>{hole.fromRight}</td>
                <td>{hole.depth}</td>
                <td>{hole.hole}</td>
                <td>
                  {hole.tube} × {hole.tubeLength}
                </td>
                <td>{hole.base}</td>
                <td>{(each.get(hole.id) ?? 0).toFixed(2)} cu ft</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
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
      <p className="caution">
        <span aria-hidden="true">▲</span> Have utilities marked before digging: call your local one-call
        centre (811 in the United States). Frost depth, soil and snow are local facts; local code and the
        building official govern.
      </p>
    </section>
  )
}
