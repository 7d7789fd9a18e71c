import { expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = (kind: string) =>
  paperSource({
    version: 1,
    size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
    stairs: { kind, side: 'front', width: '4 ft', landingDepth: '37 in' },
  })
const told = (kind: string, id: 'stairs' | 'quote' | 'steps' | 'checks') =>
  JSON.stringify(makeSheets(source(kind), [id])).replaceAll('\\"', '"')

test('a flight that turns is told by its own width, that of the landing’s depth, on the sheet of the stairs and in the quote', () => {
  for (const id of ['stairs', 'quote'] as const) {
    expect(told('landing right', id), id).toContain(`4'-0" wide, flight 2 3'-1"`)
    expect(told('landing', id), id).not.toContain('wide, flight 2')
  }
  expect(told('landing right', 'checks')).toContain(`Flights are 4'-0" and 3'-1" wide.`)
  expect(told('landing', 'checks')).toContain(`The stairs are 4'-0" wide.`)
})

test('every nosing is alike, and the uppermost tread differs by where its rear edge stands', () => {
  // boards of the deck reach 1 in over, those of the landing by a nosing, 7/8 in: 1/8 in off the face, and tight
  const words = told('landing', 'steps')
  expect(words).toContain(
    'the uppermost has the face above behind it, on flight 1 its rear edge 1/8 in off, on flight 2 tight against it. Each nosing is 7/8 in.',
  )
  expect(words).not.toContain('but for the uppermost')
})
