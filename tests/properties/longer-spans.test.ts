import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bendingLimits } from '../../core/checks/bending-limits.ts'
import type { Check } from '../../core/checks/index.ts'
import type { LumberSize, Species } from '../../core/data/index.ts'
import { design } from '../../core/design.ts'
import { type JobStatement, setField } from '../../core/job/index.ts'
import { adjustedValues, continuousEnvelope, momentOfInertia, rectangleOf } from '../../core/rules/index.ts'
import { drawnDeck } from './arbitrary-deck.ts'

const SIZES: readonly LumberSize[] = ['2x6', '2x8', '2x10', '2x12']
const SPECIES: readonly Species[] = ['SP', 'DFL', 'HF', 'SPF', 'RW', 'WC']

it('uses more of a longer simple span in bending, shear and deflection, so that one that fails fails when longer', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SIZES),
      fc.integer({ min: 1, max: 3 }),
      fc.constantFrom(...SPECIES),
      fc.integer({ min: 24, max: 240 }),
      fc.integer({ min: 1, max: 60 }),
      fc.record({ dead: fc.integer({ min: 1, max: 40 }), live: fc.integer({ min: 4, max: 160 }) }),
      (size, plies, species, span, more, load) => {
        const values = adjustedValues(size, species, {
          wet: true,
          incised: false,
          duration: 1,
          repetitive: 1,
        })
        const section = rectangleOf(size, plies)
        const line = { dead: load.dead / 12, live: load.live / 12 }
        const ratios = (length: number) => {
          const model = {
            length,
            supports: [0, length],
            stiffness: values.modulus * momentOfInertia(section),
          }
          const member = { section, values, line, envelope: continuousEnvelope(model, line) }
          return (bendingLimits(member, 'span') ?? []).map(
            ({ name, demand, capacity }) => [name, demand.value / capacity.value] as const,
          )
        }
        const longer = new Map(ratios(span + more))
        expect([...longer.keys()]).toEqual(['Bending', 'Shear', 'Deflection'])
        for (const [name, ratio] of ratios(span)) expect(longer.get(name), name).toBeGreaterThan(ratio)
      },
    ),
  )
})

/** What fails stays failed: nothing that fails comes to pass where the deck is made longer that way. */
function failsOn(
  field: string,
  id: string,
  statementOf: (drawn: JobStatement) => JobStatement,
  least: number,
) {
  let failed = 0
  fc.assert(
    fc.property(drawnDeck, fc.integer({ min: 1, max: 48 }), (drawn, more) => {
      const statement = statementOf(drawn)
      const made = design(statement)
      if (!made.ok) return
      const length = field === 'size.depth' ? made.value.job.size.depth : made.value.job.size.width
      const then = design(setField(statement, field, `${length / 32 + more} in`))
      if (!then.ok) return
      const find = (checks: readonly Check[]) => checks.find((check) => check.id === id)?.status
      if (find(made.value.checks) !== 'fails') return
      failed += 1
      expect(find(then.value.checks)).toBe('fails')
    }),
  )
  expect(failed).toBeGreaterThan(least)
}

it('fails joists on a deeper deck where they fail on this', () => {
  const small = (drawn: JobStatement) => setField(drawn, 'frame.joists.size', '2x6')
  failsOn('size.depth', 'joist-span', small, 10)
})

it('fails a beam of one span under a wider deck where it fails under this', () => {
  const oneSpan = (drawn: JobStatement) => setField(drawn, 'frame.beams.front.posts', '2')
  failsOn('size.width', 'beam-span-front', oneSpan, 10)
})
