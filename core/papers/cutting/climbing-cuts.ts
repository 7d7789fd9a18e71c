import type { Mitres } from '../../cutting/index.ts'
import { sectionOf } from '../../data/index.ts'
import type { Estimate, Planned } from '../../estimate-types.ts'

type Member = Estimate['frame']['members'][number]

/**
 * A plan with the ends of what climbs beside stairs, for drawing alone: its pieces are planned by their long points, for
 * each is fitted where it goes and none shares a cut. A rail lies on its face, a cap on its edge, a post on a side.
 */
export function withClimbingCuts(planned: Planned, members: readonly Member[]): Planned {
  const climbing = new Map<string, Mitres>(
    members.flatMap((member) => {
      const mitres = mitresOf(member)
      return mitres === null ? [] : [[`piece-${member.id}`, mitres] as const]
    }),
  )
  const { plan } = planned
  if (!plan.boards.some(({ cuts }) => cuts.some(({ pieceId }) => climbing.has(pieceId)))) return planned
  const boards = plan.boards.map((board) => ({
    ...board,
    cuts: board.cuts.map((cut) => {
      const mitres = climbing.get(cut.pieceId)
      return mitres === undefined || cut.mitres !== undefined ? cut : { ...cut, mitres }
    }),
  }))
  return { ...planned, plan: { ...plan, boards } }
}

/** Whether any piece of a plan climbs. */
export function hasClimbing({ plan }: Planned, members: readonly Member[]): boolean {
  const ids = new Set<string>(
    members.filter((member) => mitresOf(member) !== null).map(({ id }) => `piece-${id}`),
  )
  return plan.boards.some(({ cuts }) => cuts.some(({ pieceId }) => ids.has(pieceId)))
}

function mitresOf({ role, slope, ends, product, id }: Member): Mitres | null {
  if (ends === undefined || !(role === 'guard post' || slope !== undefined) || !id.startsWith('stair-'))
    return null
  const { depth, thickness } = sectionOf(product.size)
  return { across: role === 'guard rail' ? depth : thickness, ends }
}
