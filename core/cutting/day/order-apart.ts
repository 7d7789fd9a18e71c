/** Most steps of the search for an order. */
const MOST_STEPS = 100_000

/**
 * Members side by side so that neighbours share no joint, or null where none was found. Members jointed alike are
 * one kind; kinds with most members left go first.
 */
export function orderApart(
  members: readonly { readonly id: string; readonly joints: readonly number[] }[],
): string[] | null {
  const kinds = new Map<string, { joints: ReadonlySet<number>; ids: string[] }>()
  for (const { id, joints } of members) {
    const key = joints.join(',')
    const kind = kinds.get(key) ?? { joints: new Set(joints), ids: [] }
    kind.ids.push(id)
    kinds.set(key, kind)
  }
  const list = [...kinds.values()]
  const left = list.map((kind) => kind.ids.length)
  const order: number[] = []
  const dead = new Set<string>()
  let steps = 0
  const clash = (a: number, b: number): boolean => {
    const other = list[b]?.joints
    return [...(list[a]?.joints ?? [])].some((joint) => other?.has(joint) === true)
  }
  const place = (last: number): boolean => {
    if (order.length === members.length) return true
    const key = `${last}|${left.join(',')}`
    if (dead.has(key) || ++steps > MOST_STEPS) return false
    const next = list.map((_, k) => k).filter((k) => (left[k] ?? 0) > 0 && (last < 0 || !clash(last, k)))
    next.sort((a, b) => (left[b] ?? 0) - (left[a] ?? 0) || a - b)
    for (const k of next) {
      left[k] = (left[k] ?? 0) - 1
      order.push(k)
      if (place(k)) return true
      order.pop()
      left[k] = (left[k] ?? 0) + 1
    }
    dead.add(key)
    return false
  }
  if (!place(-1)) return null
  const taken = list.map(() => 0)
  return order.map((k) => {
    const index = taken[k] ?? 0
    taken[k] = index + 1
    return list[k]?.ids[index] ?? ''
  })
}
