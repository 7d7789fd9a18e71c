import type { CutPlan } from '../../cutting/index.ts'
import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { insetBy } from '../../geometry/index.ts'
import { isRectangle } from '../../job/index.ts'
import { spotAt } from '../../stairs/index.ts'
import { inches } from '../../units/index.ts'
import { type StartLine, startLines } from '../build/start-lines.ts'
import type { Drawing, Primitive } from '../types.ts'
import { edgeDimensions } from './edge-dimensions.ts'
import { houseWalls } from './house-walls.ts'
import { planDimensions } from './plan-dimensions.ts'
import { planGuard } from './plan-guard.ts'
import { jointStrokes } from './plan-joints.ts'
import { planMarks } from './plan-marks.ts'
import { planStairs } from './plan-stairs.ts'
import { drawingOf, memberFromAbove, seenFromAbove, text } from './shapes.ts'

const MARGIN = inches(6)

/**
 * The framing plan from above, the house at the top: joists, ledger, rims and blocking as wood, what lies under them
 * hidden, posts numbered as on the ground, footings dashed, dimensions in feet and inches, and, where there are
 * cutting plans, a stroke at every joint. Ids are those of the members, so that what is pointed at can be asked for.
 */
export function framingPlan(design: Design, plans: readonly { readonly plan: CutPlan }[] = []): Drawing {
  const { frame } = design
  // a flush beam stands between the joists, and is seen as they are
  const flush = new Set(frame.beams.filter((beam) => beam.flush).flatMap(({ plyIds }) => plyIds))
  const primitives: readonly Primitive[] = [
    ...houseWalls(design),
    ...deckingEdge(design),
    ...footings(design),
    ...posts(design),
    ...frame.members.filter((member) => !flush.has(member.id)).flatMap(underneath),
    ...frame.members.flatMap((member) => (flush.has(member.id) ? seen(member) : onTop(member))),
    ...planStairs(design),
    ...planGuard(design),
    ...planMarks(design),
    ...hipJoints(design),
    ...jointStrokes(frame, plans, 'framing'),
    ...(isRectangle(design.job) ? planDimensions(design) : edgeDimensions(design)),
  ]
  return drawingOf('framing-plan', 'Framing plan', primitives, MARGIN)
}

/** A note on a line to the inside corner from which a hip hangs: its joint there is not covered by any table. */
function hipJoints({ frame }: Design): readonly Primitive[] {
  return frame.hips.flatMap(({ id, inside, outside }): readonly Primitive[] => {
    const [x, y] = [Math.sign(inside.x - outside.x), Math.sign(inside.y - outside.y)]
    const [at, up] = [inside.x + x * inches(36), inside.y + y * inches(44)]
    const look = { kind: 'line', id, layer: 'dimensions', weight: 'fine', stroke: 'solid' } as const
    return [
      { ...look, x1: inside.x, y1: inside.y, x2: at, y2: up },
      { ...look, x1: at, y1: up, x2: at + x * inches(6), y2: up },
      {
        kind: 'text',
        id,
        layer: 'dimensions',
        x: at + x * inches(8),
        y: up,
        text: 'joint to be designed',
        anchor: x > 0 ? 'start' : 'end',
        size: 'small',
      },
    ]
  })
}

/** The decking courses from above, with their joints. */
export function deckingPlan(design: Design, plans: readonly { readonly plan: CutPlan }[] = []): Drawing {
  const courses = design.frame.members.filter(({ role }) => role === 'decking' || role === 'step tread')
  const primitives: readonly Primitive[] = [
    ...houseWalls(design),
    ...courses.map((course) =>
      memberFromAbove(course, {
        layer: 'decking',
        weight: 'fine',
        stroke: 'solid',
        fill: 'wood',
      }),
    ),
    ...jointStrokes(design.frame, plans, 'decking'),
    ...startLines(design).flatMap(startStroke),
    ...partNumbers(design),
    // boards of their own shape first: their marks have one place only, and in a crowd the later gives way
    ...[...courses]
      .sort((a, b) => Number(a.plan === undefined) - Number(b.plan === undefined))
      .map((course) => courseMark(course, courses)),
  ]
  return drawingOf('decking-plan', 'Decking plan', primitives, MARGIN)
}

/** From the frame's edge to the name of a start line's end: away from the deck, but not into the house. */
const MARK_OFF = inches(9)

function startStroke({ board: { id }, marks }: StartLine): readonly Primitive[] {
  const [{ spot: from }, { spot: to }] = marks
  const line = { x1: from.x, y1: from.y, x2: to.x, y2: to.y }
  return [
    { kind: 'line', id: `start-${id}`, layer: 'marks', ...line, weight: 'heavy', stroke: 'solid' },
    ...marks.map(({ name, edge, along }) => {
      const { x, y } = spotAt(edge, along, edge.wall ? -MARK_OFF : MARK_OFF)
      return text(`start-${id}`, 'marks', x, y, name)
    }),
  ]
}

