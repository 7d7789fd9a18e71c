import { expect, test } from 'vitest'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { runLine, scratch } from './run-line.ts'

const { write } = scratch()
const wishing = (cutting: object) => write('wishes.json', JSON.stringify({ ...DEMO_JOB, cutting }))

test('an estimate says what each wish costs, and nothing where none is wished', async () => {
  const wished = await runLine('estimate', wishing({ onePiece: 'beam b1', doWithout: '2x10: 16' }))
  expect(wished.said).toContain('What your wishes cost')
  expect(wished.said).toMatch(/Beam B1 in one piece: \$\d+\.\d\d more for boards and joints; \$\d+/)
  expect(wished.said).toMatch(/No 16' 2x10: \$\d+\.\d\d more for boards and joints/)
  const plain = await runLine('estimate', write('plain.json', JSON.stringify(DEMO_JOB)))
  expect(plain.said).not.toContain('wishes')
})

test('a run that the deck does not have is told at its place in the job file', async () => {
  const job = write('unknown.json', '{\n  "cutting": {\n    "onePiece": "Beam B8"\n  }\n}')
  const { code, warned, said } = await runLine('estimate', job)
  expect([code, said]).toEqual([2, ''])
  expect(warned).toMatch(
    /unknown\.json(:3:\d+)?: cutting\.onePiece: no run of this deck is called "Beam B8"; the nearest is "Beam B1"/,
  )
})
