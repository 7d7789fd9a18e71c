import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import type { Frame, Member } from '../../../core/frame/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

type Stated = Readonly<Record<string, unknown>>

/** A deck of the catalogue as it is, or with other joists. */
export function deckOf(name: string, joists: Stated = {}, frame: Stated = {}): Design {
  const deck = CATALOGUE.find(({ file }) => file === `${name}.json`)
  if (deck === undefined) throw new Error(`the catalogue has no ${name}`)
  const stated = deck.job.frame as { readonly joists: Stated }
  const made = design({
    ...deck.job,
    frame: { ...stated, joists: { ...stated.joists, ...joists }, ...frame },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

/** Length in inches of the member with a mark. */
export function lengthOf({ members }: Frame, mark: string): number {
  const member = members.find((one) => one.mark === mark)
  if (member === undefined) throw new Error(`no member is marked ${mark}`)
  return member.length / 32
}

/** Where the middle of a joist lies across the joists, in inches. */
export function centreOf({ box }: Member): number {
  return (box.x0 + box.x1) / 64
}

export function ofRole({ members }: Frame, role: Member['role']): readonly Member[] {
  return members.filter((member) => member.role === role)
}

export function countOf({ connectors }: Frame, kind: string): number {
  return connectors.filter((one) => one.kind === kind).reduce((sum, { count }) => sum + count, 0)
}
