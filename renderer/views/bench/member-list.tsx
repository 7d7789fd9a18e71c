import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react'
import { OrderChoice } from '../../parts/order-choice.tsx'
import { sortedBy } from '../../parts/sorting.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import type { Thing } from '../../state/things.ts'
import { useThings } from '../../state/use-derived.ts'
import './member-list.css'

const ORDERS = [
  ['built', 'as it is built'],
  ['long', 'longest first'],
  ['mark', 'by mark'],
] as const
type Order = (typeof ORDERS)[number][0]

function inOrder(things: readonly Thing[], order: Order): readonly Thing[] {
  if (order === 'built') return things
  return order === 'long'
    ? things.toSorted((a, b) => (b.length ?? 0) - (a.length ?? 0))
    : sortedBy(things, ({ mark }) => mark, false)
}

/** The drawing as a list: what can be chosen there can be chosen here, by keyboard too; the choice is shared. */
export function MemberList() {
  const session = useSession()
  const built = useThings()
  const [order, setOrder] = useState<Order>('built')
  const things = useMemo(() => inOrder(built, order), [built, order])
  const selected = useJob((state) => state.selected)
  const [open, setOpen] = useState(false)
  const list = useRef<HTMLUListElement>(null)
  const at = things.findIndex((thing) => thing.id === selected)

  // biome-ignore lint/correctness/useExhaustiveDependencies: another selection is what makes the list scroll.
  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' })
  }, [selected])

  function onKeyDown(event: KeyboardEvent) {
    const last = things.length - 1
    const next = {
      ArrowDown: Math.min(last, at + 1),
      ArrowUp: Math.max(0, at - 1),
      PageDown: Math.min(last, at + 10),
      PageUp: Math.max(0, at - 10),
      Home: 0,
      End: last,
    }[event.key]
    const thing = next === undefined ? undefined : things[next]
    if (!thing) return
    event.preventDefault()
    session.select(thing.id)
  }

  return (
    <details className="folded" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Members, posts and footings ({things.length})</summary>
      <OrderChoice of="Members, posts and footings" orders={ORDERS} order={order} onOrder={setOrder} />
      <ul
        ref={list}
        className="member-list"
        role="listbox"
        tabIndex={0}
        aria-label="Members, posts and footings"
        aria-activedescendant={at === -1 ? undefined : `thing-${selected}`}
        onKeyDown={onKeyDown}
      >
        {(open ? things : []).map((thing) => (
          <li
            key={thing.id}
            id={`thing-${thing.id}`}
            role="option"
            aria-selected={thing.id === selected}
            onClick={() => session.select(thing.id)}
            onPointerEnter={() => session.hover(thing.id)}
            onPointerLeave={() => session.hover(null)}
          >
            {thing.label}
          </li>
        ))}
      </ul>
    </details>
  )
}
