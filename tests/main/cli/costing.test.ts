import { describe, expect, test } from 'vitest'
import { DEMO_JOB } from '../../../core/job/index.ts'
import { UNDER_WAY } from '../../core/costing/worked-costing.ts'
import { runLine, scratch } from './run-line.ts'

const { write } = scratch()
const begun = write('begun.json', { ...DEMO_JOB, costing: UNDER_WAY.costing ?? {} })

describe('estimate of a job that is begun', () => {
  test('tells what was bought and worked beside the estimate that the file keeps', async () => {
    const { said } = await runLine('estimate', begun)
    const [, told = ''] = said.split('Estimated and actual')
    // worked by hand in the tests of costing: 13.75 h at $45 against 11.5 h
    expect(told).toMatch(/Set joists +11\.5 +13\.75 +worker hour +\$517\.50 +\$618\.75 +\+\$101\.25/)
    expect(told).toMatch(/2026-04-09 +2x10, 16 ft: two back +-2 +-\$46\.98/)
    expect(told).toMatch(/2026-04-06 +Set joists +Ada +6\.25/)
  })

  test('has it as data too, and a job that is not begun has none', async () => {
    const { said } = await runLine('estimate', begun, '--json')
    const { costing } = JSON.parse(said) as { costing: { hours: object; boards: object } }
    expect(costing).toMatchObject({
      hours: { estimated: 11_500, worked: 13_750 },
      boards: { bought: 7, unusable: 1, left: 1 },
    })
    const plain = await runLine('estimate', write('plain.json', DEMO_JOB), '--json')
    expect(JSON.parse(plain.said)).not.toHaveProperty('costing')
  })

  test('a purchase that cannot be read is told by line and column, and nothing is written', async () => {
    const bad = write(
      'bad.json',
      '{\n  "costing": { "bought": [\n    { "what": "Tarp", "amount": "ten" }\n  ] }\n}',
    )
    const { code, said, warned } = await runLine('estimate', bad)
    expect(code).toBe(2)
    expect(said).toBe('')
    expect(warned).toMatch(/bad\.json:3:\d+: costing\.bought\.0\.amount: "ten"/)
  })
})
