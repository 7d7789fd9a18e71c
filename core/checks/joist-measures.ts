import type { Frame, JoistGroup, JoistSupport } from '../frame/index.ts'
import { ticks } from '../units/index.ts'
import type { JoistCantilever, JoistSpan } from './measures.ts'

/**
 * The joists of one group as the checks see them. Where they are of several lengths, each span and each overhang is the
 * longest of any, so that what is reckoned is no better than the worst of them.
 */
export interface JoistMeasures {
  readonly id: string
  readonly zone: string
  readonly memberIds: readonly string[]
  readonly supports: readonly JoistSupport[]
  /** from where the load begins, ticks */
  readonly line: { readonly length: number; readonly supports: readonly number[] }
  /** between each support and the next, ticks */
  readonly clears: readonly number[]
  readonly spans: readonly JoistSpan[]
  readonly cantilevers: readonly JoistCantilever[]
}

export function measureJoists(group: JoistGroup, frame: Frame): JoistMeasures {
  const { lines } = group
  const supports = lines[0]?.supports ?? []
  const at = (i: number) => lines.map((line) => line.supports[i]?.at ?? 0)
  const gap = (i: number) => Math.max(...at(i + 1).map((far, k) => far - (at(i)[k] ?? far)))
  // beside an angled edge a joist may begin a part of a tick within its first support, for its ends are rounded
  const start = Math.max(0, ...lines.map((line) => (line.supports[0]?.at ?? line.from) - line.from))
  const end = Math.max(0, ...lines.map((line) => line.to - (line.supports.at(-1)?.at ?? line.to)))
  const gaps = supports.slice(1).map((_, i) => gap(i))
  const places: number[] = []
  for (const [i] of supports.entries())
    places.push(i === 0 ? start : (places[i - 1] ?? 0) + (gaps[i - 1] ?? 0))
  const clearsOf = (i: number) =>
    lines.map(({ supports: own }) => {
      const [from, to] = [own[i], own[i + 1]]
      return from === undefined || to === undefined ? 0 : Math.floor(to.at - to.half - (from.at + from.half))
    })
  const clears = gaps.map((_, i) => Math.max(...clearsOf(i)))
  const spans = clears.map((clear, i): JoistSpan => {
    const none = { id: '', kind: 'beam' as const }
    return { from: supports[i] ?? none, to: supports[i + 1] ?? none, clear: ticks(Math.max(0, clear)) }
  })
  const beyond = (side: 'start' | 'end', length: number): readonly JoistCantilever[] => {
    const support = side === 'start' ? supports[0] : supports.at(-1)
    const beam = frame.beams.find(({ id }) => id === support?.id)
    const beside = side === 'start' ? 0 : clears.length - 1
    if (beam === undefined || length <= 0 || clears.length === 0) return []
    const adjacent = Math.max(0, Math.min(...clearsOf(beside)))
    return [
      {
        beam: beam.beam,
        key: beam.key,
        mark: beam.mark,
        lies: beam.lies,
        side,
        length: ticks(Math.ceil(length)),
        adjacent: ticks(adjacent),
      },
    ]
  }
  return {
    id: group.id,
    zone: group.zone,
    memberIds: lines.flatMap(({ memberIds }) => memberIds),
    supports,
    line: { length: (places.at(-1) ?? 0) + end, supports: places },
    clears,
    spans,
    cantilevers: [...beyond('start', start), ...beyond('end', end)],
  }
}
