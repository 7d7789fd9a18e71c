const SIGNS = { passes: '●', near: '◐', fails: '▲' } as const
const NAMES = {
  passes: 'passes',
  near: 'near its limit',
  fails: 'fails or needs the official’s word',
} as const

/** ● passes, ◐ near its limit, ▲ fails: the shape says it, the colour repeats it. */
export function MarkSign({
  mark,
  named = true,
}: {
  readonly mark: keyof typeof SIGNS
  readonly named?: boolean
}) {
  return (
    <span className={`mark mark-${mark}`}>
      <span aria-hidden="true">{SIGNS[mark]}</span>
      {named && <span className="unseen">{NAMES[mark]}</span>}
    </span>
  )
}
