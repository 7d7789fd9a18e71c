import { memo, useDeferredValue, useMemo, useState } from 'react'
import type { Check } from '../../../core/checks/index.ts'
import { bySeverity, markOf } from '../../state/figures.ts'
import { useThings } from '../../state/use-derived.ts'
import { CheckItem, marksInOrder } from './check-item.tsx'

/** Checks, worst first. What passes is folded away where there is much of it. */
export const CheckList = memo(function CheckList({
  checks,
  fold = false,
  told = Number.POSITIVE_INFINITY,
}: {
  readonly checks: readonly Check[]
  readonly fold?: boolean
  /** so many say at once what is the case and what to do; the others when they are opened */
  readonly told?: number
}) {
  // while something is drawn, the drawing goes first
  const things = useDeferredValue(useThings())
  const marks = useMemo(() => marksInOrder(things), [things])
  // what is folded away is made when it is unfolded
  const [unfolded, setUnfolded] = useState(false)
  const sorted = bySeverity(checks)
  const open = fold ? sorted.filter((check) => markOf(check.status) !== 'passes') : sorted
  const folded = fold ? sorted.filter((check) => markOf(check.status) === 'passes') : []
  const near = open.some((check) => markOf(check.status) === 'near')
  return (
    <>
      {fold && near && (
        <p className="soft">
          <span aria-hidden="true">◐</span> passes, close to its limit or with something to watch.
        </p>
      )}
      {open.length > 0 && (
        <ul className="checks">
          {open.map((check, index) => (
            <CheckItem key={check.id} check={check} marks={marks} told={index < told} />
          ))}
        </ul>
      )}
      {fold && open.length === 0 && <p className="soft">Nothing fails, and nothing is near its limit.</p>}
      {folded.length > 0 && (
        <details className="checks-folded" onToggle={(event) => setUnfolded(event.currentTarget.open)}>
          <summary>{folded.length} that pass with room to spare</summary>
          {unfolded && (
            <ul className="checks">
              {folded.map((check) => (
                <CheckItem key={check.id} check={check} marks={marks} />
              ))}
            </ul>
          )}
        </details>
      )}
    </>
  )
})
