import type { Design } from '../../../core/estimate-types.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { holeColumns } from './hole-columns.ts'
import { holesOf } from './holes.ts'

/** The hole schedule: where each centre lies, what proves it, how deep, what goes in and what it carries. */
export function HolesTable({ design }: { readonly design: Design }) {
  const session = useSession()
  const selected = useJob((state) => state.selected)
  const holes = holesOf(design)
  const { columns, same } = holeColumns(holes)
  return (
    <>
      <h2 id="holes-title">Holes</h2>
      <div className="scroll-x" role="group" aria-labelledby="holes-title" tabIndex={0}>
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
      <p className="soft">
        Choose a hole, here or in the drawing, to see its checks, or to say that it is not where the plan has
        it.
      </p>
    </>
  )
}
