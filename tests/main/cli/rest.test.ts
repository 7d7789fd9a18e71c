import { describe, expect, test } from 'vitest'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { runLine, scratch } from './run-line.ts'

const { write } = scratch()
const job = write('job.json', JSON.stringify(DEMO_JOB))

async function restOf(day: unknown): Promise<{ code: number; said: string; warned: string }> {
  return runLine('rest', job, '--day', write('day.json', typeof day === 'string' ? day : JSON.stringify(day)))
}

describe('rest', () => {
  test('says that nothing changes where nothing went otherwise', async () => {
    const { code, said, warned } = await restOf({ '2x10': { sawn: [1, 2] } })
    expect(said).toContain('nothing more than planned')
    expect(said).toContain('Everything is still sawn as planned.')
    expect([code, warned]).toEqual([0, ''])
  })

  test('plans what a culled board held from what lies there and the cheapest purchase', async () => {
    const { code, said } = await runLine(
      'rest',
      job,
      '--json',
      '--day',
      write('culled.json', '{ "2x10": { "sawn": [1], "culls": [{ "board": 3 }], } } // all of board 3'),
    )
    const [{ replan, plan }] = JSON.parse(said).rests
    expect(code).toBe(0)
    expect(replan.changed).toEqual([3])
    // an end joist and two blocks: whole members, which keep their marks
    const lost = plan.boards[2].cuts.map((cut: { mark: string }) => cut.mark)
    const again = replan.rest.plan.boards.flatMap((board: { cuts: { mark: string }[] }) =>
      board.cuts.map((cut) => cut.mark),
    )
    expect(again).toEqual(expect.arrayContaining(lost))
    expect(replan.money.extra).toBe(replan.money.now)
    expect(replan.money.now).toBeGreaterThan(0)
  })

  test('prints what is cut otherwise and what is bought, within the width of a terminal', async () => {
    const { said } = await restOf({
      '2x10': { culls: [{ board: 2, from: '0', to: '4 ft' }], refund: '80 %' },
    })
    for (const words of ['Cut otherwise', 'more than planned', 'Sawn otherwise: board'])
      expect(said).toContain(words)
    expect(said.split('\n').filter((line) => line.length > 110)).toEqual([])
  })

  test('places a fault under a product whose name holds a dot, even where another name is its beginning', async () => {
    const product = '2x10 SP No.2 treated'
    const lines = [
      '{',
      '  "2x10 SP No": {},',
      `  "${product}": {`,
      '    "sawn": [1, 9999],',
      '    "culls": [{ "board": 1, "from": "6 ft", "to": "4 ft" }]',
      '  },',
      '  "2x12": {',
      '    "swan": []',
      '  }',
      '}',
    ]
    const { warned } = await restOf(lines.join('\n'))
    expect(warned).toContain('day.json:2:3: 2x10 SP No: The job has no cutting plan of that name.')
    expect(warned).toContain(`day.json:4:5: ${product}.sawn: There is no board 9999.`)
    expect(warned).toContain(`day.json:5:5: ${product}.culls: Board 1 has no stretch`)
    expect(warned).toContain('day.json:8:5: 2x12.swan: there is no such field')
  })

  test.each([
    ['{ "2x10": { "swan": [1] } }', 'day.json:1:13: 2x10.swan: there is no such field; did you mean sawn?'],
    ['{ "2x10": { "sawn": [1, "two"] } }', '2x10.sawn.1'],
    ['{ "2x10": { "sawn": [9999] } }', 'There is no board 9999'],
    ['{ "2x10": { "miscuts": [{ "board": 1, "piece": "Z9" }] } }', 'there is no such piece'],
    ['{ "2x10": { "culls": [{ "board": 1, "from": "6 fot" }] } }', '2x10.culls.0.from'],
    ['{ "2x10": { "yard": [{ "length": "17 ft", "left": 0 }] } }', 'the price book has no such length'],
    ['{ "2x10": { "refund": "180 %" } }', 'no share from 0 to 100 %'],
    ['{ "3x10": {} }', 'The job has no cutting plan of that name. It has "2x10 SP No.2 treated"'],
    ['[]', 'it must name a product'],
    ['{', 'day.json:1'],
  ])('ends with 2 and says what is wrong with %s', async (day, sentence) => {
    const { code, said, warned } = await restOf(day)
    expect(warned).toContain(sentence)
    expect([code, said]).toEqual([2, ''])
  })

  test('needs to be told the day', async () => {
    expect(await runLine('rest', job)).toMatchObject({
      code: 2,
      warned: expect.stringContaining('--day DAY.json'),
    })
  })
})
