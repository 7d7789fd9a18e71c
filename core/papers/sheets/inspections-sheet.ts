import { membersNamed } from '../../checks/index.ts'
import { allHoles, type Hole } from '../../ground/index.ts'
import { titleOfStairs } from '../../job/index.ts'
import { printInches, ticks } from '../../units/index.ts'
import { guardBlockCount, guardPostCount, guardPostIds, guardPostMarks } from '../build/guard-posts.ts'
import { houseHoldDownWords } from '../build/house-hold-downs.ts'
import { landingWords } from '../build/landing-words.ts'
import { lastCardTitle } from '../build/last-card.ts'
import { squareWords } from '../build/square-words.ts'
import { atLandingWords, headWords } from '../build/stair-bearing-words.ts'
import { said } from '../said.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'

/** A card for each inspection: what must be open to view, with this deck's numbers. */
export function inspectionsSheet({ estimate }: PaperSource): Sheet {
  const cards: readonly (readonly [string, string, readonly string[]])[] = [
    ['Footings', 'Before concrete. Holes open, dry and clean, this set on the site.', footingItems(estimate)],
    ...(estimate.job.site.attachment === 'ledger'
      ? ([
          [
            'Ledger',
            'Before siding or decking covers it: seen with the framing, where the office asks for no visit of its own.',
            ledgerItems(estimate),
          ],
        ] as const)
      : []),
    ['Framing', 'Before decking. Every connector in sight.', framingItems(estimate)],
    ...(stairItems(estimate).length + guardItems(estimate).length > 0
      ? ([
          [
            lastCardTitle(estimate),
            'Before use, seen with the final.',
            [...stairItems(estimate), ...guardPostItems(estimate, 'landing'), ...guardItems(estimate)],
          ],
        ] as const)
      : []),
    ['Final', 'Before use.', finalItems(estimate)],
  ]
  return {
    id: 'inspections',
    title: 'Inspection cards',
    audience: 'crew',
    across: false,
    blocks: cards.flatMap(([name, when, items]): readonly Block[] => [
      { kind: 'heading', together: name, text: name },
      { kind: 'text', together: name, text: when },
      { kind: 'checklist', together: name, items },
      { kind: 'signatures', together: name, lines: ['Seen by, date', 'What was asked for'] },
    ]),
  }
}

type Source = PaperSource['estimate']

function footingItems(estimate: Source): readonly string[] {
  const { job, stairs } = estimate
  return [
    'Services marked; the marks can still be seen',
    ...allHoles(estimate).map((hole) => `Hole ${hole.number}${whose(hole)}: ${holeWords(hole)}`),
    ...stairs.flatMap(({ branch, pad }) =>
      pad === null
        ? []
        : [
            `${titleOfStairs(branch, 'Pad at the foot of the stairs')}: ${printInches(pad.width)} × ${printInches(pad.depth)}, ${printInches(pad.thickness)} thick, on firm ground`,
          ],
    ),
    `Bottom at or under the frost depth, ${printInches(job.site.frostDepth)}, on undisturbed ground; no water, no loose earth`,
    'Strings up, or marks from which they can be put up',
  ]
}

function whose({ under, post }: Hole): string {
  if (under === 'deck') return ''
  return post === null ? ', under stringers' : `, landing post ${post.mark}`
}

function holeWords({ depth, holeDiameter, base, baseThickness, tube }: Hole): string {
  return `${printInches(depth)} deep from the ground there, ${printInches(holeDiameter)} across; tube ${printInches(tube)}${base > 0 ? ` on a base ${printInches(base)} × ${printInches(baseThickness)}` : ''}`
}

function ledgerItems({ checks, frame }: Source): readonly string[] {
  const ledgers = frame.members.filter(({ role }) => role === 'ledger')
  return [
    ...ledgers.map(({ mark, product }) => `Ledger ${mark}, ${product.size}, treated, on a sound band`),
    ...said(checks, 'What the ledger hangs on'),
    ...said(checks, 'Ledger fasteners'),
    ...said(checks, 'Places of ledger fasteners'),
    'Membrane behind it; flashing over its top, lapped by the house’s barrier; no water behind',
    ...said(checks, 'Lateral load connection'),
  ]
}

