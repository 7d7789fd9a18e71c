import type { ReactNode } from 'react'
import './message.css'

/** What is the case, what it costs, what to do: one line, with an action where there is one. */
export function Message({
  tone,
  children,
  action,
}: {
  readonly tone: 'plain' | 'near' | 'fails'
  readonly children: ReactNode
  readonly action?: { readonly label: string; run(): void }
}) {
  const sign = tone === 'near' ? '◐' : tone === 'fails' ? '▲' : null
  return (
    <div className={`message message-${tone}`}>
      {sign && <span aria-hidden="true">{sign}</span>}
      <span>{children}</span>
      {action && (
        <button type="button" className="button" onClick={action.run}>
          {action.label}
        </button>
      )}
    </div>
  )
}
