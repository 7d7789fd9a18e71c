import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkFrame } from '../../core/checks/index.ts'
import { type Frame, frameDeck, type Member } from '../../core/frame/index.ts'
import { convexOverlap, insetBy, isInside, type PlanePoint, twiceArea } from '../../core/geometry/index.ts'
import { FIELDS, type Job, type JobStatement, readJob } from '../../core/job/index.ts'
import { type Layout, layOut } from '../../core/layout/index.ts'
import { takeOff } from '../../core/takeoff/index.ts'
import { anyCorners, anyShapedStatement, type Corners, outlineText } from './arbitrary-outline.ts'

const paths = new Set(FIELDS.map((field) => field.path))

interface Made {
  readonly job: Job
  readonly layout: Layout
  readonly frame: Frame
}

function framed(statement: JobStatement): Made | null {
  const read = readJob(statement)
  const laid = read.ok ? layOut(read.value.job) : read
  const made = laid.ok && read.ok ? frameDeck(read.value.job, laid.value) : null
  if (read.ok && laid.ok && made?.ok) return { job: read.value.job, layout: laid.value, frame: made.value }
  const faults = !read.ok ? read.error : !laid.ok ? laid.error : made?.ok === false ? made.error : []
  expect(faults.length).toBeGreaterThan(0)
  for (const fault of faults) {
    expect(paths).toContain(fault.path)
    expect(fault.message).toMatch(/^[^A-Z].*[^.]$/)
    expect(fault.fix).toMatch(/^[^A-Z].*[^.]$/)
  }
  return null
}

/** Asserts a law for every outline that can be framed. */
function holds(law: (made: Made) => void) {
  let built = 0
  let all = 0
  fc.assert(
    fc.property(anyShapedStatement, (statement) => {
      all += 1
      const made = framed(statement)
      if (made === null) return
      built += 1
      law(made)
    }),
  )
  expect(built, 'many random outlines can be framed, else the law is hardly tried').toBeGreaterThan(all / 10)
}

function fromAbove({ plan, box }: Member): readonly PlanePoint[] {
  return (
    plan ?? [
      { x: box.x0, y: box.y0 },
      { x: box.x1, y: box.y0 },
      { x: box.x1, y: box.y1 },
      { x: box.x0, y: box.y1 },
    ]
  )
}

describe('framing any outline', () => {
  it('gives a frame, its checks and its takeoff, or faults that name a field, the wrong and the right', () => {
    holds(({ job, layout, frame }) => {
      expect(checkFrame(job, layout, frame).length).toBeGreaterThan(10)
      expect(takeOff(job, frame).pieces.length).toBeGreaterThan(0)
    })
  })

  it('never puts two members in one place', () => {
    holds(({ frame }) => {
      const wood = frame.members.filter(({ role }) => role !== 'decking')
      for (const [i, a] of wood.entries()) {
        for (const b of wood.slice(i + 1)) {
          const beside = a.box.z0 >= b.box.z1 - 1e-6 || b.box.z0 >= a.box.z1 - 1e-6
          // two thirds of a tick are what rounding to whole ticks leaves between posts and what they carry
          if (!beside && convexOverlap(fromAbove(a), fromAbove(b), 0.7)) {
            throw new Error(`${a.id} and ${b.id} overlap`)
          }
        }
      }
    })
  })

  it('rests every joist on two supports or more, each of them there', () => {
    holds(({ frame }) => {
      const known = new Set([...frame.beams, ...frame.members].map(({ id }) => id))
      for (const { role, bearings, id } of frame.members) {
        if (role !== 'joist' && role !== 'end joist') continue
        expect(bearings.length, id).toBeGreaterThanOrEqual(2)
        for (const bearing of bearings) expect(known, id).toContain(bearing)
      }
    })
  })

  it('keeps the frame inside the outline, to the tick to which a zone’s corners are rounded', () => {
    holds(({ frame, layout }) => {
      const outsides = layout.levels.map(
        ({ outline }) => insetBy(outline, Array(outline.length).fill(-1.5)).polygon,
      )
      for (const member of frame.members) {
        if (['decking', 'post', 'beam ply', 'step frame', 'step tread'].includes(member.role)) continue
        const corners = fromAbove(member)
        expect(
          outsides.some((outside) => corners.every((corner) => isInside(outside, corner))),
          member.id,
        ).toBe(true)
      }
    })
  })

  it('has zones that fill the outline', () => {
    holds(({ layout }) => {
      const zones = layout.zones.reduce((sum, zone) => sum + twiceArea(zone.outline), 0)
      const outline = layout.levels.reduce((sum, level) => sum + twiceArea(level.outline), 0)
      expect(Math.abs(zones - outline)).toBeLessThanOrEqual(outline / 100)
    })
  })

  it('leaves no bay wider than the spacing', () => {
    holds(({ job, frame }) => {
      for (const { lines } of frame.joistGroups)
        for (const { widths } of lines)
          for (const width of widths) expect(width).toBeLessThanOrEqual(job.frame.joists.spacing + 1)
    })
  })

  it('gives every member an id and a mark of its own', () => {
    holds(({ frame }) => {
      expect(new Set(frame.members.map(({ id }) => id)).size).toBe(frame.members.length)
      expect(new Set(frame.members.map(({ mark }) => mark)).size).toBe(frame.members.length)
    })
  })

  it('asks for the same wood when mirrored with its layout from the other end, and when turned by 90 degrees', () => {
    let tried = 0
    fc.assert(
      fc.property(anyCorners, fc.constantFrom(12, 16, 24), (corners, spacing) => {
        const width = Math.max(...corners.map(([x]) => x))
        const plain = woodOf(corners, 'away', 'left', spacing)
        const mirrored = woodOf(
          corners.map(([x, y]) => [width - x, y]),
          'away',
          'right',
          spacing,
        )
        const turned = woodOf(
          corners.map(([x, y]) => [y, x]),
          'along',
          'left',
          spacing,
        )
        if (plain === null) return
        tried += 1
        // a slanting cut is rounded up to a tick from either side
        for (const other of [mirrored, turned]) {
          expect(other?.map(([role]) => role)).toEqual(plain.map(([role]) => role))
          for (const [i, [, length]] of plain.entries())
            expect(Math.abs((other?.[i]?.[1] ?? 0) - length)).toBeLessThanOrEqual(2)
        }
      }),
    )
    expect(tried).toBeGreaterThan(10)
  })
})

/** Roles and lengths of a free deck's frame in order of size, or null where it cannot be framed. */
function woodOf(
  corners: Corners,
  joists: string,
  layoutFrom: string,
  spacing: number,
): readonly (readonly [string, number])[] | null {
  const made = framed({
    shape: { outline: outlineText(corners), joists },
    size: { height: '60 in' },
    site: { attachment: 'freestanding' },
    frame: {
      joists: { spacing, layoutFrom },
      beams: { front: { setback: 18 }, rear: { setback: 18 } },
    },
    ground: { base: '16 in' },
  })
  if (made === null) return null
  const wood = made.frame.members.filter(({ role }) => !['decking', 'blocking', 'post'].includes(role))
  return wood
    .map(({ role, length }) => [role, length] as const)
    .sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1]))
}
