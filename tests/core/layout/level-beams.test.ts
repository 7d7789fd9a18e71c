import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

// A deck of 20 by 12 ft at 42 in and a platform of 12 by 8 ft before it; 2x8 joists 7-1/4 in deep, beams of two 2x10, 9-1/4.
// Hand sums in inches.

const deck = CATALOGUE.find(({ file }) => file === 'levels-share-beam.json')
const job = deck?.job as {
  readonly shape: object
  readonly frame: { readonly beams: object; readonly joists: object }
}

function statement(shape: object = {}, frame: object = {}) {
  return { ...job, shape: { ...job.shape, ...shape }, frame: { ...job.frame, ...frame } }
}

function designOf(shape: object = {}, frame: object = {}): Design {
  const made = design(statement(shape, frame))
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function faultsOf(shape: object, frame: object = {}) {
  const made = design(statement(shape, frame))
  return made.ok ? [] : made.error.map(({ path, message }) => `${path}: ${message}`)
}

describe('a beam that two levels share', () => {
  const made = designOf()
  const { frame } = made
  const shared = frame.beams.find(({ key }) => key === 'front')
  const at = (id: string) => frame.members.find((member) => member.id === id)
  const on = (role: string) =>
    frame.members.filter(({ role: own, bearings }) => own === role && bearings.includes('beam-front'))

  it('stands in the place of two: with a beam of its own the lower level has one more', () => {
    expect(frame.beams.map(({ key }) => key)).toEqual(['front', 'front-b'])
    expect(designOf({ levelBeams: 'own' }).frame.beams.map(({ key }) => key)).toEqual([
      'front',
      'rear',
      'front-b',
    ])
  })

  it('lies at the higher level’s edge, its outer face on it, under that level’s joists', () => {
    // top: 42 − 1 − 7 1/4; its two plies from 141 to 144 in out
    const plies = frame.members.filter(({ id }) => shared?.plyIds.includes(id))
    expect(plies.map(({ box }) => [box.y0, box.y1, box.z0, box.z1].map((n) => n / 32))).toEqual([
      [141, 142.5, 24.5, 33.75],
      [142.5, 144, 24.5, 33.75],
    ])
    // the joists end at the rim's inner face and bear on the inner ply
    for (const { box } of on('joist').filter(({ box: { y0 } }) => y0 < 144 * 32)) {
      expect(box.y1 / 32).toBe(142.5)
      expect(box.z0 / 32).toBe(33.75)
    }
  })

  it('has the lower level’s joists hung at its side, within its depth', () => {
    // decking 7 1/2 in below, so joists from 26 1/4 to 33 1/2: within 24 1/2 to 33 3/4; 240 − 1 1/2 − 144 long
    const lower = on('joist').filter(({ box: { y0 } }) => y0 >= 144 * 32)
    expect(lower).toHaveLength(8)
    for (const { box, length } of lower) {
      expect([box.z0 / 32, box.z1 / 32, box.y0 / 32]).toEqual([26.25, 33.5, 144])
      expect(length / 32).toBe(94.5)
    }
  })

  it('ties down what lies on it and hangs what meets its side', () => {
    const count = (kind: string) =>
      frame.connectors.filter((one) => one.kind === kind).map((one) => [one.count, one.at.length])
    // 14 joists at the ledger, 8 at the beam's side; an angle for each end joist there
    expect(count('joist hanger')).toEqual([[22, 22]])
    expect(count('end joist angle')).toEqual([[4, 4]])
    // 16 joists on the shared beam, 10 on the lower level's own
    expect(count('uplift tie').map(([n]) => n)).toEqual([16, 10])
  })

  it('carries both levels down to its posts, and is calculated, as no table has it', () => {
    // half of the spans from ledger face to beam and from beam to beam, and the cantilevers: tributary by hand
    // upper: (142.5 − 1.5) ÷ 2 + 1.5 = 72; lower: (220 − 144) ÷ 2 = 38; along 12 + 54 ÷ 2 of the end post: 39 in
    const facts = made.checks.find(({ id }) => id === 'beam-span-front')
    expect(facts?.status).toBe('calculated only')
    expect(facts?.message).toContain('from the side of the front beam those of a lower level hang')
    expect(facts?.remedy).toContain('twist')
    const inner = made.checks.find(({ id }) => id === 'footing-size-footing-front-2')
    // an inner post has 54 in of it: 54 × (72 + 38) ÷ 144 = 41.25 sq ft
    expect(inner?.findings.flatMap(({ steps }) => steps).join(' ')).toContain('41.25 sq ft')
  })

  it('leaves the lower level’s decking a gap short of the higher one’s rim', () => {
    const lower = frame.members.filter(({ role, box }) => role === 'decking' && box.z1 / 32 === 34.5)
    expect(Math.min(...lower.map(({ box }) => box.y0)) / 32).toBeCloseTo(144.125, 3)
  })

  it('has what stands on it traced to the field that asks for it', () => {
    const joist = on('joist').find(({ box: { y0 } }) => y0 >= 144 * 32)
    expect(joist?.cause.fields).toContain('shape.levelBeams')
    expect(at('beam-front-ply-1')?.bearings).toHaveLength(5)
  })

  it('is told where it cannot be', () => {
    const lower = (height: string) => ({ levels: `${height}: 4', 12'; 16', 12'; 16', 20'; 4', 20'` })
    // 42 − 35 = 7, less than 7 1/4; 42 − 32 = 10, more than 9 1/4
    expect(faultsOf(lower('35 in'))[0]).toMatch(
      /^shape\.levels: level 2 lies 7" below level 1; .* from 7 1\/4 in/,
    )
    expect(faultsOf(lower('32 in'))[0]).toMatch(/^shape\.levels: level 2 lies 10" below level 1/)
    expect(faultsOf({ levels: "34 1/2 in: 4', 12'; 22', 12'; 22', 20'; 4', 20'" })).toEqual([
      'shape.levelBeams: no level’s joists end along the edge of a higher level: there is no beam for both',
    ])
    const front = { ...job.frame.beams, front: { size: '2x10', plies: 1, posts: 5 } }
    expect(faultsOf({}, { beams: front })[0]).toMatch(
      /^frame\.beams\.front\.plies: joists of level 1 would bear 0 in/,
    )
  })

  it('is not a flush beam, whose posts would stand in the lower level’s rim where that has beams of its own', () => {
    // posts 5-1/2 in across under a beam of 3 in at the edge reach 1-1/4 in past it
    const beams = { ...job.frame.beams, front: { size: '2x8', set: 'flush', posts: 5 } }
    expect(faultsOf({}, { beams })[0]).toMatch(
      /^frame\.beams\.front\.set: the beam that levels 1 and 2 would share/,
    )
    expect(faultsOf({ levelBeams: 'own' }, { beams })).toEqual(['shape.levels: post 2 would stand in rim R2'])
  })

  it('is shared the other way where the platform is the higher one', () => {
    // the deck's own front edge lies along the platform's rear one, 7 1/2 in lower
    const up = designOf({
      outline: "0, 0; 12', 0; 12', 12'; 0, 12'",
      levels: "49 1/2 in: 0, 12'; 20', 12'; 20', 20'; 0, 20'",
    })
    expect(up.frame.beams).toHaveLength(2)
    const hung = up.frame.members.filter(
      ({ role, box, bearings }) => role === 'joist' && box.y0 < 140 * 32 && bearings.includes('beam-rear'),
    )
    expect(hung.length).toBeGreaterThan(6)
    for (const { box } of hung) expect(box.y1 / 32).toBe(144)
  })
})
