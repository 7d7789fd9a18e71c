import type { Check } from './checks/index.ts'
import type { Estimate, Planned } from './estimate-types.ts'
import type { Beam, Cause } from './frame/index.ts'
import { type Line, productName } from './pricing/index.ts'
import { printLength, printMoney } from './units/index.ts'
import { jointThings } from './why-joint-things.ts'

/** Something that can be asked about: what is said of it, and what caused it. */
export interface Thing {
  readonly text: string
  readonly cause: Cause
}

/** Everything of an estimate that a cause can name, by id. */
export function thingsOf(estimate: Estimate): ReadonlyMap<string, Thing> {
  const { frame, stairs, guard, takeoff, checks, plans, layout } = estimate
  const things = new Map<string, Thing>()
  for (const zone of layout.zones) {
    for (const line of zone.supports) things.set(line.id, supportThing(line.kind))
  }
  for (const run of takeoff.runs) {
    things.set(run.id, {
      text: `${run.label}: ${run.memberIds.length} × ${printLength(run.length)}`,
      cause: run.cause,
    })
  }
  for (const [id, thing] of jointThings(estimate)) things.set(id, thing)
  for (const beam of frame.beams) things.set(beam.id, beamThing(beam))
  for (const member of [
    ...frame.members,
    ...stairs.flatMap(({ members }) => members),
    ...(guard?.members ?? []),
  ]) {
    const { mark, role, product, length, cause } = member
    things.set(member.id, { text: `${mark}, ${role}, ${product.size}, ${printLength(length)}`, cause })
  }
  for (const footing of frame.footings) {
    const { number, depth, cause } = footing
    things.set(footing.id, { text: `Footing ${number}, ${printLength(depth)} deep`, cause })
  }
  for (const connector of frame.connectors) {
    const { kind, size, count, cause } = connector
    things.set(`${kind} ${size}`, { text: `${count} × ${kind}, ${size}`, cause })
  }
  for (const piece of takeoff.pieces) {
    const { mark, length, place, cause } = piece
    things.set(piece.id, { text: `Piece ${mark}, ${printLength(length)}: ${place}`, cause })
  }
  for (const { id, label, thousandths, unit, cause } of [...takeoff.goods, ...takeoff.tasks]) {
    things.set(id, { text: `${label}: ${thousandths / 1000} ${unit}`, cause })
  }
  for (const check of checks) things.set(check.id, checkThing(check))
  for (const planned of plans) things.set(planId(planned), planThing(planned))
  return things
}

/** Printed lines; asked for before the goods of the same name. */
export function lineThing(line: Line): Thing {
  const { label, thousandths, unit, price, amount, cause } = line
  const each = (price / 10_000).toFixed(price % 100 === 0 ? 2 : 4)
  return { text: `${label}: ${thousandths / 1000} ${unit} × $${each} = ${printMoney(amount)}`, cause }
}

export function planId({ plan }: Planned): string {
  return `plan-${plan.jobId}`
}

function planThing({ product, plan }: Planned): Thing {
  return {
    text: `Cutting plan of ${productName(product)}: ${plan.boards.length} boards, ${printMoney(plan.cost)}`,
    cause: {
      fields: ['cutting'],
      ids: [...new Set(plan.runPieces.map((piece) => piece.memberId))],
      rule: `${plan.status}: ${plan.why}`,
    },
  }
}

function beamThing(beam: Beam): Thing {
  return {
    text: `Beam ${beam.mark}, ${beam.plies} plies of ${beam.size}${beam.flush ? ', flush' : ''}`,
    cause: {
      fields: [...(beam.key.startsWith('middle') ? ['shape.middleBeams'] : []), `frame.beams.${beam.beam}`],
      ids: [],
      rule: 'as stated',
    },
  }
}

function supportThing(kind: 'ledger' | 'beam'): Thing {
  const fields = kind === 'ledger' ? ['site.attachment'] : ['size.depth', 'frame.beams']
  return {
    text: `Support line of the ${kind}`,
    cause: { fields, ids: [], rule: 'laid out from the outline' },
  }
}

function checkThing(check: Check): Thing {
  const { governing } = check
  const clause =
    governing === null
      ? 'no rule covers it'
      : `${governing.document} ${governing.edition} ${governing.clause} (${governing.confidence}): ${governing.lookup}`
  return {
    text: `${check.title}: ${check.status}. ${check.message}`,
    cause: { fields: check.fields, ids: check.subjects, rule: clause },
  }
}
