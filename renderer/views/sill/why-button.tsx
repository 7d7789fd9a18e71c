import type { GridCell } from '../../parts/use-grid.ts'
import { useSession } from '../../state/session-context.ts'

/** Opens the chain of what caused a thing of the estimate. */
export function WhyButton({
  id,
  of,
  cell,
}: {
  readonly id: string
  readonly of: string
  /** where it stands in a table that is walked by keys */
  readonly cell?: GridCell
}) {
  const session = useSession()
  return (
    <button
      {...cell}
      type="button"
      className="why-button"
      aria-label={`Why? ${of}`}
      onClick={() => session.explain({ id })}
    >
      Why?
    </button>
  )
}
