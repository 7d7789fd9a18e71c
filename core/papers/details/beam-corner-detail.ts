import { sectionOf } from '../../data/index.ts'
import type { Estimate } from '../../estimate-types.ts'
import type { Beam, Member } from '../../frame/index.ts'
import { inches, printLength } from '../../units/index.ts'
import { type Detail, detail } from './detail.ts'
import { marksOf } from './hip-details.ts'
import { membersWithin, shapeWithin, squareAbout, type Window } from './seen-from-above.ts'

const HALF = inches(14)

/** Each corner at which two beams meet in a mitre over one post, from above; of like corners the first is drawn. */
export function beamCornerDetails({ job, frame }: Estimate): readonly Detail[] {
  const mitred = (beam: Beam) => pliesOf(frame.members, beam).filter(({ ends }) => ends !== undefined)
  const corners = frame.posts.flatMap((post) => {
    const met = frame.beams.filter((beam) => beam.postIds.includes(post.id) && mitred(beam).length > 0)
    return met.length > 1 ? [{ post, met }] : []
  })
  const [first] = corners
  if (first === undefined) return []
  const { post, met } = first
  const window: Window = { about: post, half: HALF }
  const side = sectionOf(job.frame.postSize).depth
  const plies = met.flatMap((beam) => pliesOf(frame.members, beam))
  const saw = plies.map(({ mark, length, ends }) => `${mark} ${printLength(length)}${mitreOf(ends)}`)
  return [
    detail(
      'detail-beam-corner',
      `Beams ${marksOf(met)} where they meet over post ${post.number}, from above`,
      [
        ...shapeWithin(post.id, squareAbout(post, side), window, { stroke: 'hidden', weight: 'medium' }),
        ...membersWithin(plies, window, { weight: 'heavy' }),
      ],
      [
        {
          at: [0, 0],
          to: [HALF + inches(5), -HALF],
          text: `The plies meet in mitres on the post’s middle, ply against ply: ${saw.join('; ')}. Lengths are to the long points. Fit them dry on horses before they are lifted.`,
        },
        {
          at: [side / 2, side / 2],
          to: [HALF + inches(5), HALF],
          text: `Post ${job.frame.postSize} (dashed): both beams bear on it. Its cap must be made for beams that meet at this angle: ask its maker, and the designer, before it is ordered.`,
        },
        ...(corners.length > 1
          ? [
              {
                at: [-side / 2, -side / 2] as const,
                to: [-HALF - inches(5), -HALF] as const,
                text: `So too over ${corners
                  .slice(1)
                  .map((corner) => `post ${corner.post.number} (${marksOf(corner.met)})`)
                  .join(', ')}.`,
              },
            ]
          : []),
      ],
    ),
  ]
}

function pliesOf(members: readonly Member[], { plyIds }: Beam): readonly Member[] {
  return members.filter(({ id }) => plyIds.includes(id))
}

/** The angle of the end that is not square. */
function mitreOf(ends: Member['ends']): string {
  const angles = [...new Set((ends ?? []).filter((end) => end !== 0).map((end) => Math.abs(end) / 100))]
  return angles.length === 0
    ? ''
    : `, mitred ${angles.map((angle) => `${Number(angle.toFixed(1))}°`).join(' and ')}`
}
