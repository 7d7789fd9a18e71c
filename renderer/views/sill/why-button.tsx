import { useSession } from '../../state/session-context.ts'

/** Opens the chain of what caused a thing of the estimate. */
export function WhyButton({ id, of }: { readonly id: string; readonly of: string }) {
  const session = useSession()
  return (
    <button
      type="button"
      className="why-button"
      aria-label={`Why? ${of}`}
      onClick={() => session.explain({ id })}
    >
      Why?
    </button>
  )
}
