import {
  cite,
  GALVANISED_FEWER,
  hangerNails,
  hangerNailsSource,
  type NailName,
  nailing,
  nailingSources,
  nailsPerPound,
  nailsPerPoundSource,
} from '../data/index.ts'
import { type Connector, type Frame, innerCorners, type Member } from '../frame/index.ts'
import type { FieldPath } from '../job/index.ts'
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

/** Nails that one kind of joint takes: how many, where, and who says so. */
export interface Nailed {
  readonly nail: NailName
  readonly count: number
  /** how many go into one such joint, in words of the trade */
  readonly each: string
  readonly joint: string
  readonly says: string
  readonly fields: readonly FieldPath[]
  readonly ids: readonly string[]
}

/** Nails by joint type, in pounds; a galvanised pound holds fewer, and some are lost. */
export function nailsOf(frame: Frame): readonly GoodShare[] {
  return nailedJoints(frame).map(nailPounds)
}

/** Every kind of joint of the frame that is nailed. */
export function nailedJoints(frame: Frame): readonly Nailed[] {
  return [...frame.connectors.flatMap(connectorNails), ...framingNails(frame)]
}

function connectorNails(connector: Connector): readonly Nailed[] {
  const at = (nail: NailName, each: number, says: string): Nailed => ({
    nail,
    count: connector.count * each,
    each: `${each} each`,
    joint: connector.kind,
    says,
    fields: [],
    ids: connector.at,
  })
  switch (connector.kind) {
    case 'joist hanger': {
      const nails = hangerNails[connector.size]
      if (nails === undefined) throw new Error(`no nails are known for a hanger of a ${connector.size}`)
      const says = cite(hangerNailsSource)
      if (connector.double === true) {
        // through both boards: a nail of 1-1/2 in would hold only the first
        const both = `${says}; as many as for one board, long enough for two: common practice, no source`
        return [at('10d common', nails.face, both), at('10d common', nails.joist, both)]
      }
      return [at('10d common', nails.face, says), at('10d × 1-1/2', nails.joist, says)]
    }
    case 'uplift tie':
      return [at('10d × 1-1/2', nailing.upliftTie, cite(nailingSources.upliftTie))]
    case 'end joist angle':
      return [at('10d × 1-1/2', nailing.endJoistAngle, cite(nailingSources.endJoistAngle))]
    case 'post base':
      return [at('16d common', nailing.postBase, cite(nailingSources.postBase))]
    case 'post cap':
      return [at('16d common', nailing.postCap, cite(nailingSources.postCap))]
    case 'joist lap':
      return [at('10d common', nailing.joistLap, cite(nailingSources.joistLap))]
    case 'joist pair':
      return [at('10d box', nailsBetweenPlies(connector.overlap ?? 0), cite(nailingSources.plyRows))]
    case 'joist splice':
      return [at('10d × 1-1/2', nailing.joistSplice, cite(nailingSources.joistSplice))]
    case 'hold-down':
    case 'brace bolt':
      return []
  }
}

function countOf(connectors: readonly { readonly count: number }[]): number {
  return connectors.reduce((sum, { count }) => sum + count, 0)
}

