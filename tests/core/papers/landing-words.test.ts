import { expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { landingWords } from '../../../core/papers/build/landing-words.ts'

const JOB = {
  size: { width: '18 ft', depth: '12 ft', height: '9 ft' },
  frame: { postSize: '6x6' },
  ground: { tube: '12 in', base: '20 in', baseThickness: '8 in' },
}

function wordsOf(kind: string): string {
  const made = design({ ...JOB, stairs: { kind, side: 'front', align: 'near', width: '4 ft' } })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const [stairs] = made.value.stairs
  return (stairs === undefined ? null : landingWords(stairs)) ?? ''
}

it('a landing’s outer beam that is flush with its posts’ faces is told, with how far its middle lies off theirs', () => {
  // two plies are 3 in, a 6x6 is 5-1/2 in: 2-3/4 − 1-1/2 = 1-1/4 in
  expect(wordsOf('landing')).toContain('flush with those of LP3 and LP4, its middle 1 1/4" outside theirs')
  expect(wordsOf('landing')).toContain('a beam at the post’s edge')
})

it('where the flight turns the beams stand on their posts’ middle, and nothing is told', () => {
  expect(wordsOf('landing left')).not.toContain('outside theirs')
})
