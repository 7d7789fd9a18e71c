import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { stairDetails } from '../../../core/papers/details/stair-detail.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const high = CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job ?? {}

function stepsOf(statement: object) {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const check = made.value.checks.find(({ id }) => id === 'stair-steps')
  return {
    status: check?.status,
    message: check?.message ?? '',
    told: check?.remedy ?? '',
  }
}

// two 5/4x6 and a gap of 1/8 in are 11-1/8 in deep: 7/8 in of nosing over runs of 10-1/4 in, past riser boards of 1 in
describe('treads and nosings, measured from the boards', () => {
  it('hold where the deck’s boards reach 1 in over the rim: 1/8 in from the nosing of a tread', () => {
    const { status, told } = stepsOf(high)
    expect(status).toBe('passes')
    expect(told).not.toMatch(/riser boards|reach/i)
  })

  it('fail where the deck’s boards make no nosing, and say what they must reach', () => {
    const { status, message, told } = stepsOf({ ...high, decking: { overhang: '0 in' } })
    expect(status).toBe('fails')
    expect(message).toContain('the nosing is not at least 0.75 in')
    expect(told).toContain('Let the decking overhang by 7/8", as each tread does.')
  })

  it('fail where they reach further than a nosing may, IRC R311.7.5.3', () => {
    const { status, message } = stepsOf({ ...high, decking: { overhang: '1 1/2 in' } })
    expect(status).toBe('fails')
    expect(message).toContain('the difference between nosings is not at most 0.375 in')
    expect(message).toContain('the nosing is not at most 1.25 in')
  })

  it('of treads 11 in deep ask for no nosing, but tell of one that the deck’s boards make', () => {
    const { status, told } = stepsOf({
      ...high,
      stairs: { ...STAIRS, run: '11 in' },
    })
    expect(status).toBe('passes')
    expect(told).toContain('The deck’s boards reach 1 in over the face under them, each tread 1/8 in')
    expect(told).toContain('the uppermost tread stands 7/8 in off the rim')
  })

  it('leave 36 in of a landing before the board of the riser that stands on it', () => {
    const { status, message } = stepsOf({ ...high, stairs: { ...STAIRS, landingDepth: '36 in' } })
    expect(status).toBe('fails')
    expect(message).toContain(
      'the landing between the flights, from the face of the riser at it is not at least 36 in',
    )
  })
})

const STAIRS = { kind: 'landing', side: 'front', align: 'near', width: '4 ft' }

describe('a riser’s board in the detail', () => {
  it('stands on the rise cut, and the tread behind it butts against its face', () => {
    const [detail] = stairDetails(paperSource(high).estimate)
    const rects = (id: string) =>
      (detail?.drawing.primitives ?? [])
        .flatMap((p) => (p.kind === 'rect' && p.id === id ? [p] : []))
        .map(({ x, w }) => [x / 32, (x + w) / 32])
    // the lowest cut is at 0, the way down at the left: the board is 1 in thick
    expect(rects('riser')).toEqual([
      [-1, 0],
      [9.25, 10.25],
    ])
    expect(rects('tread')).toEqual([
      [-1.875, 9.25],
      [8.375, 19.5],
    ])
  })
})
