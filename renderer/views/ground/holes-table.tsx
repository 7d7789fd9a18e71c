import type { Design } from '../../../core/estimate-types.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { type HoleColumn, PLACE_COLUMNS, sizeColumns } from './hole-columns.ts'
import { type Hole, holesOf } from './holes.ts'
import './ground.css'

/** The hole schedule: where each centre lies and what proves it; how deep, what goes in and what it carries. */
export function HolesTable({ design }: { readonly design: Design }) {
  const holes = holesOf(design)
  const { columns, same } = sizeColumns(holes)
  return (
    <div className="holes">
      <h2 id="holes-title">Holes</h2>
      <Holes holes={holes} columns={PLACE_COLUMNS} titled="holes-title" />
      <p className="soft">
        Choose a hole, here or in the drawing, to see its checks, or to say that it is not where the plan has
        it.
      </p>
      {columns.length > 0 && (
        <>
          <h3 id="sizes-title">Sizes and loads</h3>
          <Holes holes={holes} columns={columns} titled="sizes-title" />
        </>
      )}
      {same.length > 0 && <p>Every one: {same.join(', ')}.</p>}
    </div>
  )
}

function Holes({
  holes,
  columns,
  titled,
}: {
  readonly holes: readonly Hole[]
  readonly columns: readonly HoleColumn[]
  readonly titled: string
}) {
  const session = useSession()
  const selected = useJob((state) => state.selected)
  return (
    <div className="scroll-x" role="group" aria-labelledby={titled} tabIndex={0}>
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
                  aria-label={`Hole ${hole.number}`}
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
  )
}
