import type { JoistContext } from './context.ts'

/** Members by their marks, those that follow one another drawn together: "J1 to J9, E2". */
export function membersNamed({ frame, joistIds }: Pick<JoistContext, 'frame' | 'joistIds'>): string {
  const ids = new Set(joistIds)
  const runs: { readonly first: string; last: string; count: number }[] = []
  for (const { mark } of frame.members.filter(({ id }) => ids.has(id))) {
    const run = runs.at(-1)
    if (run !== undefined && follows(run.last, mark)) Object.assign(run, { last: mark, count: run.count + 1 })
    else runs.push({ first: mark, last: mark, count: 1 })
  }
  const words = runs.map(({ first, last, count }) =>
    count === 1 ? first : count === 2 ? `${first}, ${last}` : `${first} to ${last}`,
  )
  return words.join(', ')
}

/** The joists of a group by their marks: "joists J1 to J9, E2". */
export function hangingJoists(context: Pick<JoistContext, 'frame' | 'joistIds'>): string {
  return `${context.joistIds.length === 1 ? 'joist' : 'joists'} ${membersNamed(context)}`
}

/** The same as a sentence begins, where the deck's joists are of more than one group. */
export function joistsNamed(context: Pick<JoistContext, 'frame' | 'joistIds' | 'groups'>): string {
  return context.groups.length === 1 ? 'Joists' : hangingJoists(context).replace(/^joists? /, 'Joists ')
}

function follows(before: string, mark: string): boolean {
  const [a, b] = [before, mark].map((each) => /^(\D*)(\d+)$/.exec(each))
  return a?.[1] !== undefined && a[1] === b?.[1] && Number(b?.[2]) === Number(a[2]) + 1
}