function framingItems(estimate: Source): readonly string[] {
  const { job, frame, checks } = estimate
  return [
    `Joists ${job.frame.joists.size} at ${printInches(job.frame.joists.spacing)} on centre, crowns up`,
    ...frame.connectors.map((one) => connectorItem(one, estimate)),
    ...hipItems(estimate),
    ...guardPostItems(estimate, 'deck'),
    ...frame.beams.map(
      ({ mark, plies, size, postIds }) =>
        `Beam ${mark}: ${plies}-${size} on ${postIds.length} posts, ply joints over posts only, full bearing`,
    ),
    `Frame square: ${squareWords(estimate)}`,
    'Field cuts brushed with preservative; metal galvanised or stainless',
    ...(job.site.attachment === 'ledger' ? [] : said(checks, 'Sideways stability')),
  ]
}

/** What holds a hip, end by end: its joint at the house is a designer's. */
function hipItems({ frame, job }: Source): readonly string[] {
  return frame.hips.map(({ memberIds, postId }) => {
    const marks = frame.members.filter(({ id }) => memberIds.includes(id)).map(({ mark }) => mark)
    const post = frame.posts.find(({ id }) => id === postId)?.number ?? ''
    return `Hip ${marks.join(' and ')}, ${memberIds.length} plies ${job.frame.joists.size}: nailed together in two rows; hung at the corner of the house as its designer says; on the middle of post ${post} with a tie; an angle to either rim; every joist at it in a skewed hanger of its own`
  })
}

/** Where a kind is listed more than once, and of what is set or nailed in a way of its own, the members are named. */
function connectorItem(
  { kind, count, size, at, skew, double }: Source['frame']['connectors'][number],
  { frame }: Source,
): string {
  const own = skew !== undefined || frame.connectors.filter((other) => other.kind === kind).length > 1
  const marks = own || NAMED.has(kind) ? membersNamed({ frame, joistIds: at }) : ''
  const words = `${double ? 'double ' : ''}${kind}${count === 1 ? '' : 's'}`
  const places = kind === 'hold-down' ? houseHoldDownWords({ frame }) : ''
  if (places !== '')
    return `${count} ${words} (${size}) of 1,500 lb to the house: ${places}; every hole filled, each rod through ledger and band into the floor’s framing, its nut tight on a second one inside`
  const set = skew === undefined ? '' : `, set ${Number((skew / 100).toFixed(1))}° off square`
  const fixed = NAILED.has(kind) ? 'nailed as the building steps say' : 'every hole filled'
  return `${count} ${words} (${size})${set}${marks === '' ? '' : ` at ${marks}`}, ${fixed}`
}

const NAILED: ReadonlySet<string> = new Set(['joist pair', 'joist lap'])
/** Few among many joists: which of them is not seen from the plan. */
const NAMED: ReadonlySet<string> = new Set([...NAILED, 'hold-down'])

function stairItems({ stairs, checks }: Source): readonly string[] {
  return stairs.flatMap((one) => itemsOf(one, checks))
}

function itemsOf(stairs: Source['stairs'][number], checks: Source['checks']): readonly string[] {
  const { branch, patterns, connectors } = stairs
  const landing = landingWords(stairs)
  const atLanding = atLandingWords(stairs)
  return [
    ...patterns.map(
      ({ flight, count, kind, spacing }) =>
        `Flight ${flight}: ${count} ${kind} stringers, ${printInches(ticks(Math.round(spacing)))} apart, held at head and foot`,
    ),
    ...(landing === null ? [] : [`Landing: ${landing}`]),
    headWords(stairs),
    ...(atLanding === null ? [] : [atLanding]),
    ...connectors
      .filter(({ count }) => count > 0)
      .map(
        ({ kind, count }) =>
          `${count} ${kind}${count === 1 ? '' : 's'}, ${kind === 'header bolt' ? 'nuts tight, washers on wood' : 'every hole filled'}`,
      ),
    // the share of a span that is used cannot be seen on the site
    ...['Steps of the stairs', 'Stringers', 'Treads', 'Width of the stairs', 'Landing', 'Handrail']
      .flatMap((title) => said(checks, titleOfStairs(branch, title)))
      .filter((words) => !words.includes('% of their span')),
  ]
}

