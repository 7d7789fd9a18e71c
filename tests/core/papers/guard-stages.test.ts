import { expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

// A deck 9 ft up, its stairs with a landing. A reader who was told nothing counted on its printed plans: 10 posts and 16
// blocks in the deck's frame (15 since the posts in the front corners stand beside joists: two blocks for each of the six
// on the sides, one for each of the four in front, of which one is a side's), 4 posts and 6 blocks on the landing, and two posts with a block each on either side of its two
// flights, 60-1/2 and 60-5/8 in long.
const source = paperSource(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {})
const blocks = makeSheets(source, ['steps', 'inspections']).flatMap((sheet) => sheet.blocks)
const steps = blocks.flatMap((block) =>
  block.kind === 'steps' ? block.items.map(({ text, notes = [] }) => [text, ...notes].join('\n')) : [],
)
const step = (words: RegExp) => steps.find((text) => words.test(text)) ?? ''
const card = (name: string) =>
  blocks
    .flatMap((block) => (block.kind === 'checklist' && block.together === name ? block.items : []))
    .join('\n')

test('the frame gets the posts and blocks that it can hold, and tells which wait for the stairs', () => {
  const posts = step(/^Set the guard’s posts GP1 to GP10 /)
  expect(posts).toContain('nail the 15 blocks')
  expect(posts).toContain('Posts GP11 to GP14 on the landing and those on the stairs wait for the stairs')
  const stairs = step(/^Build the stairs/)
  expect(stairs).toContain('GP11 to GP14, then the 6 blocks')
  expect(stairs).toContain('Before the treads: the 8 blocks')
})

test('the card for the frame can be signed before the stairs are built, and the last card asks for the rest', () => {
  const frame = card('Framing')
  expect(frame).toContain('10 guard posts 4x4 in the frame, GP1 to GP10,')
  expect(frame).toContain('10 hold-downs')
  // two each
  expect(frame).toContain('20 bolts')
  expect(frame).toContain('15 blocks')
  expect(frame).not.toContain('landing')
  const last = card('Stairs and guard')
  expect(last).toContain('4 guard posts 4x4 on the landing')
  expect(last).toContain('8 bolts')
  expect(last).toContain('6 blocks behind')
  expect(last).toContain('8 blocks between the stringers')
})

test('nothing on the pad waits for stringers that cannot stand yet', () => {
  expect(step(/^Dig for the stairs’ pad/)).not.toMatch(/tried in its place/)
  // one beside each of the 4 stringers
  expect(step(/^Build the stairs/)).toMatch(/drill it beside each .* 4 of 1\/2 in/)
})

test('each line of a card names only its own posts as a designer’s, and bolts go through frame, not boards', () => {
  // GP1 to GP3 stand in the deck's frame; no table has posts bolted to stringers, two on either side of either flight
  expect(card('Framing')).toContain('at GP1 to GP3 as the licensed designer says')
  const last = card('Stairs and guard')
  expect(last).not.toMatch(/at GP\d.* as the licensed designer says/)
  expect(last).toContain(
    'SG1-1, SG1-2, SG2-1, SG2-2, SG3-1, SG3-2, SG4-1, SG4-2 held as the licensed designer says',
  )
  expect(last).toContain('8 bolts through the landing’s beam or joist and post')
})
