import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readJobText } from '../../../core/job/index.ts'
import { runLine, scratch } from './run-line.ts'

const { at, write } = scratch()
const strong = write(
  'strong.json',
  `{
  "size": { "width": "14 ft", "depth": "11 ft", "height": "30 in" },
  "site": { "frostDepth": "36 in", "frostSource": "the building department", "snowLoad": 0 },
  "frame": { "joists": { "size": "2x12", "spacing": "12 in" },
             "beams": { "front": { "size": "2x12", "plies": 3, "setback": "18 in", "posts": 4 } }, "postSize": "8x8" },
  "ground": { "tube": "16 in", "base": "36 in", "baseThickness": "12 in" }
}`,
)

describe('size', () => {
  test('makes an oversized frame cheaper, says what governs, and writes the sized job as a new file', async () => {
    const sized = at('sized.json')
    const { code, said } = await runLine('size', strong, '--write', sized)
    expect(code).toBe(0)
    for (const words of ['Change', 'Joist size', 'less', 'What governs', 'Nothing that passes is cheaper'])
      expect(said).toContain(words)
    expect(said.split('\n').filter((line) => line.length > 110)).toEqual([])
    const again = await runLine('size', sized)
    expect(again.said).toContain('The sizes as stated are the cheapest that pass.')
    expect((await runLine('check', sized)).code).toBe(0)
  }, 180_000)

  test('leaves a held field as it is', async () => {
    const sized = at('held.json')
    await runLine('size', strong, '--hold', 'frame.joists.size,frame.postSize', '--write', sized)
    const read = readJobText(readFileSync(sized, 'utf8'))
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    const { frame } = read.value.read.job
    expect([frame.joists.size, frame.postSize]).toEqual(['2x12', '8x8'])
  }, 180_000)

  test('says what the nearest frame fails on where none passes', async () => {
    const long = write(
      'long.json',
      '{ "size": { "width": "14 ft", "depth": "30 ft", "height": "9 ft" }, "site": { "frostSource": "x" } }',
    )
    const { code, said } = await runLine('size', long)
    expect(code).toBe(1)
    expect(said).toContain('No size of the catalogue passes every check.')
    expect(said).toContain('Joist span')
  }, 180_000)

  test('refuses to hold what it does not size, and to write over a file', async () => {
    const wrong = await runLine('size', strong, '--hold', 'frame.joist.size')
    expect([wrong.code, wrong.warned]).toEqual([
      2,
      expect.stringContaining(
        '--hold: "frame.joist.size" is no field that is sized; did you mean frame.joists.size?',
      ),
    ])
    const over = await runLine('size', strong, '--write', strong)
    expect(over.code).toBe(2)
    expect(over.warned).toContain('is already there')
  }, 180_000)
})
