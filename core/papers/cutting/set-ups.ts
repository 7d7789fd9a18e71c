import { type Cut, linesOf } from '../../cutting/index.ts'
import type { Planned } from '../../estimate-types.ts'
import type { Ticks } from '../../units/index.ts'

/** Boards that are sawn alike: one setting of the stop, one drawing. */
export interface SetUp {
  readonly stockId: string
  readonly length: Ticks
  /** the pieces' places on each of the boards, from its left end */
  readonly cuts: readonly Pick<Cut, 'from' | 'to' | 'length' | 'mitres'>[]
  /** where the lines of the saw meet the near edge */
  readonly lines: readonly Ticks[]
  readonly offcut: Ticks
  readonly boards: readonly { readonly number: number; readonly marks: readonly string[] }[]
}

/** The boards of a plan, like ones together, in the order of their first numbers. */
export function setUps({ plan }: Pick<Planned, 'plan'>): readonly SetUp[] {
  const groups = new Map<string, { -readonly [key in keyof SetUp]: SetUp[key] }>()
  for (const { number, stockId, length, cuts, offcut } of plan.boards) {
    const key = `${stockId} ${length} ${cuts.map(({ from, to, mitres }) => `${from}-${to} ${mitres?.ends ?? ''}`).join(' ')}`
    const own = { number, marks: cuts.map(({ mark }) => mark) }
    const group = groups.get(key)
    if (group === undefined) {
      const places = cuts.map(({ from, to, length: long, mitres }) => ({
        from,
        to,
        length: long,
        ...(mitres === undefined ? {} : { mitres }),
      }))
      const lines = linesOf({ cuts, length })
      groups.set(key, { stockId, length, cuts: places, lines, offcut, boards: [own] })
    } else {
      group.boards = [...group.boards, own]
    }
  }
  return [...groups.values()]
}
