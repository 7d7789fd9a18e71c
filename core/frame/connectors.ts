import type { FieldPath, Job } from '../job/index.ts'
import type { PlacedJoist } from './joists.ts'
import type { Beam, Connector, Member, Post } from './types.ts'

/** Metal by joint type: how many, where, and by which rule. */
export function connectorsOf(
  job: Job,
  joists: readonly PlacedJoist[],
  beams: readonly Beam[],
  posts: readonly Post[],
  headers: readonly Member[],
): readonly Connector[] {
  return [
    ...(joists.some(({ supports }) => supports.some(({ kind }) => kind === 'ledger'))
      ? atLedgers(job, joists)
      : []),
    ...beams.map((beam) =>
      upliftTies(
        job,
        joists
          .filter(({ supports }) => supports.some(({ id }) => id === beam.id))
          .map(({ member }) => member),
        beam,
      ),
    ),
    ...atHeaders(job, headers),
    ...atPosts(job, posts),
  ]
}

/** One hanger per joist end that meets a ledger, one angle per end that laps it. */
function atLedgers(job: Job, joists: readonly PlacedJoist[]): readonly Connector[] {
  const { size } = job.frame.joists
  const fields = ['frame.joists.size', 'site.attachment']
  const ends = joists.flatMap(({ member, place, supports }) => {
    const meets = [place.startsAt, place.endsAt].map(
      (edge) => edge?.board === 'ledger' || edge?.steep === true,
    )
    const hangs = place.headers.map((header) => header !== null)
    return [0, 1].flatMap((end) =>
      (meets[end] || hangs[end]) && supports.some(({ kind }) => kind !== 'beam')
        ? [{ member, laps: place.laps[end] === true }]
        : [],
    )
  })
  const hung = ends.filter(({ laps }) => !laps).map(({ member }) => member)
  return [
    connector(
      'joist hanger',
      size,
      idsOf(hung),
      fields,
      'One hanger per joist at the ledger (IRC 2021 R507.6.1)',
    ),
    connector(
      'end joist angle',
      size,
      idsOf(ends.filter(({ laps }) => laps).map(({ member }) => member)),
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

/** One hanger, wide enough for all plies, at each end of a header. */
function atHeaders(job: Job, headers: readonly Member[]): readonly Connector[] {
  const first = headers.filter(({ id }) => id.endsWith('-1'))
  if (first.length === 0) return []
  const hangers = connector(
    'joist hanger',
    job.frame.joists.size,
    idsOf(first),
    ['shape.openings'],
    'One hanger for both plies at each end of a header (common practice, no source)',
  )
  return [{ ...hangers, count: 2 * first.length }]
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
 * The first and the last joist that hang in a ledger. Joists stand at most 24 in apart, so each is within the 24 in of
 * the deck's end that the clause allows; a lone joist leaves the other hold-down to the end joist. Where ledgers lie
 * along several walls, so it is at each; ledgers around a bay are one wall.
 */
function holdDownJoists(joists: readonly PlacedJoist[]): readonly string[] {
  const walls = new Map<string, PlacedJoist[]>()
  for (const joist of joists) {
    if (!joist.supports.some(({ kind }) => kind === 'ledger')) continue
    const wall = `${joist.member.line === undefined} ${joist.place.startsAt?.board === 'ledger'}`
    walls.set(wall, [...(walls.get(wall) ?? []), joist])
  }
  const held = [...walls.values()].flatMap((here) => {
    const hung = here.filter(({ member }) => member.role === 'joist').map(({ member }) => member.id)
    const [left, right] = [hung[0], hung.at(-1)]
    if (left === undefined || right === undefined) return here.map(({ member }) => member.id)
    return left === right ? [left, ...here.slice(-1).map(({ member }) => member.id)] : [left, right]
  })
  return [...new Set(held)]
}

function idsOf(things: readonly { readonly id: string }[]): readonly string[] {
  return things.map((thing) => thing.id)
}
