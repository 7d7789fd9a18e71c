import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import type { Design } from '../../../core/estimate-types.ts'
import { type JobStatement, setField } from '../../../core/job/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { ofRole } from './joint-decks.ts'

const jobOf = (file: string): JobStatement => {
  const deck = CATALOGUE.find((one) => one.file === file)
  if (deck === undefined) throw new Error(`no ${file}`)
  return deck.job
}

function designOf(job: JobStatement, shape: object = {}): Design {
  const made = design({ ...job, shape: { ...(job.shape as object), ...shape } })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

describe('a flush beam between two parts whose joists both end there', () => {
  it('makes the frame that a flush middle beam in the same place makes', () => {
    const job = jobOf('flush-middle.json')
    // a middle beam is built as the front one (2-2x12, inset 10 in), the beam between parts here as the rear one
    const rear = Object.entries({ size: '2x12', posts: 4, inset: '10 in' })
    const alike = rear.reduce((all, [what, value]) => setField(all, `frame.beams.rear.${what}`, value), job)
    const middle = designOf(alike)
    const parts = designOf(alike, {
      middleBeams: '',
      zones: "0, 12', 14', 12': away",
      seams: 'flush',
    })
    const wood = ({ frame }: Design) =>
      frame.members
        .filter(({ role }) => role !== 'decking')
        .map(({ role, length, box }) =>
          [role, length, box.x0, box.y0, box.z0, box.x1, box.y1, box.z1].join(' '),
        )
        .sort()
    const metal = ({ frame }: Design) => frame.connectors.map(({ kind, count }) => `${kind} ${count}`).sort()
    expect(wood(parts)).toEqual(wood(middle))
    expect(metal(parts)).toEqual(metal(middle))
    const load = ({ checks }: Design, key: string) =>
      checks.find(({ id }) => id === `beam-span-${key}`)?.findings.map(({ demand }) => demand?.value)
    // the joists of both parts load it, as they do where one part is hung on both its sides
    expect(load(parts, 'rear')).toEqual(load(middle, 'middle'))
  })

  it('carries no dropped beam there, and no block', () => {
    const { frame } = designOf(jobOf('flush-parts.json'))
    const beam = frame.beams.find(({ flush }) => flush)
    expect([beam?.from, beam?.to, beam?.y].map((at) => (at ?? 0) / 32)).toEqual([48, 168, 120])
    // two plies of 1-1/2 in, half in each part: joists end at 118-1/2 and begin at 121-1/2 in
    const hung = ofRole(frame, 'joist').filter(({ bearings }) => bearings.includes(beam?.id ?? ''))
    expect(new Set(hung.map(({ box }) => (box.y0 / 32 < 100 ? box.y1 : box.y0) / 32))).toEqual(
      new Set([118.5, 121.5]),
    )
    expect(ofRole(frame, 'blocking').filter(({ id }) => id.includes('rear'))).toEqual([])
  })
})

describe('a flush beam of one part beside another’s end joist', () => {
  const made = designOf(jobOf('flush-wing.json'))
  const { frame } = made

  it('stands in the part whose joists hang from it, its top level with theirs', () => {
    const plies = ofRole(frame, 'beam ply').filter(({ box }) => box.x0 / 32 >= 240 && box.x1 / 32 <= 243)
    // 243 in to the rim's inner face at 358-1/2
    expect(plies.map(({ box }) => [box.x0 / 32, box.x1 / 32, box.y1 / 32, box.z1 / 32])).toEqual([
      [240, 241.5, 120, 41],
      [241.5, 243, 120, 41],
    ])
    const hung = ofRole(frame, 'joist').filter(({ box }) => box.x0 / 32 === 243)
    expect(hung.map(({ length }) => length / 32)).toEqual(Array(7).fill(115.5))
  })

  it('lets each joist be traced to the seam', () => {
    const joist = ofRole(frame, 'joist').find(({ box }) => box.x0 / 32 === 243)
    expect(joist?.cause.fields).toContain('shape.seams')
    expect(
      frame.members.find(({ role, box }) => role === 'beam ply' && box.x0 / 32 === 240)?.cause.fields,
    ).toContain('shape.seams')
  })
})

describe('a flush beam that cannot be where parts meet', () => {
  it('is told where it is shallower than the joists, at the beam’s size', () => {
    const job = jobOf('flush-parts.json')
    const made = design({
      ...job,
      frame: { ...(job.frame as object), beams: { front: { size: '2x10' }, rear: { size: '2x8' } } },
    })
    expect(made.ok ? [] : made.error.map(({ path }) => path)).toEqual(['frame.beams.rear.size'])
  })

  it('is told where it would end at an edge at an angle', () => {
    const made = design({
      ...jobOf('flush-parts.json'),
      shape: {
        outline: "0, 0; 20', 0; 17', 10'; 14', 20'; 0, 20'",
        zones: "0, 10', 20', 10': away",
        seams: 'flush',
      },
    })
    expect(made.ok ? [] : made.error.map(({ path, message }) => `${path}: ${message}`)).toContain(
      'shape.seams: a flush beam where two parts meet ends at an edge at an angle',
    )
  })
})