function framingNails(frame: Frame): readonly Nailed[] {
  const ofRole = (role: Member['role']) => frame.members.filter((member) => member.role === role)
  const blocks = ofRole('blocking')
  const onLanding = new Set(ofRole('landing joist').map(({ id }) => id))
  const angles = frame.connectors.filter(
    ({ kind, at }) => kind === 'end joist angle' && !at.some((id) => onLanding.has(id)),
  )
  const hips = new Set(ofRole('hip').map(({ id }) => id))
  const isOfHip = ({ at }: (typeof angles)[number]) => at.some((id) => hips.has(id))
  const angled = new Set(angles.flatMap(({ at }) => at))
  const laps = ofRole('end joist').filter(({ id }) => angled.has(id))
  const hung = frame.beams.some(({ flush }) => flush) ? 'ledger or flush beam' : 'ledger'
  const rims = frame.runs.filter((run) => run.kind === 'rim')
  const inner = innerCorners(frame.members)
  return [
    {
      nail: '16d common',
      count: rims.reduce((sum, run) => sum + run.supports.length, 0) * nailing.rimToJoistEnd,
      each: `${nailing.rimToJoistEnd} into each end`,
      joint: 'rim into joist end',
      says: cite(nailingSources.rimToJoistEnd),
      fields: ['frame.joists.spacing'],
      ids: rims.map((run) => run.id),
    },
    ...(inner.length === 0
      ? []
      : [
          {
            nail: '16d common',
            count: inner.length * nailing.rimToJoistEnd,
            each: `${nailing.rimToJoistEnd} into the rim’s end`,
            joint: 'end joist into the end of a rim, at an inner corner',
            says: `${cite(nailingSources.rimToJoistEnd)}, read of a rim and a joist’s end`,
            fields: ['shape.outline'],
            ids: inner.map(({ rim }) => rim.id),
          } as const,
        ]),
    {
      nail: '16d common',
      count: countOf(angles.filter((angle) => !isOfHip(angle))) * nailing.endJoistToLedger,
      each: `${nailing.endJoistToLedger} each`,
      joint: `end joist into ${hung}`,
      says: cite(nailingSources.endJoistToLedger),
      fields: ['site.attachment'],
      ids: laps.map((joist) => joist.id),
    },
    ...(hips.size === 0
      ? []
      : [
          {
            nail: '16d common',
            count: countOf(angles.filter(isOfHip)) * nailing.endJoistToLedger,
            each: `${nailing.endJoistToLedger} into each half`,
            joint: 'hip into the rims',
            says: cite(nailingSources.endJoistToLedger),
            fields: ['shape.seams'],
            ids: [...hips],
          } as const,
        ]),
    {
      nail: '16d common',
      count: 2 * blocks.length * nailing.blockEnd,
      each: `${nailing.blockEnd} at each end`,
      joint: 'block',
      says: cite(nailingSources.blockEnd),
      fields: ['frame.blocking'],
      ids: blocks.map((block) => block.id),
    },
    ...rims.map(({ label, length, memberIds }) => pliesTogether(label, length, memberIds)),
    ...frame.beams.map(({ mark, plyIds }) => {
      const longest = Math.max(
        0,
        ...ofRole('beam ply').flatMap(({ id, length }) => (plyIds.includes(id) ? [length] : [])),
      )
      return pliesTogether(`Beam ${mark}`, longest, plyIds)
    }),
  ]
}

/** Nails of all faces between the plies of one rim or beam. */
export function pliesTogether(label: string, length: number, ids: readonly string[]): Nailed {
  return {
    nail: '10d box',
    count: (ids.length - 1) * nailsBetweenPlies(length),
    each: 'two rows at 16 in',
    joint: `${label}, ply to ply, two rows at 16 in`,
    says: cite(nailingSources.plyRows),
    fields: [],
    ids,
  }
}

/** Nails in one face between two plies: rows × (spaces + 1). */
function nailsBetweenPlies(length: number): number {
  const spaces = Math.floor(length / (nailing.plySpacingInches * TICKS_PER_INCH))
  return nailing.plyRows * (spaces + 1)
}

/** Nails as pounds to buy. */
export function nailPounds({ nail, count, joint, says, fields, ids }: Nailed): GoodShare {
  const perPound = (nailsPerPound[nail] * (100 - GALVANISED_FEWER)) / 100
  return {
    sku: skuOf[nail],
    quantity: ((count / perPound) * (100 + NAIL_WASTE)) / 100,
    cause: {
      fields,
      ids,
      rule: `${joint}: ${count} nails (${says})`,
    },
    shared: [
      `${perPound.toFixed(1)} galvanised nails a pound (${cite(nailsPerPoundSource)})`,
      `${NAIL_WASTE} % more for loss`,
    ],
  }
}
