import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { type JobStatement, readJob } from '../../../core/job/index.ts'
import { toInches } from '../../../core/units/index.ts'

function setbacks(statement: JobStatement): readonly number[] {
  const read = readJob(statement)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const { front, rear } = read.value.job.frame.beams
  return [toInches(front.setback), toInches(rear.setback)]
}

const free = { attachment: 'freestanding' }

describe('setbacks that are not stated', () => {
  it.each<[string, JobStatement, number]>([
    ['12 ft on a ledger', { size: { depth: '12 ft' } }, 24],
    // clear span 96 − 18 − 1 1/2 − 1 1/2 = 75 in: a quarter is 18 3/4; the table has 18 in from 6 to 8 ft
    ['8 ft on a ledger', { size: { depth: '8 ft' } }, 18],
    // 120 − 2 × 18 − 3 = 81 in: a quarter is 20 1/4; the table has 18 in
    ['10 ft freestanding', { size: { depth: '10 ft' }, site: free }, 18],
    ['5 ft freestanding', { size: { depth: '5 ft' }, site: free }, 9],
    ['12 ft with 2x6 joists', { size: { depth: '9 ft' }, frame: { joists: { size: '2x6' } } }, 12],
  ])('follow the depth: %s', (_, statement, inches) => {
    expect(setbacks(statement)[0]).toBe(inches)
  })

  it('leave what is stated as it is, and take the other side for what that leaves', () => {
    const one = { size: { depth: '10 ft' }, site: free, frame: { beams: { rear: { setback: '30 in' } } } }
    // 120 − 30 − s − 3 in of beams: s = 12 leaves 75, and 18 leaves 69, under the 6 ft that 18 in asks for
    expect(setbacks(one)).toEqual([15, 30])
  })

  it('never fail the cantilever where a smaller setback would not', () => {
    const failing = (statement: JobStatement) => {
      const made = design(statement)
      if (!made.ok) throw new Error(JSON.stringify(made.error))
      return made.value.checks.filter(
        ({ id, status }) => id.startsWith('joist-cantilever-') && status === 'fails',
      ).length
    }
    for (const attachment of ['ledger', 'freestanding']) {
      for (let depth = 60; depth <= 200; depth += 5) {
        for (const size of ['2x6', '2x8', '2x10', '2x12']) {
          const statement = {
            size: { depth: `${depth} in`, width: '12 ft', height: '60 in' },
            site: { attachment, snowLoad: 0 },
            frame: { joists: { size } },
          }
          if (failing(statement) === 0) continue
          // the table lets 2x6 joists reach past no beam at all beside long spans
          const beams = { front: { setback: '6 in' }, rear: { setback: '6 in' } }
          const nearer = failing({ ...statement, frame: { joists: { size }, beams } })
          expect(nearer, `${attachment} ${depth} in, ${size}`).toBeGreaterThan(0)
        }
      }
    }
  })
})
