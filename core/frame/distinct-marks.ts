import type { Member } from './types.ts'

/** Members with a mark of their own each: where several would share one, they take it with a, b, c in their order. */
export function distinctMarks(members: readonly Member[]): readonly Member[] {
  const shared = Map.groupBy(members, ({ mark }) => mark)
  const taken = new Map<string, number>()
  return members.map((member) => {
    if ((shared.get(member.mark)?.length ?? 1) < 2) return member
    const n = taken.get(member.mark) ?? 0
    taken.set(member.mark, n + 1)
    return { ...member, mark: `${member.mark}${letters(n)}` }
  })
}

/** a to z, then aa, ab: plies of one beam or rim are lettered so, and members that would share a mark. */
export function letters(n: number): string {
  const last = String.fromCharCode(97 + (n % 26))
  return n < 26 ? last : `${letters(Math.floor(n / 26) - 1)}${last}`
}
