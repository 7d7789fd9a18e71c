import { deckPartList, type Fault, type Job } from '../job/index.ts'
import type { Layout } from '../layout/index.ts'
import { feet, inches, printLength } from '../units/index.ts'
import { borderFaults } from './border.ts'
import { boundsOf } from './footprint.ts'
import type { LaidZone } from './laying.ts'

/** Boards between a breaker and the end of the field lie over three joists: common practice, no source. */
const BESIDE = feet(2)

/** Room for a breaker's joists beside an opening's trimmers. */
const BESIDE_OPENING = inches(9)

/** Patterns of decking that cannot be laid on this deck, each at its field. */
export function patternFaults(job: Job, layout: Layout, zones: readonly LaidZone[]): readonly Fault[] {
  const [first] = zones
  return [
    ...partFaults(job, zones.length),
    ...breakerFaults(zones),
    ...(first === undefined ? [] : borderFaults(job, layout, first.laying)),
  ]
}

function partFaults(job: Job, count: number): readonly Fault[] {
  const wrong = deckPartList(job.decking.parts).find(({ part }) => part > count)
  if (wrong === undefined) return []
  return [
    {
      path: 'decking.parts',
      message: `there is no part ${wrong.part}: the deck has ${count === 1 ? 'one' : count}`,
      fix: count === 1 ? 'name part 1, or state it for the whole deck' : `name one from 1 to ${count}`,
    },
  ]
}

function breakerFaults(zones: readonly LaidZone[]): readonly Fault[] {
  const at = (message: string, fix: string): Fault => ({ path: 'decking.breakers', message, fix })
  return zones.flatMap(({ zone, view, laying }): readonly Fault[] => {
    const { x0, x1 } = boundsOf(view.polygon)
    const lines = view.edges.flatMap(({ role }, i) => (role === 'side' ? [view.polygon[i]?.x ?? x0] : []))
    return laying.breakers.flatMap((breaker, i): readonly Fault[] => {
      const name = `the breaker at ${printLength(breaker)}`
      if (breaker <= x0 || breaker >= x1) {
        const elsewhere = zones.some((other) => {
          const bounds = boundsOf(other.view.polygon)
          return other.laying.breakers.includes(breaker) && breaker > bounds.x0 && breaker < bounds.x1
        })
        return elsewhere
          ? []
          : [
              at(
                `${name} lies beside the deck`,
                'measure from the deck’s left end, or from the wall where joists run along the house',
              ),
            ]
      }
      const other = laying.breakers.slice(0, i).find((one) => Math.abs(one - breaker) < BESIDE)
      if ([x0, x1, ...lines].some((line) => Math.abs(line - breaker) < BESIDE) || other !== undefined)
        return [
          at(
            `${name} leaves boards of less than ${printLength(BESIDE)} beside it`,
            `lay it ${printLength(BESIDE)} or more from the ends of the boards and from other breakers`,
          ),
        ]
      const opening = zone.openings.find((one) => {
        const [a, b] = [view.turned({ x: one.x0, y: one.y0 }).x, view.turned({ x: one.x1, y: one.y1 }).x]
        return breaker > a - BESIDE_OPENING && breaker < b + BESIDE_OPENING
      })
      if (opening === undefined) return []
      return [at(`${name} would run into opening ${opening.number}`, 'lay it beside the opening’s trimmers')]
    })
  })
}
