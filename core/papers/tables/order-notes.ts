import type { Listing } from '../../checks/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import type { Frame } from '../../frame/index.ts'
import { joistsAtHipEnd } from '../build/at-hip-end.ts'
import { boltOrderWords } from '../build/guard-post-bolts.ts'
import { type HeldPart, isInPart } from '../order/held-lines.ts'
import { mitredPosts } from '../order/mitred-posts.ts'
import { hangerHands } from './hanger-hands.ts'
import { anchorNote, capNote, lagNote, stringerHangerNote, throughBoltNote } from './metal-notes.ts'

const OWN_FASTENERS = 'with the screws or nails that its sheet names, in its bag or asked for with it'

type Source = Pick<Estimate, 'checks' | 'frame' | 'job' | 'guard' | 'stairs'>

/**
 * What a yard asks back: a bolt's length, a hanger's hand, a cap or an angle that is not like the others. Nothing where there is nothing to say.
 * @param only what of it is told of: what waits for an answer is not said of what is free
 */
export function orderNote(goodIds: readonly string[], source: Source, only: HeldPart | null = null): string {
  const own = goodIds.map((id) => noteOf(skuOf(id), source, only)).find((note) => note !== '') ?? ''
  const listed = goodIds.map((id) => listingNote(skuOf(id), source)).find((note) => note !== '') ?? ''
  return [own, listed].filter((note) => note !== '').join('; ')
}

/** Whether the note of some goods tells of their part alone, by its own counts, and not of all of them. */
export function isToldByPart(goodIds: readonly string[]): boolean {
  return goodIds.some((id) => BY_PART.has(skuOf(id)))
}

const BY_PART: ReadonlySet<string> = new Set(['carriage-bolt-1/2', 'ledger-bolt-1/2'])

function skuOf(goodId: string): string {
  return goodId.replace(/^good-/, '')
}

function noteOf(sku: string, source: Source, only: HeldPart | null): string {
  const { frame, job } = source
  const part = only?.part
  const isHere = (id: string) => isInPart(id, only)
  if (sku === 'ledger-lag-1/2') return lagNote(source)
  if (sku === 'guard-hold-down-strong')
    return `listed for ${job.guard.holdDown.toLocaleString('en-US')} lb or more on this wood; with the bolt, washers and nails of its sheet: where that is another bolt than the carriage bolt counted at the upper hole, it takes that one’s place`
  if (sku === 'guard-hold-down') return OWN_FASTENERS
  if (sku === 'hold-down-1500lb')
    return `${OWN_FASTENERS}; two for each place, one at the deck’s joist, one at the house’s framing; with the threaded rod, nuts and washers of its sheet`
  if (sku === 'handrail-bracket') return 'with its screws, long enough for 1 in in the wood behind'
  if (sku === 'stringer-hanger') return stringerHangerNote(source)
  if (sku === 'ledger-bolt-1/2') return throughBoltNote(source, isHere)
  if (sku === 'anchor-bolt-1/2') return anchorNote(source)
  if (sku === 'carriage-bolt-1/2') return boltOrderWords(source, isHere)
  if (sku.startsWith('post-cap-'))
    return [capNote(source), part === 'free' ? '' : mitredCaps(frame)]
      .filter((note) => note !== '')
      .join('; ')
  if (sku.startsWith('joist-hanger-double-skewed-'))
    return part === 'free' ? '' : 'ask the designer before it is ordered'
  const [, size] = /^joist-hanger-skewed-(.+)$/.exec(sku) ?? []
  if (size === undefined) return ''
  const atEnds = frame.hips.flatMap((hip) => joistsAtHipEnd({ job, frame }, hip))
  const asked =
    atEnds.length === 0 || part === 'free'
      ? ''
      : `; those of ${atEnds.map(({ mark }) => mark).join(' and ')}, at the hip’s end by the house, only when its joint there is designed`
  return `${hangerHands(frame, size)}${asked}`
}

const LISTED: readonly (readonly [RegExp, Listing['of'], string])[] = [
  [/^joist-hanger-(?!double-)/, 'joist hanger', ''],
  [/^end-joist-angle$/, 'end joist angle', ''],
  [/^post-(?:base|cap)-/, 'post base or cap', ', pressing down'],
]

/** The strength that a connector is to be chosen by: the greatest that any check found for its kind. */
function listingNote(sku: string, { checks }: Pick<Source, 'checks'>): string {
  const [, kind, way = ''] = LISTED.find(([skus]) => skus.test(sku)) ?? []
  const listings = checks.flatMap(({ listings = [] }) => listings.filter(({ of }) => of === kind))
  if (listings.length === 0) return ''
  const most = Math.max(...listings.map(({ pounds }) => pounds))
  return `listed for ${most.toLocaleString('en-US')} lb or more each${way}`
}

/** A plain cap does not hold two beams that meet in a mitre. */
function mitredCaps(frame: Frame): string {
  const met = mitredPosts(frame)
  if (met.length === 0) return ''
  const numbers = met.map(({ number }) => number).join(', ')
  return `${met.length} of them, for post ${numbers}, must hold beams that meet in a mitre: ask its maker before it is ordered`
}
