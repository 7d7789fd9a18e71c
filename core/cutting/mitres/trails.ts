/** A piece as a link between two kinds of ends; ends that share no cut have a name of their own. */
export interface Link {
  readonly left: string
  readonly right: string
}

/** A link on its way along a trail. */
export interface Step {
  readonly link: number
  readonly turned: boolean
}

interface Way extends Step {
  readonly to: string
}

/**
 * The fewest trails that take every link once, each going on where ends of one name meet: Euler trails of the graph of
 * names. A group without an odd name is one ring; it begins, and so loses its cut, at the name that `loss` is least of.
 */
export function trails(links: readonly Link[], loss: (name: string) => number): Step[][] {
  const ways = new Map<string, Way[]>()
  const add = (name: string, way: Way): void => {
    ways.set(name, [...(ways.get(name) ?? []), way])
  }
  const join = ({ left, right }: Link, link: number): void => {
    add(left, { link, turned: false, to: right })
    add(right, { link, turned: true, to: left })
  }
  links.forEach(join)
  const groups = groupsOf(ways)
  const all = [...links]
  for (const names of groups) {
    const odd = names.filter((name) => (ways.get(name)?.length ?? 0) % 2 === 1)
    // a link that is not there closes each pair of odd ends, so that the group is one ring
    for (let pair = 0; pair + 1 < odd.length; pair += 2)
      join(
        { left: odd[pair] as string, right: odd[pair + 1] as string },
        all.push({ left: '', right: '' }) - 1,
      )
  }
  const found = groups.flatMap((names) => {
    const first = names.reduce((least, name) => (loss(name) < loss(least) ? name : least))
    return cutOpen(ring(first, ways, all.length), links.length)
  })
  return found.map(firstUnturned).sort((a, b) => leastOf(a) - leastOf(b))
}

/** Names that links join, in the order in which they first occur. */
function groupsOf(ways: ReadonlyMap<string, readonly Way[]>): string[][] {
  const seen = new Set<string>()
  const groups: string[][] = []
  for (const name of ways.keys()) {
    if (seen.has(name)) continue
    seen.add(name)
    const names = [name]
    for (const reached of names)
      for (const { to } of ways.get(reached) ?? [])
        if (!seen.has(to)) {
          seen.add(to)
          names.push(to)
        }
    groups.push(names)
  }
  return groups
}

/** A way round all links of a group in which every name is even (Hierholzer). */
function ring(start: string, ways: ReadonlyMap<string, readonly Way[]>, count: number): Step[] {
  const used = new Uint8Array(count)
  const next = new Map<string, number>()
  const stack: { readonly name: string; readonly by: Step | null }[] = [{ name: start, by: null }]
  const round: Step[] = []
  for (let top = stack.at(-1); top !== undefined; top = stack.at(-1)) {
    const own = ways.get(top.name) ?? []
    let at = next.get(top.name) ?? 0
    while (at < own.length && used[own[at]?.link ?? 0] === 1) at++
    next.set(top.name, at)
    const way = own[at]
    if (way === undefined) {
      stack.pop()
      if (top.by !== null) round.push(top.by)
    } else {
      used[way.link] = 1
      stack.push({ name: way.to, by: { link: way.link, turned: way.turned } })
    }
  }
  return round.reverse()
}

/** The ring without the links that are not there. */
function cutOpen(round: readonly Step[], real: number): Step[][] {
  const gap = round.findIndex(({ link }) => link >= real)
  const open: Step[][] = [[]]
  for (const step of [...round.slice(gap + 1), ...round.slice(0, gap + 1)]) {
    if (step.link >= real) open.push([])
    else open.at(-1)?.push(step)
  }
  return open.filter((trail) => trail.length > 0)
}

function leastOf(trail: readonly Step[]): number {
  return Math.min(...trail.map(({ link }) => link))
}

/** A trail may be gone either way: the one in which its first link lies as it is. */
function firstUnturned(trail: readonly Step[]): Step[] {
  const first = leastOf(trail)
  const turned = trail.find(({ link }) => link === first)?.turned ?? false
  return turned ? reversed(trail) : [...trail]
}

/** The same trail the other way. */
export function reversed(trail: readonly Step[]): Step[] {
  return trail.map((step) => ({ ...step, turned: !step.turned })).reverse()
}
