import { describe, expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { guardTable } from '../../../core/papers/tables/guard-table.ts'
import { inches } from '../../../core/units/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { apart, corners } from '../../fixtures/shapes-apart.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
const { guard } = source.estimate
const blocks = makeSheets(source, ['steps', 'inspections', 'footings']).flatMap((sheet) => sheet.blocks)
const steps = blocks.flatMap((block) =>
  block.kind === 'steps'
    ? block.items.map(({ text, notes, cautions }) => [text, ...(notes ?? []), ...(cautions ?? [])].join(' '))
    : [],
)
const at = (words: RegExp) => steps.findIndex((text) => words.test(text))
const card = (name: string) =>
  blocks
    .flatMap((block) => (block.kind === 'checklist' && block.together === name ? block.items : []))
    .join('\n')

describe('the order of work', () => {
  test('has the guard’s posts, hold-downs and blocks before the framing inspection, its rails after the decking', () => {
    const [posts, seen, boards, rails] = [
      at(/^Set the guard’s posts GP1 to GP17 /),
      at(/^INSPECTION: framing/),
      at(/^Lay \d+ courses/),
      at(/^Set the guard’s rails/),
    ]
    expect(posts).toBeGreaterThan(at(/uplift ties/))
    expect(seen).toBeGreaterThan(posts)
    expect(boards).toBeGreaterThan(seen)
    expect(rails).toBeGreaterThan(boards)
    expect(steps[posts]).toContain('hold-down')
    expect(steps[boards]).toContain('notched round the guard’s posts GP1 to GP17')
  })

  test('counts as many inspections as the cost has visits, and each card belongs to one', () => {
    // footings, framing, final: the three of the calendar
    const visits = source.estimate.takeoff.tasks.find(({ rateId }) => rateId === 'inspection')?.thousandths
    expect(steps.filter((text) => text.startsWith('INSPECTION')).length * 1000).toBe(visits)
    const told = steps.filter((text) => text.startsWith('INSPECTION')).join(' ')
    for (const name of ['Footings', 'Ledger', 'Framing', 'Guard', 'Final'])
      expect(told).toContain(`“${name}”`)
  })

  test('names the joists at which the deck is held to the house, and the marking of the hip', () => {
    // the first and the last joist that hang in each ledger
    expect(steps[at(/uplift ties/)]).toMatch(
      /hold-downs to the house: J\d+, [^;]+ from the \w+ end of its wall’s ledger to its middle; J\d+, /,
    )
    expect(card('Framing')).toMatch(/4 hold-downs \(2x10\) of 1,500 lb to the house: J/)
    expect(steps[at(/^Mark ledger/)]).toContain('hip HP1 and HP2')
  })
})

test('what the boards hide of the guard is on the card for the frame', () => {
  // 17 posts, two bolts each
  expect(card('Framing')).toContain('17 guard posts 4x4 in the frame, GP1 to GP17')
  expect(card('Framing')).toContain('34 bolts')
  expect(card('Guard')).not.toContain('hold-down')
})

test('every post that a block stands against is said to have one, and no other', () => {
  if (guard === null) throw new Error('it has a guard')
  const wood = [...guard.members, ...source.estimate.frame.members].filter(
    ({ role }) => role === 'guard blocking' || role === 'blocking',
  )
  // an eighth of an inch off is tight
  const isHeld = (post: (typeof guard.members)[number]) =>
    wood.some((block) => apart(corners(post), corners(block)) <= inches(1 / 8))
  const with_ = new Set(
    guard.members.filter((one) => one.role === 'guard post' && isHeld(one)).map(({ mark }) => mark),
  )
  const words = guardTable(guard, source.estimate).rows.flatMap(({ posts }) => posts?.split(', ') ?? [])
  expect(words.length).toBe(17)
  for (const word of words)
    expect(word.endsWith('(blocking)'), word).toBe(with_.has(word.split(' ')[0] ?? ''))
})

test('the tape reaches the longest measure that any table of the layout prints', () => {
  // corner 6 to corner 4 of the house: 28 ft by 8 ft, √848 ft = 29.1204 ft, 29'-1 7/16"
  const tools = blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : []))
  expect(tools.find((words) => words.startsWith('Tape'))).toContain(`29'-1 7/16"`)
})
