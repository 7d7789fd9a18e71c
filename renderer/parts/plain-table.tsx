import type { ReactNode } from 'react'

/** A table that is read, in a box that scrolls sideways where it has not the room. */
export function PlainTable({
  headings,
  tools,
  caption,
  titled,
  label,
  className = '',
  children,
}: {
  readonly headings: readonly string[]
  /** what the last column holds, for screen readers: it has buttons and no heading to be seen */
  readonly tools?: string
  /** what it is, for screen readers */
  readonly caption?: string
  /** id of the heading over its box */
  readonly titled?: string
  /** what its box is called where there is no heading over it */
  readonly label?: string
  readonly className?: string
  /** its rows */
  readonly children: ReactNode
}) {
  return (
    <div
      className={`scroll-x ${className}`}
      role="group"
      aria-labelledby={titled}
      aria-label={label}
      tabIndex={0}
    >
      <table className="table">
        {caption !== undefined && <caption className="unseen">{caption}</caption>}
        <thead>
          <tr>
            {headings.map((heading) => (
              <th key={heading} scope="col">
                {heading}
              </th>
            ))}
            {tools !== undefined && (
              <th scope="col">
                <span className="unseen">{tools}</span>
              </th>
            )}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  )
}
