import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { footingLoads } from '../../core/checks/index.ts'
import { loadPath } from '../../core/checks/load-path.ts'
import { measure } from '../../core/checks/measures.ts'
import { design } from '../../core/design.ts'
import { analyseBeam, continuousEnvelope, jointedEnvelope } from '../../core/rules/index.ts'
import { psf } from '../../core/units/index.ts'
import { drawnDeck } from './arbitrary-deck.ts'

/** Pounds within which a sum of reactions is the load: rounding alone. */
const POUND = 0.01

describe('loads on their way down', () => {
  it('reach ledger and footings to the last pound: what the posts carry and half the first span is the whole deck', () => {
    let framed = 0
    fc.assert(
      fc.property(drawnDeck, (statement) => {
        const made = design(statement)
        if (!made.ok) return
        framed += 1
        const { job, layout, frame } = made.value
        const psf = Math.max(job.site.liveLoad, job.site.snowLoad) + job.site.deadLoad
        const onFootings = footingLoads(job, layout, frame).reduce((sum, { load }) => sum + load, 0)
        // by hand, in ticks: joists from the ledger's face to the rim's outer face, half of their first span on it
        const ledger = job.site.attachment === 'ledger' ? 48 : 0
        const beam = job.size.depth - job.frame.beams.front.setback
        const onLedger = ledger > 0 ? ((beam - ledger) / 2) * job.size.width : 0
        const whole = (job.size.depth - ledger) * job.size.width
        const pounds = (area: number) => (area / 384 ** 2) * psf
        expect(Math.abs(onFootings + pounds(onLedger) - pounds(whole))).toBeLessThan(POUND)
      }),
    )
    expect(framed).toBeGreaterThan(20)
  })

  it('are carried by the joists’ supports in full, whatever spans and cantilevers they have', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 24, max: 240 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 60 }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        (span, near, far, load) => {
          const length = near + span + far
          const { reactions } = analyseBeam({ length, supports: [near, near + span], stiffness: 1e8 }, [
            { kind: 'uniform', from: 0, to: length, load },
          ])
          expect(Math.abs(reactions.reduce((a, b) => a + b, 0) - load * length)).toBeLessThan(POUND)
        },
      ),
    )
  })

  it('leave nothing out on the program’s own path: joists to ledger and beams, beams to posts', () => {
    let followed = 0
    fc.assert(
      fc.property(drawnDeck, fc.boolean(), (statement, jointed) => {
        const made = design(statement)
        if (!made.ok) return
        const { job, layout, frame } = made.value
        const measures = measure(job, layout, frame)
        // dead load alone lies everywhere at once, so that the greatest reaction is the only one
        const path = loadPath({ ...measures, load: psf(0) })
        const [joist] = path.joists
        if (joist === undefined || path.joists.length > 1) return
        followed += 1
        const spacing = job.frame.joists.spacing / 32
        const hung = joist.group.supports.reduce(
          (sum, { kind }, i) => sum + (kind === 'beam' ? 0 : (joist.envelope.supports[i]?.greatest ?? 0)),
          0,
        )
        const onPosts = path.beams.reduce((sum, { facts, line }) => {
          const model = {
            length: facts.beam.length / 32,
            supports: facts.beam.postsAt.map((at) => at / 32),
            stiffness: 1e8,
          }
          const { supports } = (jointed ? jointedEnvelope : continuousEnvelope)(model, line)
          return sum + supports.reduce((all, one) => all + one.greatest, 0)
        }, 0)
        // by hand: dead load on the joists' whole length, over the whole width
        const pounds = (job.site.deadLoad * (joist.group.line.length / 32) * (job.size.width / 32)) / 144
        expect(Math.abs(onPosts + (hung / spacing) * (job.size.width / 32) - pounds)).toBeLessThan(POUND)
      }),
    )
    expect(followed).toBeGreaterThan(20)
  })
})
