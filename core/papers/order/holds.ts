import { type Check, membersNamed } from '../../checks/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { headerId, stripId } from '../../stairs/index.ts'
import { joistsAtHipEnd } from '../build/at-hip-end.ts'
import { mitredPosts } from './mitred-posts.ts'

/** Something that somebody must settle before what it speaks of is bought. */
export interface Hold {
  /** as the order calls it: H1 */
  readonly name: string
  readonly what: string
  readonly until: string
  readonly doubt: Doubt
}

/** What of the deck it is about. */
interface Doubt {
  /** ids of members or posts */
  readonly ids: ReadonlySet<string>
  /** only goods of these, where it is no more than a joint; all that is at the ids where absent */
  readonly skus?: RegExp
}

/** Whether it holds all that is at a member, a post or a footing. */
export function speaksOf({ doubt }: Hold, id: string): boolean {
  return doubt.skus === undefined && doubt.ids.has(id)
}

type Source = Pick<Estimate, 'checks' | 'frame' | 'job' | 'stairs'> & Partial<Pick<Estimate, 'guard'>>

const SETTLED: ReadonlySet<Check['status']> = new Set(['passes', 'near'])

const UNTIL: { readonly [status in Check['status']]?: string } = {
  fails: 'it passes with other sizes, or a licensed designer has settled it',
  'outside scope': 'a licensed designer has settled it',
  'calculated only': 'the building official has accepted the calculation',
}

/** Every check that does not pass and speaks of members, then the joints that are always designed or asked for. */
export function holdsOf(source: Source): readonly Hold[] {
  const open = source.checks.filter(({ status, subjects }) => !SETTLED.has(status) && subjects.length > 0)
  const alike = Map.groupBy(open, ({ title, status }) => `${title}\n${status}`)
  const checks = [...alike.values()].map((all) => {
    const ids = new Set(all.flatMap(({ subjects }) => subjects))
    const [{ title, status } = { title: '', status: 'fails' as const }] = all
    const members = [...source.frame.members, ...(source.guard?.members ?? [])]
    const named = membersNamed({ frame: { ...source.frame, members }, joistIds: [...ids] })
    return {
      what: named === '' ? title : `${title}: ${named}`,
      until: UNTIL[status] ?? '',
      doubt: { ids: new Set([...ids, ...hangingWith(ids, source)]) },
    }
  })
  return [...checks, ...hipJoints(source), ...mitredCaps(source)].map((hold, at) => ({
    name: `H${at + 1}`,
    ...hold,
  }))
}

/** What is made to hold the head of a flight whose header is in doubt, and its feet on a landing. */
function hangingWith(ids: ReadonlySet<string>, { stairs }: Source): readonly string[] {
  return stairs.flatMap(({ flights, members }) => {
    const strips = flights.flatMap(({ number }) => (ids.has(headerId(number)) ? [stripId(number)] : []))
    return members
      .filter(({ id, role, cause }) =>
        role === 'stair upright' ? cause.ids.some((one) => ids.has(one)) : strips.includes(id),
      )
      .map(({ id }) => id)
  })
}

/** Where a hip ends by the house no table has its hanger, nor those of the joists that meet it there. */
function hipJoints({ job, frame }: Source): readonly Omit<Hold, 'name'>[] {
  return frame.hips.map((hip) => {
    const joists = joistsAtHipEnd({ job, frame }, hip).map(({ id }) => id)
    const ids = new Set([...hip.memberIds, ...joists])
    return {
      what: `The joint of ${membersNamed({ frame, joistIds: [...ids] })} at the house: its hangers`,
      until: 'a licensed designer has drawn it',
      doubt: { ids, skus: /^joist-hanger-(?:double-)?skewed-/ },
    }
  })
}

function mitredCaps({ frame }: Source): readonly Omit<Hold, 'name'>[] {
  const posts = mitredPosts(frame)
  if (posts.length === 0) return []
  return [
    {
      what: `${posts.length === 1 ? 'The cap over post' : 'The caps over posts'} ${posts.map(({ number }) => number).join(', ')}, where beams meet in a mitre`,
      until: 'its maker has said which cap holds both',
      doubt: { ids: new Set(posts.map(({ id }) => id)), skus: /^post-cap-/ },
    },
  ]
}
