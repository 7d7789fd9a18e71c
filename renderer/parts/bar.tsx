import './bar.css'

/** How much of a limit is used, as a bar whose full length is the limit; past it the bar stays full. */
export function Bar({ ratio, mark }: { readonly ratio: number; readonly mark: 'passes' | 'near' | 'fails' }) {
  return (
    <span className="bar" aria-hidden="true">
      <span className={`bar-fill ${mark}`} style={{ width: `${Math.min(100, ratio * 100)}%` }} />
    </span>
  )
}
