/** The parts of the window, in the order in which they are read. */
const PANES = '.top-bar, main.centre, aside.bench, footer.sill'
const FOCUSABLE =
  'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea, summary, [tabindex="0"]'

/** Goes to the first control of the next part of the window, after the last one the first. */
export function focusNextPane(backwards: boolean): void {
  const panes = [...document.querySelectorAll<HTMLElement>(PANES)]
  const at = panes.findIndex((pane) => pane.contains(document.activeElement))
  const step = backwards ? -1 : 1
  for (let n = 1; n <= panes.length; n += 1) {
    const from = at < 0 && backwards ? 0 : at
    const pane = panes[(from + step * n + panes.length * 2) % panes.length]
    const first = [...(pane?.querySelectorAll<HTMLElement>(FOCUSABLE) ?? [])].find(
      (each) => each.tabIndex >= 0 && each.getClientRects().length > 0,
    )
    if (!first) continue
    first.focus()
    return
  }
}
