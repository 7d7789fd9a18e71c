import { describe, expect, test } from 'vitest'
import { makeSheets, orderMessages } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const jobOf = (name: string) => CATALOGUE.find(({ file }) => file === `${name}.json`)?.job ?? {}

function sheetsOf(source: ReturnType<typeof paperSource>) {
  const blocks = makeSheets(source, ['order', 'cutting', 'steps']).flatMap((sheet) => sheet.blocks)
  const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []))
  return {
    holds: tables.filter(({ id }) => id === 'holds').flatMap(({ rows }) => rows),
    boards: blocks.flatMap((block) => (block.kind === 'set-up' ? block.boards : [])),
    steps: blocks.flatMap((block) => (block.kind === 'steps' ? block.items : [])),
  }
}

describe('boards on hold from which other pieces are sawn too', () => {
  const source = paperSource(jobOf('high-stairs-landing'))
  const { holds, boards, steps } = sheetsOf(source)
  const beside = holds.find(({ what }) => what?.startsWith('Guard posts beside the stairs'))

  test('are told under each hold by the marks of those pieces, on the sheet and in the message', () => {
    // posts of the deck are sawn from the same 4x4 as those beside the stairs
    expect(beside?.also).toMatch(/\bGP\d/)
    expect(beside?.also).not.toContain('SG')
    expect(orderMessages(source)[0]?.text).toContain(
      `Waits with it, sawn from the same boards: ${beside?.also}`,
    )
  })

  test('carry the hold on the cutting sheet, each that has a piece in doubt and no other', () => {
    const doubtful = /^SG\d-\d$/
    const name = beside?.name ?? ''
    const firsts = (marks: readonly string[]) => marks.map((mark) => mark.split(' ')[0] ?? '')
    const wanted = boards.filter(({ marks }) => firsts(marks).some((mark) => doubtful.test(mark)))
    expect(wanted.length).toBeGreaterThan(0)
    for (const board of boards)
      expect(board.waits?.split(', ').includes(name) ?? false, board.name).toBe(wanted.includes(board))
  })

  test('are not bought, dug or sawn for before the first step, which names what is open', () => {
    const at = steps.findIndex(({ text }) =>
      text.startsWith(`Settle ${holds[0]?.name} to ${holds.at(-1)?.name}`),
    )
    const dug = steps.findIndex(({ text }) => text.startsWith('Lay out'))
    expect(at).toBeGreaterThanOrEqual(0)
    expect(at).toBeLessThan(dug)
    for (const { name, what } of holds) expect(steps[at]?.notes?.join('\n')).toContain(`${name}, ${what}`)
  })
})

test('nothing waits on the sheets of a deck of which nothing is open', () => {
  const { holds, boards, steps } = sheetsOf(paperSource(smallJob('12 ft')))
  expect(holds).toEqual([])
  expect(boards.filter(({ waits }) => waits !== undefined)).toEqual([])
  expect(steps.filter(({ text }) => text.startsWith('Settle'))).toEqual([])
})
