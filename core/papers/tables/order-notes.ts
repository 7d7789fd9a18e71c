import type { Estimate } from '../../estimate-types.ts'
import type { Frame } from '../../frame/index.ts'
import { joistsAtHipEnd } from '../build/at-hip-end.ts'
import { boltLengthWords, stairBoltWords } from '../build/guard-post-bolts.ts'
import { hangerHands } from './hanger-hands.ts'

type Source = Pick<Estimate, 'frame' | 'job' | 'guard'>

/** What a yard asks back: a bolt's length, a hanger's hand, a cap or an angle that is not like the others. In brackets, or nothing. */
export function orderNote(goodIds: readonly string[], source: Source): string {
  const words = goodIds.map((id) => noteOf(id.replace(/^good-/, ''), source)).find((note) => note !== '')
  return words === undefined ? '' : ` (${words})`
}

function noteOf(sku: string, { frame, job, guard }: Source): string {
  if (sku === 'ledger-lag-1/2')
    return 'length to suit: through ledger, sheathing and band, its tip past the band’s inner face'
  if (sku === 'ledger-bolt-1/2') return 'length to suit: through all that it holds, with washers and nut'
  if (sku === 'anchor-bolt-1/2')
    return 'length to suit: as deep as the post base’s listing asks, and its thread'
  if (sku === 'carriage-bolt-1/2') {
    const beside = stairBoltWords({ job, guard })
    return [boltLengthWords({ job, frame, guard }), beside].filter((words) => words !== '').join('; ')
  }
  if (sku === 'end-joist-angle') {
    const rims = anglesAtHips(frame)
    return rims === 0 ? '' : `${rims} of them hip to rim`
  }
  if (sku.startsWith('post-cap-')) return mitredCaps(frame)
  const [, size] = /^joist-hanger-skewed-(.+)$/.exec(sku) ?? []
  if (size === undefined) return ''
  const atEnds = frame.hips.flatMap((hip) => joistsAtHipEnd({ job, frame }, hip))
  const asked =
    atEnds.length === 0
      ? ''
      : `; those of ${atEnds.map(({ mark }) => mark).join(' and ')}, at the hip’s end by the house, only when its joint there is designed`
  return `${hangerHands(frame, size)}${asked}`
}

function anglesAtHips({ connectors, members }: Frame): number {
  const hips = new Set(members.flatMap(({ id, role }) => (role === 'hip' ? [id] : [])))
  return connectors
    .filter(({ kind, at }) => kind === 'end joist angle' && at.some((id) => hips.has(id)))
    .reduce((sum, { count }) => sum + count, 0)
}

/** Where two beams meet over one post in a mitre, a plain cap does not hold both. */
function mitredCaps({ beams, members, posts }: Frame): string {
  const met = posts.filter(
    ({ id }) =>
      beams.filter(
        ({ postIds, plyIds }) =>
          postIds.includes(id) && members.some((ply) => plyIds.includes(ply.id) && ply.ends !== undefined),
      ).length > 1,
  )
  if (met.length === 0) return ''
  const numbers = met.map(({ number }) => number).join(', ')
  return `${met.length} of them, for post ${numbers}, must hold beams that meet in a mitre: ask its maker before it is ordered`
}
