import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, type Frame, frameDeck, holeSetOut } from '../../core/frame/index.ts'
import { FIELDS, type Job, readJob } from '../../core/job/index.ts'
import { layOut } from '../../core/layout/index.ts'
import { takeOff } from '../../core/takeoff/index.ts'
import { ticks } from '../../core/units/index.ts'
import { anyJob, anyStatement } from './arbitrary-job.ts'

const paths = new Set(FIELDS.map((field) => field.path))

function frameOf(job: Job): Frame | null {
  const layout = layOut(job)
  if (!layout.ok) return null
  const framed = frameDeck(job, layout.value)
  return framed.ok ? framed.value : null
}

/** Asserts a law for every job that can be framed. */
function holds(law: (job: Job, frame: Frame) => void) {
  let framed = 0
  let all = 0
  fc.assert(
    fc.property(anyJob, (job) => {
      all += 1
      const frame = frameOf(job)
      if (frame === null) return
      framed += 1
      law(job, frame)
    }),
  )
  expect(framed, 'many random jobs can be framed, else the law is hardly tried').toBeGreaterThan(all / 12)
}

function overlap(a: Box, b: Box): boolean {
  const slack = 1e-6
  return (
    a.x0 < b.x1 - slack &&
    b.x0 < a.x1 - slack &&
    a.y0 < b.y1 - slack &&
    b.y0 < a.y1 - slack &&
    a.z0 < b.z1 - slack &&
    b.z0 < a.z1 - slack
  )
}

