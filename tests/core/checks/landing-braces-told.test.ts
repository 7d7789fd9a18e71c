import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'

function landingOf(height: string) {
  const made = design({
    version: 1,
    size: { width: '18 ft', depth: '12 ft', height },
    frame: { beams: { front: { setback: '20 in', posts: 5 } } },
    stairs: { kind: 'landing', side: 'front', width: '4 ft' },
  })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const { checks, stairs } = made.value
  const braces = stairs.flatMap(({ members }) => members.filter(({ role }) => role === 'landing brace'))
  return { remedy: checks.find(({ id }) => id === 'stair-landing')?.remedy ?? '', braces }
}

it('the check of a landing names its braces, and says that nothing reckons them', () => {
  const { remedy, braces } = landingOf('9 ft')
  expect(braces.length).toBeGreaterThan(1)
  expect(remedy).toContain(
    `Its braces, ${braces.map(({ mark }) => mark).join(', ')}, are common practice: no table has them and nothing reckons them`,
  )
  expect(remedy).not.toContain('Brace it against the deck')
})

it('of a landing too low for braces it says that its posts stand without any', () => {
  const { remedy, braces } = landingOf('5 ft')
  expect(braces).toEqual([])
  expect(remedy).toContain(
    'Its posts are too short for braces, and nothing reckons what keeps it from swaying',
  )
})
