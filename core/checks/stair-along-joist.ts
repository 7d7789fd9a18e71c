import { analyseBeams, greatestShear, momentExtremes, momentOfInertia } from '../rules/index.ts'
import { headJoist, type StairPlan } from '../stairs/index.ts'
import { toInches } from '../units/index.ts'
import { strengthLimits } from './bending-limits.ts'
import { byCalculation } from './calculated.ts'
import type { CheckContext } from './context.ts'
import { type ReckonedJoist, valuesOf } from './load-path.ts'
import type { BeamFacts } from './measures.ts'
import type { Borne } from './stair-head-load.ts'
import type { Finding } from './types.ts'

/** Every so many inches along the joist the flight is tried. */
const EVERY = 6

/** What a flight that hangs along a joist does to it and to what it lies on. */
export interface AlongJoist {
  readonly mark: string
  readonly finding: Finding
  /** greatest that comes to one end of it of the flight alone, lb */
  readonly atEnd: number
  /** beams that it lies on */
  readonly beams: readonly BeamFacts[]
}

/**
 * The end joist under the head of stairs that leave along it, alone, without what repeated members bear more: of the deck
 * half a spacing and the overhang, and half of the flight as wide as that is, wherever along the joist it is worst. Null
 * where no joist that is reckoned lies there.
 */
export function alongJoist(context: CheckContext, { flights }: StairPlan, borne: Borne): AlongJoist | null {
  const [flight] = flights
  if (flight === undefined) return null
  const member = headJoist(context.frame.members, flight)
  const one = context.path.joists.find(({ group }) => group.memberIds.includes(member?.id ?? ''))
  if (member === undefined || one === undefined) return null
  const { moments, shear, reaction, deflections } = worstOf(one, borne, toInches(flight.width))
  const { stretches } = one.envelope
  const { frame, decking } = context.job
  const part = Math.min(1, (frame.joists.spacing / 2 + decking.overhang) / frame.joists.spacing)
  const values = valuesOf(context, frame.joists.size, 1)
  const moment = Math.max(...stretches.map((own, i) => part * own.moment + (moments[i] ?? 0)))
  const own = part * Math.max(...stretches.map((stretch) => stretch.shear))
  const softest = stretches
    .map((stretch, i) => ({
      demand: part * stretch.deflection + (deflections[i] ?? 0),
      capacity: (stretch.to - stretch.from) / (stretch.kind === 'span' ? 360 : 180),
    }))
    .reduce((a, b) => (b.demand / b.capacity > a.demand / a.capacity ? b : a))
  return {
    mark: member.mark,
    atEnd: reaction,
    beams: context.beams.filter(({ beam }) => one.group.supports.some(({ id }) => id === beam.id)),
    finding: byCalculation(
      [
        ...strengthLimits({ values, section: one.section }, moment, own + shear),
        {
          name: 'Deflection',
          clause: '3.5',
          demand: { value: softest.demand, unit: 'in' },
          capacity: { value: softest.capacity, unit: 'in' },
          steps: [
            one.values.steps.modulus,
            'Live load of deck and flight; a 360th of a span, a 180th of an overhang',
          ],
        },
      ],
      one.values.source,
      [
        `${Math.ceil(borne.pounds)} lb over ${toInches(flight.width).toFixed(0)} in of joist ${member.mark}, at the worst place along it, beside the deck's load`,
      ],
    ),
  }
}

/** Of the flight alone, at the worst place: moment and live deflection by stretch, shear and reaction. */
function worstOf({ group, section, values, envelope }: ReckonedJoist, borne: Borne, wide: number) {
  const supports = group.line.supports.map((at) => toInches(at))
  const length = toInches(group.line.length)
  const long = Math.min(wide, length)
  const places = Array.from({ length: Math.ceil((length - long) / EVERY) + 1 }, (_, i) =>
    Math.min(i * EVERY, length - long),
  )
  const model = { length, supports, stiffness: values.modulus * momentOfInertia(section) }
  const cases = places.map((from) => [
    { kind: 'uniform' as const, from, to: from + long, load: borne.pounds / long },
  ])
  const results = analyseBeams(model, cases)
  const moments = envelope.stretches.map(({ from, to }) =>
    Math.max(
      ...results.map((result) => {
        const { greatest, least } = momentExtremes(result, from, to)
        return Math.max(greatest.value, -least.value)
      }),
    ),
  )
  const liveShare = borne.pounds > 0 ? borne.live / borne.pounds : 0
  // a span bends under a moment no further than under one all along it: M L² ÷ 8 E I; an overhang's tip M a² ÷ 2 E I
  const deflections = envelope.stretches.map(
    ({ kind, from, to }, i) =>
      (liveShare * (moments[i] ?? 0) * (to - from) ** 2) / ((kind === 'span' ? 8 : 2) * model.stiffness),
  )
  return {
    moments,
    deflections,
    shear: Math.max(...results.map((result) => greatestShear(result, 0, length))),
    reaction: Math.max(...results.flatMap(({ reactions }) => reactions)),
  }
}
