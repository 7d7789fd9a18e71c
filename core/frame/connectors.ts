import type { Job } from '../job/index.ts'
import { inches } from '../units/index.ts'
import type { Beam, Connector, Member, Post } from './types.ts'

/** Hold-downs stand within this of each end of the deck, IRC 2021 R507.9.2: 24 in. */
const HOLD_DOWN_REACH = inches(24)

/** Metal by joint type: how many, where, and by which rule. */
export function connectorsOf(
  job: Job,
  joists: readonly Member[],
  beams: readonly Beam[],
  posts: readonly Post[],
): readonly Connector[] {
  const { size } = job.frame.joists
  const attached = job.site.attachment === 'ledger'
  const inner = joists.filter((joist) => joist.role === 'joist').map((joist) => joist.id)
  const ends = joists.filter((joist) => joist.role === 'end joist').map((joist) => joist.id)
  const lines = joists.map((joist) => joist.id)
  const postIds = posts.map((post) => post.id)
  const connectors: Connector[] = []
  const add = (
    kind: Connector['kind'],
    of: Connector['size'],
    at: readonly string[],
    fields: readonly string[],
    rule: string,
  ) => {
    if (at.length > 0)
      connectors.push({ kind, size: of, count: at.length, at, cause: { fields, ids: at, rule } })
  }
  if (attached) {
    add(
      'joist hanger',
      size,
      inner,
      ['frame.joists.size', 'site.attachment'],
      'One hanger per joist at the ledger (IRC 2021 R507.6.1)',
    )
    add(
      'end joist angle',
      size,
      ends,
      ['frame.joists.size', 'site.attachment'],
      'One angle per end joist at the ledger (common practice, no source)',
    )
    add(
      'hold-down',
      size,
      holdDownJoists(joists),
      ['site.attachment'],
      'Lateral load: two hold-downs of 1,500 lb, one within 24 in of each end (IRC 2021 R507.9.2)',
    )
  }
  add(
    'uplift tie',
    size,
    beams.flatMap((beam) => lines.map((line) => `${line}/${beam.id}`)),
    ['frame.joists.size'],
    'One uplift tie per joist line and beam (common practice, no source)',
  )
  add(
    'post base',
    job.frame.postSize,
    postIds,
    ['frame.postSize', 'ground.standoff'],
    'One base with its anchor bolt per post (common practice, no source)',
  )
  add(
    'post cap',
    job.frame.postSize,
    postIds,
    ['frame.postSize'],
    'One cap or a pair of plates per post at the beam (IRC 2021 R507.5.1)',
  )
  return connectors
}

/** The joist nearest each end that hangs in the ledger within reach of it; else the end joist. */
function holdDownJoists(joists: readonly Member[]): readonly string[] {
  const first = joists[0]
  const last = joists.at(-1)
  if (first === undefined || last === undefined) return []
  const hung = joists.filter((joist) => joist.role === 'joist')
  const left = hung.find((joist) => centreOf(joist) - first.box.x0 <= HOLD_DOWN_REACH)
  const right = hung.findLast((joist) => last.box.x1 - centreOf(joist) <= HOLD_DOWN_REACH)
  return [left?.id ?? first.id, right?.id !== undefined && right.id !== left?.id ? right.id : last.id]
}

function centreOf(member: Member): number {
  return (member.box.x0 + member.box.x1) / 2
}
