import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// Double rims along slanting edges: the inner ply is shorter or longer than the outer one by what the corner takes.

const DECKS = ['clipped-corner.json', 'clipped-any-angle.json', 'octagon-free.json', 'angled-side.json']

function doubled(file: string): Design {
  const job = CATALOGUE.find((deck) => deck.file === file)?.job as { frame?: object }
  const made = design({ ...job, frame: { ...job.frame, rimPlies: 2 } })
  if (!made.ok) throw new Error(`${file}: ${JSON.stringify(made.error)}`)
  return made.value
}

describe.each(DECKS)('the double rims of %s', (file) => {
  const { frame } = doubled(file)
  const rims = frame.runs.filter(({ kind }) => kind === 'rim')
  const member = (id: string) => frame.members.find((one) => one.id === id)

  it('are runs as long as each of their plies', () => {
    const plies = frame.members.filter(({ role }) => role === 'rim')
    expect(rims.flatMap(({ memberIds }) => memberIds).sort()).toEqual(plies.map(({ id }) => id).sort())
    for (const { length, memberIds } of rims)
      for (const id of memberIds) expect(member(id)?.length, id).toBe(length)
    // some of them differ, or this would say nothing
    const lengths = Map.groupBy(plies, ({ id }) => id.slice(0, -2))
    expect([...lengths.values()].some(([a, b]) => a?.length !== b?.length)).toBe(true)
  })

  it('are jointed at one joist by one ply at most, and leave no short piece', () => {
    const apart = rims.filter(({ id }) => id !== `run-${id.slice(4).replace(/-[12]$/, '')}`)
    expect(apart.length).toBeGreaterThan(0)
    const byBoard = Map.groupBy(apart, ({ memberIds }) => (memberIds[0] ?? '').slice(0, -2))
    for (const runs of byBoard.values()) {
      const supports = runs.flatMap(({ points }) => points.map(({ supportId }) => supportId))
      expect(new Set(supports).size).toBe(supports.length)
      for (const { points, length } of runs)
        for (const { at } of points) {
          // 6 in is the least piece of a rim
          expect(at).toBeGreaterThanOrEqual(6 * 32)
          expect(at).toBeLessThanOrEqual(length - 6 * 32)
        }
    }
  })
})
