import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bendingLimits } from '../../core/checks/bending-limits.ts'
import { contextOf } from '../../core/checks/context.ts'
import { checkFrame } from '../../core/checks/index.ts'
import { design } from '../../core/design.ts'
import type { Job } from '../../core/job/index.ts'
import { psf } from '../../core/units/index.ts'
import { drawnDeck } from './arbitrary-deck.ts'

/** What gravity load uses up: members by bending, shear and deflection, their bearings, posts and footings. */
const GRAVITY =
  /^(joist-span|joist-cantilever|joist-bearing|hanger-load|beam-span|beam-overhang|beam-bearing|post-height|footing-size|footing-thickness)/

/** Ratios by check, method and what governs, each by itself. */
function ratiosOf(job: Job, { layout, frame }: Deck): ReadonlyMap<string, number> {
  const { path } = contextOf(job, layout, frame)
  const limits = [...path.joists, ...path.beams].flatMap((member, i) =>
    (['span', 'overhang'] as const).flatMap((kind) =>
      (bendingLimits(member, kind) ?? []).map(
        ({ name, demand, capacity }) =>
          [`member ${i} ${kind} ${name}`, demand.value / capacity.value] as const,
      ),
    ),
  )
  const found = checkFrame(job, layout, frame)
    .filter(({ id }) => GRAVITY.test(id))
    .flatMap(({ id, findings }) =>
      findings.flatMap(({ method, document, lookup, ratio }) =>
        // what governs a calculation by the NDS may change: its ratio is that of the worst; the others are told apart
        ratio === null
          ? []
          : [
              [
                `${id} ${method} ${document === 'IRC' && method === 'calculated' ? lookup : document}`,
                ratio,
              ] as const,
            ],
      ),
    )
  return new Map([...limits, ...found])
}

type Deck = Extract<ReturnType<typeof design>, { ok: true }>['value']

/** More of one kind of load, the governing kind staying what it is: snow shortens the duration that wood is graded for. */
const heavier = fc.constantFrom('live', 'snow', 'dead')

it('never lowers a ratio of bending, shear, deflection, bearing, post or footing under more gravity load', () => {
  const compared = new Set<string>()
  fc.assert(
    fc.property(
      drawnDeck,
      heavier,
      fc.integer({ min: 1, max: 40 }),
      fc.constantFrom('prescriptive', 'calculated'),
      (statement, kind, more, governs) => {
        const made = design(statement)
        if (!made.ok) return
        const { job } = made.value
        const withLoads = (live: number, snow: number, dead: number): Job => ({
          ...job,
          code: { ...job.code, governs: governs as Job['code']['governs'] },
          site: { ...job.site, liveLoad: psf(live), snowLoad: psf(snow), deadLoad: psf(dead) },
        })
        const [light, heavy] = {
          live: [withLoads(40, 0, 10), withLoads(40 + more, 0, 10)],
          snow: [withLoads(40, 50, 10), withLoads(40, 50 + more, 10)],
          dead: [withLoads(40, job.site.snowLoad, 10), withLoads(40, job.site.snowLoad, 10 + more)],
        }[kind]
        if (light === undefined || heavy === undefined) throw new Error(kind)
        const before = ratiosOf(light, made.value)
        const after = ratiosOf(heavy, made.value)
        for (const [what, ratio] of before) {
          const then = after.get(what)
          if (then === undefined) continue
          compared.add(`${kind} ${what.replace(/^member \d+ /, '').split(/[-\s]/)[0]}`)
          expect(then - ratio, `${what} under more ${kind}`).toBeGreaterThanOrEqual(-1e-9)
        }
      },
    ),
  )
  const what = ['beam', 'footing', 'hanger', 'joist', 'overhang', 'post', 'span']
  expect([...compared].sort()).toEqual(
    ['dead', 'live', 'snow'].flatMap((kind) => what.map((one) => `${kind} ${one}`)),
  )
})
