import { describe, expect, test } from 'vitest'
import { optionList, printOptions, readJob, withOption } from '../../../core/job/index.ts'

const faultOf = (options: string) => {
  const read = readJob({ pricing: { options } })
  return read.ok ? null : read.error[0]
}

describe('options of a quote', () => {
  test('are names with the fields that change, semicolons or lines between them, braces around commas', () => {
    const text =
      'Higher, and open: size.height = 4 ft, guard.where = all open edges\nAn L: shape.outline = {0,0; 20 ft,0}'
    const read = optionList(text)
    expect(read).toEqual([
      {
        name: 'Higher, and open',
        changes: [
          { path: 'size.height', text: '4 ft' },
          { path: 'guard.where', text: 'all open edges' },
        ],
      },
      { name: 'An L', changes: [{ path: 'shape.outline', text: '0,0; 20 ft,0' }] },
    ])
    expect(optionList(printOptions(read))).toEqual(read)
    expect(optionList(' ; \n')).toEqual([])
  })

  test('are the job with the named fields stated otherwise', () => {
    const [higher] = optionList('Higher: size.height = 4 ft, work.joistTape = yes, decking.size =')
    if (higher === undefined) throw new Error('there is one')
    const job = { size: { width: '12 ft' }, decking: { size: '2x6' } }
    expect(withOption(job, higher)).toEqual({
      size: { width: '12 ft', height: '4 ft' },
      work: { joistTape: true },
    })
  })

  test.each([
    ['size.height = 4 ft', 'names no option'],
    ['Higher:', 'changes nothing'],
    ['Higher: size.heigth = 4 ft', 'cannot change "size.heigth"'],
    ['Named: name = Other', 'cannot change "name"'],
    ['Inside: pricing.options = {A: size.width = 9 ft}', 'cannot change "pricing.options"'],
    ['Higher: size.height = tall', 'the option "Higher"'],
    ['Higher: size.height = 4 ft, size.height = 5 ft', 'twice'],
    ['A: size.height = 4 ft; A: size.height = 5 ft', 'two options are called "A"'],
    [Array.from({ length: 9 }, (_, i) => `N${i}: size.height = 4 ft`).join(';'), 'there are 9 options'],
  ])('%j is a fault of its field with what would be right', (text, sentence) => {
    const fault = faultOf(text)
    expect(fault?.path).toBe('pricing.options')
    expect(fault?.message).toContain(sentence)
    expect(fault?.fix).not.toBe('')
  })
})
