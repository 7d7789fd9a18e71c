import type { Design } from '../../../core/estimate-types.ts'
import type { Beam, Post } from '../../../core/frame/index.ts'
import { type Job, postList, printPostList } from '../../../core/job/index.ts'
import { inches, printLength, ticks } from '../../../core/units/index.ts'
import type { Grip } from './types.ts'

const STEP = inches(1)
const FINE = inches(1 / 4)

/** Posts, each along its own beam; one on which two beams meet stays where they do. */
export function postGrips({ job, layout, frame }: Design): readonly Grip[] {
  const lines = new Map(
    layout.zones.flatMap(({ supports }) => supports.map((line) => [line.id, line] as const)),
  )
  return frame.beams.flatMap((beam) => {
    const cuts = lines.get(beam.id)?.cuts ?? [null, null]
    const places = beam.postsAt.map((at, i) => ({
      at,
      post: frame.posts.find(({ id }) => id === beam.postIds[i]),
      isJoint:
        (i === 0 && (cuts[0]?.meets ?? null) !== null) ||
        (i === beam.postsAt.length - 1 && (cuts[1]?.meets ?? null) !== null),
    }))
    return places.flatMap(({ at, post, isJoint }, i) =>
      post === undefined || isJoint || post.beamId !== beam.id
        ? []
        : [postGrip(job, beam, post, at, [places[i - 1]?.at ?? null, places[i + 1]?.at ?? null])],
    )
  })
}

function postGrip(
  job: Job,
  beam: Beam,
  post: Post,
  at: Beam['postsAt'][number],
  [before, after]: readonly [number | null, number | null],
): Grip {
  const [from, to] = beam.line
  const whole = Math.hypot(to.x - from.x, to.y - from.y)
  const moved = postList(job.ground.moved)
  const place = at - (moved.find((each) => each.post === post.number)?.length ?? 0)
  // two footings must not meet, and the post must stand under the beam
  const apart = Math.max(job.ground.tube, job.ground.base)
  const half = inches(3)
  return {
    id: post.id,
    kind: 'post',
    label: `Post ${post.number}`,
    line: [post, post],
    axes: [
      {
        name: 'from the beam’s left end',
        way: { x: (to.x - from.x) / whole, y: (to.y - from.y) / whole },
        value: at,
        min: before === null ? half : before + apart,
        max: after === null ? beam.length - half : after - apart,
        step: STEP,
        fine: FINE,
      },
    ],
    change: ([next = at]) => {
      const text = printPostList([
        ...moved.filter((each) => each.post !== post.number),
        { post: post.number, length: ticks(next - place) },
      ])
      return {
        fields: { 'ground.moved': text === '' ? undefined : text },
        label: `Post ${post.number} ${printLength(next)} from the beam’s left end`,
      }
    },
  }
}
