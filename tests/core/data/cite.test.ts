import { describe, expect, it } from 'vitest'
import { cite } from '../../../core/data/index.ts'

describe('a source in one phrase', () => {
  it('names document, edition and clause with how far they were verified', () => {
    expect(
      cite({ document: 'IRC', edition: '2021', clause: 'R507.6.2', confidence: 'verified', note: 'read' }),
    ).toBe('IRC 2021 R507.6.2, verified')
  })

  it('leaves out what is not known, and names no document for common practice', () => {
    expect(
      cite({
        document: 'typical hanger schedules',
        edition: '',
        clause: '',
        confidence: 'from memory',
        note: '',
      }),
    ).toBe('typical hanger schedules, from memory')
    expect(
      cite({ document: '', edition: '', clause: 'x', confidence: 'common practice, no source', note: '' }),
    ).toBe('common practice, no source')
  })
})