/** Room that a mark takes past the end of its board. */
const MARK_ROOM = inches(14)

/**
 * A board's mark: past the end from which it is measured, within it where another board lies there, or on its middle
 * where it lies at an angle.
 */
function courseMark({ id, mark, box, plan, line }: Member, courses: readonly Member[]): Primitive {
  if (plan !== undefined && line !== undefined) {
    const [from, to] = line
    return text(id, 'marks', (from.x + to.x) / 2, (from.y + to.y) / 2, mark)
  }
  const [y, x] = [(box.y0 + box.y1) / 2, (box.x0 + box.x1) / 2]
  const isMet = courses.some(
    ({ box: other }) =>
      other.x0 < box.x0 &&
      other.x1 > box.x0 - MARK_ROOM &&
      other.y0 < y &&
      other.y1 > y &&
      other.x1 <= box.x0 + 1,
  )
  return box.x1 - box.x0 >= box.y1 - box.y0
    ? {
        kind: 'text',
        id,
        layer: 'marks',
        x: box.x0 + (isMet ? inches(3) : -inches(3)),
        y,
        text: mark,
        anchor: isMet ? 'start' : 'end',
        size: 'small',
      }
    : text(id, 'marks', x, box.y0 - inches(4), mark)
}

/** Numbers of the parts that may be laid each its own way, where there are several. */
function partNumbers({ layout: { zones } }: Design): readonly Primitive[] {
  if (zones.length === 1) return []
  return zones.map(({ id, outline }, i) => {
    const middle = (pick: (corner: (typeof outline)[number]) => number) =>
      (Math.min(...outline.map(pick)) + Math.max(...outline.map(pick))) / 2
    return text(
      `part-${id}`,
      'marks',
      middle(({ x }) => x),
      middle(({ y }) => y),
      `part ${i + 1}`,
    )
  })
}

function deckingEdge({ job, layout, frame }: Design): readonly Primitive[] {
  const look = { layer: 'decking', weight: 'fine', stroke: 'hidden', fill: 'none' } as const
  if (!isRectangle(job)) {
    const { overhang, wallGap } = job.decking
    return layout.levels.map(({ outline, edges }) => {
      const widths = edges.map(({ kind }) => (kind === 'wall' ? wallGap : -overhang))
      return { kind: 'polygon', id: 'decking', ...look, points: insetBy(outline, widths).polygon }
    })
  }
  const boxes = frame.members.filter((member) => member.role === 'decking').map((member) => member.box)
  const edge = {
    x0: Math.min(...boxes.map((box) => box.x0)),
    x1: Math.max(...boxes.map((box) => box.x1)),
    y0: Math.min(...boxes.map((box) => box.y0)),
    y1: Math.max(...boxes.map((box) => box.y1)),
    z0: 0,
    z1: 0,
  }
  return [seenFromAbove('decking', edge, look)]
}

function footings({ frame }: Design): readonly Primitive[] {
  return frame.footings.flatMap((footing) =>
    [footing.tube, footing.base]
      .filter((diameter) => diameter > 0)
      .map(
        (diameter): Primitive => ({
          kind: 'circle',
          id: footing.id,
          layer: 'footings',
          cx: footing.x,
          cy: footing.y,
          r: diameter / 2,
          weight: 'fine',
          stroke: 'hidden',
        }),
      ),
  )
}

function posts({ frame }: Design): readonly Primitive[] {
  const sticks = new Map(frame.members.map((member) => [member.id, member]))
  return frame.posts.flatMap((post) => {
    const stick = sticks.get(post.id)
    const reach = inches(11)
    return [
      ...(stick === undefined
        ? []
        : [memberFromAbove(stick, { layer: 'posts', weight: 'medium', stroke: 'hidden', fill: 'none' })]),
      text(post.id, 'posts', post.x, post.y + (post.beam === 'front' ? reach : -reach), `${post.number}`),
    ]
  })
}

function underneath(member: Member): readonly Primitive[] {
  return member.role === 'beam ply'
    ? [
        memberFromAbove(member, {
          layer: 'beams',
          weight: 'medium',
          stroke: 'hidden',
          fill: 'wood',
        }),
      ]
    : []
}

function onTop(member: Member): readonly Primitive[] {
  const drawn =
    member.role !== 'beam ply' &&
    member.role !== 'post' &&
    member.role !== 'decking' &&
    member.role !== 'step tread'
  return drawn ? seen(member) : []
}

function seen(member: Member): readonly Primitive[] {
  return [
    memberFromAbove(member, {
      layer: member.role === 'beam ply' ? 'beams' : 'joists',
      weight: 'medium',
      stroke: 'solid',
      fill: 'wood',
    }),
  ]
}