/** What holds the guard's posts in one place, which the boards there hide. */
function guardPostItems(estimate: Source, where: 'deck' | 'landing'): readonly string[] {
  const { guard, job } = estimate
  const marks = guardPostMarks(estimate, where)
  if (guard === null || marks === '') return []
  const posts = guardPostCount(guard, where)
  const blocks = guardBlockCount(guard, where)
  const place =
    where === 'deck' ? 'in the frame' : 'on the landing, seen before its boards or from under them'
  return [
    `${posts} guard posts ${job.guard.postSize} ${place}, ${marks}, none notched`,
    ...(job.guard.fixing === 'hold-downs'
      ? [
          `${posts} hold-downs, one at the upper bolt of each of these posts, fixed to the side of a joist or a block${unheldWords(estimate, where)}, every hole filled`,
        ]
      : []),
    `${2 * posts} bolts through ${where === 'deck' ? 'rim' : 'the landing’s beam or joist'} and post, two each, nuts tight, washers on wood`,
    ...(blocks === 0
      ? []
      : [`${blocks} ${blocks === 1 ? 'block' : 'blocks'} behind these posts, tight, nailed at both ends`]),
  ]
}

/** Those of the posts in one place whose hold-down finds neither. */
function unheldWords({ guard, frame }: Source, where: 'deck' | 'landing'): string {
  if (guard === null) return ''
  const here = new Set(guardPostIds(guard, where))
  const bare = guard.faces.flatMap(({ wood, post }) => (wood === null && here.has(post) ? [post] : []))
  if (bare.length === 0) return ''
  return `, at ${membersNamed({ frame: { ...frame, members: guard.members }, joistIds: bare })} as the licensed designer says`
}

/** Posts beside stairs that are left to a designer. */
function designedWords({ guard, frame, checks }: Source): string {
  const ids = checks
    .filter(({ id, status }) => id === 'guard-stair-posts' && status === 'outside scope')
    .flatMap(({ subjects }) => subjects)
  if (guard === null || ids.length === 0) return ''
  return `, ${membersNamed({ frame: { ...frame, members: guard.members }, joistIds: ids })} held as the licensed designer says`
}

function guardItems(estimate: Source): readonly string[] {
  const { guard, checks, job } = estimate
  if (guard === null || guard.stretches.length === 0) return []
  return [
    ...(guard.stairPosts > 0
      ? [
          `${guard.stairPosts} posts on the stairs, none notched${designedWords(estimate)}; ${2 * guard.stairPosts} bolts through stringer and post, two each, nuts tight, washers on wood`,
          ...(job.guard.fixing === 'hold-downs'
            ? [
                `${guard.stairPosts} hold-downs, one at the upper bolt of each post on the stairs, fixed to the block between the stringers, every hole filled`,
              ]
            : []),
          `${guardBlockCount(guard, 'stairs')} blocks between the stringers behind these posts, tight, nailed at both ends`,
        ]
      : []),
    ...said(checks, 'Guard posts'),
    ...said(checks, 'Height and openings of the guard'),
  ]
}

function finalItems({ stairs, checks }: Source): readonly string[] {
  return [
    ...checks
      .filter(({ title }) => title === 'Guard')
      .map(({ message, remedy }) => `${message} ${remedy}`.trim()),
    'Guard: nothing passes a 4 in ball, 36 in high or more, holds a person who leans on it',
    ...(stairs.length > 0
      ? [
          'Stairs: risers equal within 3/8 in and no more than 7 3/4 in, treads 10 in or more and equal within 3/8 in from nosing to nosing, the first too, handrail from four risers',
        ]
      : []),
    'Decking fastened at every joist; no nail or screw stands proud',
    'Ground slopes away from the house and the piers; the site is clear',
  ]
}
