/**
 * Which of a beam's stretches (overhangs and spans, in order) carry the live load in the cases that can be worst:
 * all of them; every second one, either way; the two beside a support with every second one beyond them. On a beam of
 * one section the influence of a stretch changes its sign from each to the next, so no other pattern is worse.
 */
export function liveLoadPatterns(stretches: number): readonly (readonly boolean[])[] {
  const patterns: boolean[][] = [Array.from({ length: stretches }, () => true)]
  for (let j = 0; j < 2; j++) patterns.push(Array.from({ length: stretches }, (_, i) => i % 2 === j))
  for (let pair = 0; pair + 1 < stretches; pair++) {
    const beside = Array.from({ length: stretches }, (_, i) =>
      i <= pair ? (pair - i) % 2 === 0 : (i - pair - 1) % 2 === 0,
    )
    patterns.push(
      beside,
      beside.map((loaded) => !loaded),
    )
  }
  const seen = new Set<string>()
  return patterns.filter((pattern) => {
    const key = pattern.map(Number).join('')
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}
