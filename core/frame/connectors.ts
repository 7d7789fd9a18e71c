import type { FieldPath, Job } from '../job/index.ts'
import type { Beam, Connector, Member, Post } from './types.ts'

/** Metal by joint type: how many, where, and by which rule. */
export function connectorsOf(
  job: Job,
  joists: readonly Member[],
  beams: readonly Beam[],
  posts: readonly Post[],
): readonly Connector[] {
  return [
    ...(job.site.attachment === 'ledger' ? atLedger(job, joists) : []),
    ...beams.map((beam) => upliftTies(job, joists, beam)),
    ...atPosts(job, posts),
  ]
}

function atLedger(job: Job, joists: readonly Member[]): readonly Connector[] {
  const { size } = job.frame.joists
  const fields = ['frame.joists.size', 'site.attachment']
  const inner = joists.filter((joist) => joist.role === 'joist')
  const ends = joists.filter((joist) => joist.role === 'end joist')
  return [
    connector(
      'joist hanger',
      size,
      idsOf(inner),
      fields,
      'One hanger per joist at the ledger (IRC 2021 R507.6.1)',
    ),
    connector(
      'end joist angle',
      size,
      idsOf(ends),
      fields,
      'One angle per end joist at the ledger (common practice, no source)',
    ),
    connector(
      'hold-down',
      size,
      holdDownJoists(joists),
      ['site.attachment'],
      'Lateral load: two hold-downs of 1,500 lb, one within 24 in of each end (IRC 2021 R507.9.2)',
    ),
  ]
}

function upliftTies(job: Job, joists: readonly Member[], beam: Beam): Connector {
  const ties = connector(
    'uplift tie',
    job.frame.joists.size,
    idsOf(joists),
    ['frame.joists.size'],
    'One uplift tie per joist line and beam (common practice, no source)',
  )
  return { ...ties, cause: { ...ties.cause, ids: [beam.id, ...ties.at] } }
}

function atPosts(job: Job, posts: readonly Post[]): readonly Connector[] {
  const { postSize } = job.frame
  return [
    connector(
      'post base',
      postSize,
      idsOf(posts),
      ['frame.postSize', 'ground.standoff'],
      'One base with its anchor bolt per post (common practice, no source)',
    ),
    connector(
      'post cap',
      postSize,
      idsOf(posts),
      ['frame.postSize'],
      'One cap or a pair of plates per post at the beam (IRC 2021 R507.5.1)',
    ),
  ]
}

function connector(
  kind: Connector['kind'],
  size: Connector['size'],
  at: readonly string[],
  fields: readonly FieldPath[],
  rule: string,
): Connector {
  return { kind, size, count: at.length, at, cause: { fields, ids: at, rule } }
}

/**
 * The first and the last joist that hang in the ledger. Joists stand at most 24 in apart, so each is within the
 * 24 in of the deck's end that the clause allows; a lone joist leaves the other hold-down to the end joist.
 */
function holdDownJoists(joists: readonly Member[]): readonly string[] {
  const hung = idsOf(joists.filter((joist) => joist.role === 'joist'))
  const [left, right] = [hung[0], hung.at(-1)]
  if (left === undefined || right === undefined) return idsOf(joists)
  return left === right ? [left, ...idsOf(joists.slice(-1))] : [left, right]
}

function idsOf(things: readonly { readonly id: string }[]): readonly string[] {
  return things.map((thing) => thing.id)
}
