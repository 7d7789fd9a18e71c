import type { Connector, ConnectorKind, Frame, Member } from '../frame/index.ts'
import type { GuardPlan } from '../guard/index.ts'
import type { Job } from '../job/index.ts'
import type { StairConnectorKind, StairPlan } from '../stairs/index.ts'

/** What stands on or beside the frame and is taken off with it: no stairs, and null, where the job asks for none. */
export interface Additions {
  readonly stairs: readonly StairPlan[]
  readonly guard: GuardPlan | null
}

export const NO_ADDITIONS: Additions = { stairs: [], guard: null }

/** The frame with the lumber of its additions, and with the metal of a landing, which is that of a deck. */
export function withAdditions(job: Job, frame: Frame, { stairs, guard }: Additions): Frame {
  const added: readonly Member[] = [...stairs.flatMap(({ members }) => members), ...(guard?.members ?? [])]
  if (added.length === 0) return frame
  return {
    ...frame,
    members: [...frame.members, ...added],
    connectors: [...frame.connectors, ...stairs.flatMap((one) => landingMetal(job, one))],
  }
}

const METAL = {
  'landing hanger': 'joist hanger',
  'landing end angle': 'end joist angle',
  'landing post base': 'post base',
  'landing post cap': 'post cap',
} as const satisfies { readonly [kind: string]: ConnectorKind }

function isMetal(kind: StairConnectorKind): kind is StairConnectorKind & keyof typeof METAL {
  return Object.hasOwn(METAL, kind)
}

function landingMetal(job: Job, stairs: StairPlan): readonly Connector[] {
  return stairs.connectors.flatMap(({ kind, count, cause }) => {
    if (!isMetal(kind) || count === 0) return []
    const size =
      kind === 'landing post base' || kind === 'landing post cap' ? job.frame.postSize : job.frame.joists.size
    const joists = stairs.members.filter(({ role }) => role === 'landing joist').map(({ id }) => id)
    // its end angles hold the outermost: of a beam's end nailed into them the landing's own row tells
    const at = kind === 'landing end angle' ? [...joists.slice(0, 1), ...joists.slice(-1)] : cause.ids
    return [{ kind: METAL[kind], size, count, at, cause }]
  })
}
