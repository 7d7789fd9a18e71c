import { DCA_HANGERS, IRC_LIMITS } from '../data/index.ts'
import type { Connector } from '../frame/index.ts'
import { figure } from '../rules/index.ts'
import { TICKS_PER_INCH } from '../units/index.ts'
import { closeHangers } from './close-hangers.ts'
import type { JoistContext } from './context.ts'
import { byLimit } from './finding.ts'
import { hangingJoists } from './hanging-joists.ts'
import { judge } from './judge.ts'
import type { Check, Finding } from './types.ts'

/**
 * What each hanger at a ledger or a flush beam carries. No table of the code gives a hanger's strength: it is in the listing of the
 * one that is bought, so the load is told and the listing asked for. The AWC deck guide's least capacity by joist, from
 * memory, stands beside it; a load beyond what that asks of a hanger is no usual one, and is calculated only. Nothing
 * where joists lie on beams alone.
 */
export function checkHangerLoad(context: JoistContext): readonly Check[] {
  const { job, hung: reaction } = context
  if (reaction === null) return []
  const { size } = job.frame.joists
  const load = wholePounds(reaction)
  const { hangers, angles } = heldBy(context)
  const spacing = job.frame.joists.spacing / TICKS_PER_INCH
  const steps = [
    `A joist every ${spacing} in brings ${figure(load)} lb to what it hangs from, dead and live, the live load placed worst`,
    'The hanger’s seat is its bearing; its strength is what its maker’s listing says for the nails that are used: to be confirmed',
  ]
  const found = byLimit(IRC_LIMITS.bearingOnWood, { value: load, unit: 'lb' }, null, steps)
  // an angle is no hanger: the guide asks nothing of it
  const guide = hangers.length === 0 ? null : guideFinding(size, load)
  const usual = guide === null || (guide.ratio ?? 0) <= 1
  const listed = hangers.length === 0 ? load : listedFor(size, reaction)
  const of = context.groups.length === 1 ? '' : ` of ${hangingJoists({ ...context, joistIds: hangers })}`
  const each =
    hangers.length === 0
      ? `Each angle of end ${hangingJoists({ ...context, joistIds: angles })}`
      : `Each hanger${of}`
  const ofAngles =
    hangers.length === 0 || angles.length === 0
      ? ''
      : `Each angle of end ${hangingJoists({ ...context, joistIds: angles })}, which no hanger fits: listed for ${figure(load)} lb or more, with all its nails. `
  return [
    judge(job, {
      id: `hanger-load${context.suffix}`,
      title: 'Joist hangers',
      subjects: context.joistIds,
      fields: ['size.depth', 'frame.joists.spacing', 'frame.joists.size'],
      prescriptive: usual ? found : null,
      calculated: usual ? null : { ...found, method: 'calculated', confidence: 'computed only' },
      beside: guide === null ? [] : [guide],
      good: () =>
        `${each} carries ${figure(load)} lb: use one listed for ${figure(listed)} lb or more, with all its nails.`,
      bad: '',
      uncovered: `${each} carries ${figure(load)} lb, more than the ${figure(guide?.capacity?.value ?? 0)} lb that the AWC deck guide asks of one for a ${size}`,
      byCalculation: `it must be listed for ${figure(load)} lb`,
      remedy: '',
      listings: [
        ...(hangers.length === 0 ? [] : [{ of: 'joist hanger' as const, pounds: listed }]),
        ...(angles.length === 0 ? [] : [{ of: 'end joist angle' as const, pounds: load }]),
      ],
      caution: `${ofAngles}${closeHangers(context)}To be confirmed: the listing of the ${hangers.length === 0 ? 'angle' : 'hanger'} that is bought. Hot-dip galvanised or stainless, and nails of the same.`,
    }),
  ]
}

/** The joists of a group by what holds them: end joists beside a ledger's end have an angle, for which a hanger has no room. */
function heldBy({ frame, joistIds }: JoistContext) {
  const heldIn = (kind: Connector['kind']) =>
    new Set(frame.connectors.flatMap((one) => (one.kind === kind ? one.at : [])))
  const [angled, hung] = [heldIn('end joist angle'), heldIn('joist hanger')]
  return {
    // of one that has both, at its two ends, both are told
    hangers: joistIds.filter((id) => hung.has(id) || !angled.has(id)),
    angles: joistIds.filter((id) => angled.has(id)),
  }
}

/**
 * What a hanger must be listed for, lb: the joist's reaction or what the AWC deck guide asks of one for the joist, the
 * greater, so that every paper names the same hanger.
 */
export function listedFor(size: keyof typeof DCA_HANGERS.pounds, reaction: number): number {
  return Math.max(wholePounds(reaction), DCA_HANGERS.pounds[size] ?? 0)
}

function wholePounds(reaction: number): number {
  return Math.max(0, Math.ceil(reaction))
}

/** AWC DCA 6's least capacity for the joist, from memory: shown, deciding nothing by itself. */
function guideFinding(size: keyof typeof DCA_HANGERS.pounds, load: number): Finding | null {
  const { pounds, source } = DCA_HANGERS
  const least = pounds[size]
  if (least === undefined) return null
  return {
    method: 'prescriptive',
    document: source.document,
    edition: source.edition,
    clause: source.clause,
    demand: { value: load, unit: 'lb' },
    capacity: { value: least, unit: 'lb' },
    ratio: load / least,
    confidence: source.confidence,
    lookup: `row ${size}`,
    steps: [`The guide asks for hangers of ${figure(least)} lb or more for a ${size}`],
  }
}
