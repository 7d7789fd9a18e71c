import { describe, expect, it } from 'vitest'
import type { Member } from '../../../core/frame/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { designed } from '../../fixtures/designed.ts'
import { apart, corners } from '../../fixtures/shapes-apart.ts'

// A deck 10 ft by 8 ft, 60 in high, with a lower level before the left part of its front. Boards of decking are 1 in
// thick and reach 1 in past the frame; fascia 1x10 is 9-1/4 in by 3/4 in.

function levelsAt(lower: string, decking: object = { fascia: '1x10' }) {
  const made = designed({
    shape: {
      outline: '0, 0; 120, 0; 120, 96; 0, 96',
      levels: `${lower}: 0, 96; 60, 96; 60, 144; 0, 144`,
    },
    size: { height: '60 in' },
    frame: { joists: { size: '2x8', spacing: 12 }, beams: { front: { setback: 6 }, rear: { setback: 6 } } },
    decking,
    ground: { base: '16 in' },
  })
  return made
}

const fasciaOf = (members: readonly Member[]) => members.filter(({ role }) => role === 'fascia')
const inchesOf = ({ box }: Member) => [box.x0, box.x1, box.y0, box.y1, box.z0, box.z1].map((at) => at / 32)

/** Boards of the fascia on the higher level's front, from left to right. */
function frontOf(lower: string) {
  return fasciaOf(levelsAt(lower).frame.members)
    .filter(({ box }) => box.y0 === 96 * 32 && box.y1 === 96.75 * 32)
    .toSorted((a, b) => a.box.x0 - b.box.x0)
}

describe('fascia of a higher level over a lower one', () => {
  it('is ripped to what shows of the rim, 1/4 in over the lower boards, as far as those reach', () => {
    const [over, beside] = frontOf('52.5 in')
    if (over === undefined || beside === undefined) throw new Error('a fascia is missing')
    // from 59 in down to 52-3/4: 6-1/4 in; the lower boards end at 61 in
    expect(inchesOf(over)).toEqual([0, 61, 96, 96.75, 52.75, 59])
    expect(over.ripTo).toBe(6.25 * 32)
    expect(over.product.size).toBe('1x10')
    expect(inchesOf(beside)).toEqual([61, 120.75, 96, 96.75, 49.75, 59])
    expect(beside.ripTo).toBeNull()
  })

  it('is a whole board where the lower level lies below it', () => {
    const [over] = frontOf('40 in')
    if (over === undefined) throw new Error('a fascia is missing')
    // as high as the side's, with which it is mitred
    expect(inchesOf(over)).toEqual([-0.75, 61, 96, 96.75, 49.75, 59])
    expect(over.ripTo).toBeNull()
  })

  it('is left out where less than 1-1/2 in of it would be left', () => {
    // 59 − 57.5 − 0.25 = 1.25 in; 1.5 in at 57.25
    expect(frontOf('57.5 in').map(({ box }) => box.x0 / 32)).toEqual([61])
    expect(frontOf('57.25 in').map(({ ripTo }) => ripTo)).toEqual([1.5 * 32, null])
  })

  it('is counted with the rest of the fascia', () => {
    const { frame, takeoff } = levelsAt('52.5 in')
    const long = fasciaOf(frame.members).reduce((sum, { length }) => sum + length / 32, 0)
    // 61 + 59-3/4 on the front, 96-3/4 on the right and 95 on the left, where a lower board juts out 1 in round the corner;
    // 48-3/4, 61-1/2 and 48-3/4 round the lower level
    expect(long).toBe(61 + 59.75 + 96.75 + 95 + 48.75 + 61.5 + 48.75)
    expect(takeoff.tasks.find(({ rateId }) => rateId === 'fascia')?.thousandths).toBe(
      Math.ceil((1000 * long) / 12),
    )
  })
})

describe.each(CATALOGUE.filter(({ job }) => /levels":/.test(JSON.stringify(job))))(
  'fascia round every level of $file',
  ({ job }) => {
    it.each(['none', 'box'])('lies in no other wood, with steps: %s', (steps) => {
      const shape = { ...(job as { shape: object }).shape, steps }
      const made = designed({ ...job, shape, decking: { fascia: '1x10' } })
      const { members } = made.frame
      const clashes = fasciaOf(members).flatMap((one) =>
        members
          .filter((other) => other !== one)
          .filter(({ box }) => box.z0 < one.box.z1 - 1 && one.box.z0 < box.z1 - 1)
          .filter((other) => apart(corners(one), corners(other)) < -1)
          .map(({ id }) => `${one.id} in ${id}`),
      )
      expect(made.frame.freeEdges.some(({ over }) => over !== null)).toBe(true)
      expect(clashes).toEqual([])
    })
  },
)

describe('skirting between levels', () => {
  const areaAt = (lower: string) =>
    (levelsAt(lower, { skirting: 'lattice' }).takeoff.tasks.find(({ rateId }) => rateId === 'skirting')
      ?.thousandths ?? 0) / 1000
  const framedAt = (lower: string) =>
    levelsAt(lower, { skirting: 'lattice' }).frame.freeEdges.flatMap(({ over, length, clear }) =>
      over === null ? [] : [[over, length / 32, clear[0] / 32, clear[1] / 32]],
    )

  it('closes what stands open between the lower boards and the higher joists', () => {
    // the joists' underside is 59 − 7.25 = 51.75 in high
    expect(framedAt('40 in')).toEqual([[2, 61, 11.75, 11.75]])
    expect(framedAt('34 in')).toEqual([[2, 61, 17.75, 17.75]])
    // 6 in lower it closes 61 × 6 in more there, and 6 in less round the lower level: 48, 60 and 48 in
    expect(areaAt('34 in') - areaAt('40 in')).toBeCloseTo(((61 - 48 - 60 - 48) * 6) / 144, 2)
  })

  it('closes nothing where the lower level hides the joists’ underside', () => {
    expect(framedAt('52.5 in')).toEqual([[2, 61, 0, 0]])
  })
})
