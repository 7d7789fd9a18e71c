import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readJobText } from '../../../core/job/index.ts'
import { smallJob } from '../../fixtures/worked-job.ts'
import { runLine, scratch } from './run-line.ts'

const { at, write } = scratch()
const job = write('small.json', smallJob())

describe('ground', () => {
  test('says what is dug where, how it is set out, and what it takes, in a terminal’s width', async () => {
    const { said } = await runLine('ground', job)
    for (const words of [
      'Footing schedule',
      'Strings',
      'Hole centres',
      'To find a mistake before digging',
      'Concrete, bags or ready-mix',
      'Form tubes',
      'Digging: worker hours',
      'Have utilities marked before digging',
    ])
      expect(said).toContain(words)
    expect(said.split('\n').filter((line) => line.length > 110)).toEqual([])
  })

  test('gives everything as JSON', async () => {
    const { said } = await runLine('ground', job, '--json', '--found', '2: 2 in right')
    const { prices, ground } = JSON.parse(said)
    expect(prices.name).toContain('Sample')
    expect(ground.footings).toHaveLength(3)
    expect(ground.found.options.map(({ kind }: { kind: string }) => kind)).toContain('shift the base')
  })

  test('writes the job with the way that is chosen', async () => {
    const chosen = at('chosen.json')
    const line = ['ground', job, '--found', '2: 2 in right', '--choose', 'keep', '--write', chosen]
    expect((await runLine(...line)).warned).toContain('Job: ')
    const read = readJobText(readFileSync(chosen, 'utf8'))
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    const { moved, found } = read.value.read.job.ground
    expect([moved, found]).toEqual(['2: 2"', '2: keep, 2" right'])
    // a file that is there is not replaced
    expect((await runLine(...line)).code).toBe(2)
  })

  test.each([
    [['--found', '9: 2 in right'], 'there is no hole 9; the plan has 3'],
    [['--found', '2: 2 in'], 'says no distance and direction'],
    [['--choose', 'keep', '--write', 'x.json'], '--choose needs --found'],
    [['--found', '2: 2 in right', '--choose', 'keep'], '--choose and --write go together'],
    [['--found', '2: 2 in right', '--choose', 'kep', '--write', 'x'], 'did you mean keep?'],
    [
      ['--found', '2: 2 in right', '--choose', 'dig again', '--write', at('never.json')],
      '"dig again" cannot be done. The new hole would break into the old one',
    ],
  ])('%j is refused with a sentence', async (options, sentence) => {
    const { code, warned, said } = await runLine('ground', job, ...options)
    expect([code, said]).toEqual([2, ''])
    expect(warned).toContain(sentence)
  })
})
