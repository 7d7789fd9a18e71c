import { sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import { inches, printInches } from '../../units/index.ts'
import { levelDimension, text, uprightDimension } from '../drawings/shapes.ts'
import { said } from '../said.ts'
import { GOES_ON } from './decking-above.ts'
import { box, type Detail, detail, trace } from './detail.ts'

/** A beam in section over its post, with what lies on it or hangs from it; null where the deck has none. */
export function beamOnPostDetail({ job, frame, checks }: Estimate): Detail | null {
  const [beam] = frame.beams
  const ply = frame.members.find(({ id }) => id === beam?.plyIds[0])
  const joist = frame.members.find(({ role }) => role === 'joist')
  if (beam === undefined || ply === undefined) return null
  const { thickness, depth } = sectionOf(beam.size)
  const post = sectionOf(job.frame.postSize)
  const half = (beam.plies * thickness) / 2
  const id = 'detail-beam'
  // the joist stands where it stands against the beam: on it, or flush with its top
  const above = joist === undefined ? 0 : joist.box.z1 - ply.box.z1
  const joistTop = -above
  const joistDeep = joist === undefined ? 0 : joist.box.z1 - joist.box.z0
  const flush = above < joistDeep / 2
  const plies = Array.from({ length: beam.plies }, (_, i) =>
    box(ply.id, [-half + i * thickness, 0], [-half + (i + 1) * thickness, depth], {
      fill: 'wood',
      weight: 'heavy',
    }),
  )
  const plyLetters = frame.members
    .filter((member) => beam.plyIds.includes(member.id))
    .map((member, i) =>
      text(member.id, 'marks', -half + (i + 0.5) * thickness, depth * 0.8, member.mark.replace(/^.*\d/, '')),
    )
  const caps = said(checks, 'Post bases and caps')
  return detail(
    id,
    'Beam on its post, section across the beam',
    [
      ...(joist === undefined
        ? []
        : flush
          ? [
              box(joist.id, [-half - GOES_ON, joistTop], [-half, joistTop + joistDeep], {
                fill: 'wood',
                weight: 'fine',
              }),
              box(joist.id, [half, joistTop], [half + GOES_ON, joistTop + joistDeep], {
                fill: 'wood',
                weight: 'fine',
              }),
            ]
          : [
              box(joist.id, [-half - GOES_ON, joistTop], [half + GOES_ON, joistTop + joistDeep], {
                fill: 'wood',
                weight: 'fine',
              }),
            ]),
      ...plies,
      ...plyLetters,
      box('post', [-post.depth / 2, depth], [post.depth / 2, depth + inches(10)], { fill: 'wood' }),
      ...trace(
        'post-cap',
        [
          [-half - inches(0.25), depth - inches(4)],
          [-half - inches(0.25), depth],
        ],
        'heavy',
      ),
      ...trace(
        'post-cap',
        [
          [half + inches(0.25), depth - inches(4)],
          [half + inches(0.25), depth],
        ],
        'heavy',
      ),
      ...trace(
        'post-cap',
        [
          [-post.depth / 2, depth],
          [post.depth / 2, depth],
        ],
        'heavy',
      ),
      ...trace(
        'post-cap',
        [
          [-post.depth / 2, depth],
          [-post.depth / 2, depth + inches(4)],
        ],
        'heavy',
      ),
      ...trace(
        'post-cap',
        [
          [post.depth / 2, depth],
          [post.depth / 2, depth + inches(4)],
        ],
        'heavy',
      ),
      ...trace(
        'uplift-tie',
        [
          [half + inches(0.25), inches(3)],
          [half + inches(0.25), -inches(3)],
        ],
        'medium',
        'hidden',
      ),
      uprightDimension(id, 0, depth, -half - GOES_ON, -inches(4)),
      levelDimension(id, -post.depth / 2, post.depth / 2, depth + inches(10), inches(4)),
    ],
    [
      {
        at: [0, depth / 2],
        to: [half + inches(9), depth / 2],
        text: `Beam ${beam.mark}: ${beam.plies} ${beam.plies === 1 ? 'ply' : 'plies'} of ${beam.size}, lettered from ${beam.lies === 'left' || beam.lies === 'right' ? 'left to right' : 'the rear to the front'}${beam.plies === 1 ? '' : ', a at the left here'}; crowns up, on ${beam.postIds.length} posts; all plies bear on the whole width of the post.`,
      },
      {
        at: [half, depth - inches(2)],
        to: [half + inches(9), depth + inches(3)],
        text: ['Post cap, or a pair of plates, both sides, every hole filled.', ...caps].join(' '),
      },
      {
        at: [0, depth + inches(6)],
        to: [-half - inches(9), depth + inches(7)],
        text: `Post ${job.frame.postSize}, cut square; end grain at the top brushed with preservative.`,
      },
      ...(joist === undefined
        ? []
        : [
            {
              at: [half + inches(0.25), -inches(1)] as const,
              to: [half + inches(9), joistTop - inches(4)] as const,
              text: flush
                ? `Joists ${job.frame.joists.size} hang from the beam’s faces, tops flush, each in a hanger with every hole filled.`
                : `Joists ${job.frame.joists.size} at ${printInches(job.frame.joists.spacing)} o.c. on the beam, an uplift tie at each (dashed)${job.frame.blocking !== 'none' ? '; blocking between them' : ''}.`,
            },
          ]),
    ],
  )
}
