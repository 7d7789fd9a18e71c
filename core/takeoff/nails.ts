import { GALVANISED_FEWER, hangerNails, type NailName, nailing, nailsPerPound } from '../data/index.ts'
import type { Connector, Frame, Member } from '../frame/index.ts'
import { TICKS_PER_INCH } from '../units/index.ts'
import type { GoodShare } from './tally.ts'

/** Bent, dropped and lost, percent: common practice, no source. */
const NAIL_WASTE = 5

const skuOf: { readonly [nail in NailName]: string } = {
  '10d × 1-1/2': 'nail-10d-1-1/2',
  '10d common': 'nail-10d-common',
  '10d box': 'nail-10d-box',
  '16d common': 'nail-16d-common',
}

/** Nails by joint type, in pounds; a galvanised pound holds fewer, and some are lost. */
export function nailsOf(frame: Frame): readonly GoodShare[] {
  return [...frame.connectors.flatMap(connectorNails), ...framingNails(frame)]
}

function connectorNails(connector: Connector): readonly GoodShare[] {
  const at = (nail: NailName, each: number) =>
    pounds(nail, connector.count * each, [], connector.at, connector.kind)
  switch (connector.kind) {
    case 'joist hanger': {
      const nails = hangerNails[connector.size]
      if (nails === undefined) throw new Error(`no nails are known for a hanger of a ${connector.size}`)
      return [at('10d common', nails.face), at('10d × 1-1/2', nails.joist)]
    }
    case 'uplift tie':
      return [at('10d × 1-1/2', nailing.upliftTie)]
    case 'end joist angle':
      return [at('10d × 1-1/2', nailing.endJoistAngle)]
    case 'post base':
      return [at('16d common', nailing.postBase)]
    case 'post cap':
      return [at('16d common', nailing.postCap)]
    case 'hold-down':
      return []
  }
}

function framingNails(frame: Frame): readonly GoodShare[] {
  const ofRole = (role: Member['role']) => frame.members.filter((member) => member.role === role)
  const blocks = ofRole('blocking')
  const ledger = ofRole('ledger')
  const rims = frame.runs.filter((run) => run.kind === 'rim')
  const plied = frame.runs.filter((run) => run.kind === 'rim' || run.kind === 'beam ply')
  const joistEnds = rims.length * frame.joistCentres.length
  const endLaps = ledger.length > 0 ? 2 : 0
  return [
    pounds(
      '16d common',
      joistEnds * nailing.rimToJoistEnd,
      ['frame.rimPlies'],
      rims.map((run) => run.id),
      'rim into joist end',
    ),
    pounds(
      '16d common',
      endLaps * nailing.endJoistToLedger,
      [],
      ['end-joist-left', 'end-joist-right'],
      'end joist into ledger',
    ),
    pounds(
      '16d common',
      2 * blocks.length * nailing.blockEnd,
      ['frame.blocking'],
      blocks.map((block) => block.id),
      'block',
    ),
    ...plied.map((run) =>
      pounds(
        '10d box',
        (run.memberIds.length - 1) * nailsBetweenPlies(run.length),
        [],
        run.memberIds,
        'plies, two rows at 16 in',
      ),
    ),
  ]
}

/** Nails in one face between two plies: rows × (spaces + 1). */
function nailsBetweenPlies(length: number): number {
  const spaces = Math.floor(length / (nailing.plySpacingInches * TICKS_PER_INCH))
  return nailing.plyRows * (spaces + 1)
}

function pounds(
  nail: NailName,
  count: number,
  fields: readonly string[],
  ids: readonly string[],
  joint: string,
): GoodShare {
  const perPound = (nailsPerPound[nail] * (100 - GALVANISED_FEWER)) / 100
  return {
    sku: skuOf[nail],
    quantity: ((count / perPound) * (100 + NAIL_WASTE)) / 100,
    cause: { fields, ids, rule: `${joint}: ${count} nails, ${NAIL_WASTE} % more for loss` },
  }
}