describe('framing any deck', () => {
  it('gives a frame or faults that name a field, the wrong and the right', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const layout = layOut(job)
        const framed = layout.ok ? frameDeck(job, layout.value) : layout
        if (framed.ok) return
        expect(framed.error.length).toBeGreaterThan(0)
        for (const fault of framed.error) {
          expect(paths).toContain(fault.path)
          // parts of one sentence, which the doors put together
          expect(fault.message).toMatch(/^[^A-Z].*[^.]$/)
          expect(fault.fix).toMatch(/^[^A-Z].*[^.]$/)
        }
      }),
    )
  })

  it('does so for any statement whose fields are each within their bounds, and then takes it off', () => {
    let built = 0
    fc.assert(
      fc.property(anyStatement, (statement) => {
        const read = readJob(statement)
        if (!read.ok) {
          // only rules between fields can be broken here
          for (const fault of read.error) expect(paths).toContain(fault.path)
          return
        }
        const { job } = read.value
        const layout = layOut(job)
        const framed = layout.ok ? frameDeck(job, layout.value) : layout
        if (!framed.ok) {
          for (const fault of framed.error) expect(paths).toContain(fault.path)
          return
        }
        expect(takeOff(job, framed.value).pieces.length).toBeGreaterThan(0)
        built += 1
      }),
    )
    expect(built, 'some of them can be built').toBeGreaterThan(0)
  })

  it('never puts two members in one place', () => {
    holds((_job, frame) => {
      const { members } = frame
      for (const [i, a] of members.entries()) {
        for (const b of members.slice(i + 1)) {
          if (overlap(a.box, b.box)) throw new Error(`${a.id} and ${b.id} overlap`)
        }
      }
    })
  })

  it('keeps every member but the decking inside the outline, and the decking within its overhang', () => {
    holds((job, frame) => {
      for (const { box, role, id } of frame.members) {
        const over = role === 'decking' ? job.decking.overhang : 0
        expect(box.x0, id).toBeGreaterThanOrEqual(-over)
        expect(box.x1, id).toBeLessThanOrEqual(job.size.width + over)
        // a post under a beam close to the rim is wider than the beam and shows in front of it
        if (role !== 'post') expect(box.y1, id).toBeLessThanOrEqual(job.size.depth + over)
        expect(box.y0, id).toBeGreaterThanOrEqual(-over)
      }
    })
  })

  it('has no bay wider than the spacing, and all but the end bays equal to it', () => {
    holds((job, frame) => {
      const bays = frame.joistCentres.slice(1).map((centre, i) => centre - (frame.joistCentres[i] ?? 0))
      const ordered = job.frame.joists.layoutFrom === 'left' ? bays : bays.toReversed()
      const { spacing } = job.frame.joists
      for (const bay of bays) expect(bay).toBeLessThanOrEqual(spacing)
      for (const bay of ordered.slice(1, -2)) expect(bay).toBe(spacing)
    })
  })

  it('mirrors the joists when they are laid out from the other end', () => {
    holds((job, frame) => {
      const layoutFrom = job.frame.joists.layoutFrom === 'left' ? ('right' as const) : ('left' as const)
      const other = frameOf({ ...job, frame: { ...job.frame, joists: { ...job.frame.joists, layoutFrom } } })
      expect(other?.joistCentres).toEqual(
        frame.joistCentres.map((centre) => job.size.width - centre).toReversed(),
      )
    })
  })

  it('gives every member an id and a mark of its own', () => {
    holds((_job, frame) => {
      expect(new Set(frame.members.map((member) => member.id)).size).toBe(frame.members.length)
      expect(new Set(frame.members.map((member) => member.mark)).size).toBe(frame.members.length)
    })
  })

  it('carries each member by things that are there, and traces it to fields of the job', () => {
    holds((job, frame) => {
      const known = new Set([
        'house-wall',
        ...frame.members.map((member) => member.id),
        ...frame.beams.map((beam) => beam.id),
        ...frame.footings.map((footing) => footing.id),
        ...frame.runs.map((run) => run.id),
      ])
      const takeoff = takeOff(job, frame)
      const causes = [
        ...frame.members,
        ...frame.footings,
        ...frame.connectors,
        ...frame.runs,
        ...takeoff.pieces,
        ...takeoff.goods,
        ...takeoff.tasks,
      ].map((one) => one.cause)
      for (const member of frame.members) for (const id of member.bearings) expect(known).toContain(id)
      for (const cause of causes) {
        for (const id of cause.ids) expect(known).toContain(id)
        for (const field of cause.fields) expect(paths).toContain(field)
        expect(cause.fields.length + cause.ids.length).toBeGreaterThan(0)
        expect(cause.rule).not.toBe('')
      }
    })
  })

  it('has no circle of causes: every why ends at fields of the job', () => {
    holds((_job, frame) => {
      const causes = new Map(
        [...frame.members, ...frame.footings, ...frame.runs].map((one) => [one.id, one.cause]),
      )
      const done = new Set<string>()
      const walk = (id: string, above: readonly string[]) => {
        if (above.includes(id)) throw new Error(`${[...above, id].join(' because of ')}`)
        if (done.has(id)) return
        for (const next of causes.get(id)?.ids ?? []) walk(next, [...above, id])
        done.add(id)
      }
      for (const id of causes.keys()) walk(id, [])
    })
  })

  it('keeps joist ids, places and lengths when only the height changes', () => {
    holds((job, frame) => {
      const higher = frameOf({ ...job, size: { ...job.size, height: ticks(job.size.height + 40) } })
      const joistsOf = (one: Frame | null) =>
        one?.members
          .filter((member) => member.role === 'joist')
          .map(({ id, mark, length, box }) => ({ id, mark, length, x0: box.x0, y0: box.y0 }))
      expect(joistsOf(higher)).toEqual(joistsOf(frame))
    })
  })

  it('offers joints in ascending order inside the run, each point either admissible or refused with a reason', () => {
    holds((_job, frame) => {
      for (const run of frame.runs) {
        const ats = run.points.map((point) => point.at)
        expect(ats).toEqual([...ats].sort((a, b) => a - b))
        for (const at of ats) {
          expect(at).toBeGreaterThan(0)
          expect(at).toBeLessThan(run.length)
        }
        for (const point of run.refused) expect(point.why).toMatch(/\.$/)
        const both = new Set(run.points.map((point) => point.label))
        for (const point of run.refused) expect(both).not.toContain(point.label)
      }
    })
  })

  it('bottoms every footing at the frost depth or 12 in, and brings post and concrete up to the beam', () => {
    holds((job, frame) => {
      for (const [i, footing] of frame.footings.entries()) {
        const post = frame.posts[i]
        const box = frame.members.find((member) => member.id === post?.id)?.box
        expect(footing.depth).toBe(Math.max(job.site.frostDepth, 384))
        expect(footing.tubeLength + footing.baseThickness).toBe(footing.depth + job.ground.projection)
        const gap = (box?.z0 ?? 0) - footing.topOfConcrete - job.ground.standoff
        expect(Math.abs(gap)).toBeLessThanOrEqual(1)
      }
    })
  })

  it('covers the depth with decking to within 1/4 in and a gap', () => {
    holds((job, frame) => {
      const courses = frame.members.filter((member) => member.role === 'decking')
      const last = courses.at(-1)
      const short = job.size.depth + job.decking.overhang - (last?.box.y1 ?? 0)
      expect(short).toBeGreaterThanOrEqual(0)
      expect(short).toBeLessThanOrEqual(8 + job.decking.gap)
      for (const [i, course] of courses.entries()) {
        const next = courses[i + 1]
        if (next) expect(next.box.y0 - course.box.y1).toBe(job.decking.gap)
      }
    })
  })

  it('ties an attached deck to the house by two hold-downs within 24 in of its end joists, IRC 2021 R507.9.2', () => {
    holds((job, frame) => {
      const at = frame.connectors.find((one) => one.kind === 'hold-down')?.at ?? []
      expect(at).toHaveLength(job.site.attachment === 'ledger' ? 2 : 0)
      const centres = at.map((id) => {
        const box = frame.members.find((member) => member.id === id)?.box
        return ((box?.x0 ?? 0) + (box?.x1 ?? 0)) / 2
      })
      // of the joists that stand 24 in apart: from the middle of the end joist, which the check says
      for (const [i, centre] of centres.entries())
        expect(i === 0 ? centre : job.size.width - centre).toBeLessThanOrEqual(24.75 * 32)
      expect(new Set(at).size).toBe(at.length)
    })
  })

  it('states offsets and both diagonals of each hole to the nearest 1/16 in', () => {
    holds((job, frame) => {
      for (const hole of holeSetOut(frame, job)) {
        const { x, y } = frame.footings.find(({ id }) => id === hole.footingId) ?? { x: 0, y: 0 }
        const stated = [hole.along, hole.fromWall, hole.fromLeftCorner, hole.fromRightCorner]
        const exact = [x, y, Math.hypot(x, y), Math.hypot(job.size.width - x, y)]
        for (const [i, length] of stated.entries()) {
          expect(length % 2).toBe(0)
          expect(Math.abs(length - (exact[i] ?? 0))).toBeLessThanOrEqual(1)
        }
      }
    })
  })

  it('balances the earth: what is dug is put back or taken away, and board feet grow with every member', () => {
    holds((job, frame) => {
      const { volumes, boardFeet } = takeOff(job, frame)
      expect(volumes.backfill + volumes.spoilInPlace).toBeCloseTo(volumes.holes, 9)
      expect(volumes.backfill).toBeGreaterThanOrEqual(0)
      expect(volumes.bags * 0.6).toBeGreaterThanOrEqual(volumes.concrete * 1.1 - 1e-9)
      expect((volumes.bags - 1) * 0.6).toBeLessThan(volumes.concrete * 1.1)
      const total = boardFeet.reduce((sum, one) => sum + one.thousandths, 0)
      expect(total).toBeGreaterThan(0)
    })
  })
})
