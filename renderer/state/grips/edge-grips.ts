import type { Design } from '../../../core/estimate-types.ts'
import { cornerList, fieldAt, type Job, type Place } from '../../../core/job/index.ts'
import { feet, inches, printLength, type Ticks, ticks } from '../../../core/units/index.ts'
import { nudgeStep } from '../field-value.ts'
import type { Grip, GripAxis } from './types.ts'

const STEP = nudgeStep(fieldAt('size.width'))
const FINE = inches(1)
/** Farthest corner of an outline either way, as the layout has it. */
const REACH = feet(100)

/** Edges of a rectangle that width and depth move; edges and corners of an outline. The wall of the house stands still. */
export function edgeGrips(design: Design): readonly Grip[] {
  return design.job.shape.outline.trim() === '' ? sizeGrips(design.job) : outlineGrips(design)
}

function sizeGrips({ size }: Job): readonly Grip[] {
  const { width, depth } = size
  const grip = (
    id: string,
    label: string,
    path: 'size.width' | 'size.depth',
    value: Ticks,
    way: GripAxis['way'],
    line: Grip['line'],
  ): Grip => {
    const { min = 0, max = REACH, label: name } = fieldAt(path)
    return {
      id,
      kind: 'edge',
      label,
      line,
      axes: [{ name: name.toLowerCase(), way, value, min, max, step: STEP, fine: FINE }],
      change: ([to = value]) => ({
        fields: { [path]: printLength(to) },
        label: `${name} ${printLength(to)}`,
      }),
    }
  }
  const corner = { x: width, y: depth }
  return [
    grip('edge-2', 'Right edge', 'size.width', width, { x: 1, y: 0 }, [{ x: width, y: 0 }, corner]),
    grip('edge-3', 'Front edge', 'size.depth', depth, { x: 0, y: 1 }, [{ x: 0, y: depth }, corner]),
  ]
}

function outlineGrips({ job, layout }: Design): readonly Grip[] {
  const corners = cornerList(job.shape.outline)
  const walls = new Set(layout.edges.filter(({ kind }) => kind === 'wall').map(({ number }) => number))
  const count = corners.length
  const edges = corners.flatMap((from, i): readonly Grip[] => {
    const number = i + 1
    const next = (i + 1) % count
    const to = corners[next]
    if (to === undefined || walls.has(number)) return []
    const across = from.x === to.x ? 'x' : from.y === to.y ? 'y' : null
    if (across === null) return []
    // a wall beside it must run the way it moves, or the house would move too
    const before = walls.has(i === 0 ? count : i) ? corners[(i + count - 1) % count] : from
    const after = walls.has(next + 1) ? corners[(next + 1) % count] : to
    const along = across === 'x' ? 'y' : 'x'
    const isHeld = before?.[along] !== from[along] || after?.[along] !== to[along]
    if (isHeld || isOnlyOrigin(corners, [i, next], across)) return []
    return [moving(corners, [i, next], [across], `edge-${number}`, 'edge', `Edge ${number}`)]
  })
  const points = corners.flatMap((corner, i): readonly Grip[] => {
    const beside = [
      walls.has(i === 0 ? count : i) ? corners[(i + count - 1) % count] : undefined,
      walls.has(i + 1) ? corners[(i + 1) % count] : undefined,
    ].filter((other) => other !== undefined)
    const free = (['x', 'y'] as const).filter((axis) => {
      const across = axis === 'x' ? 'y' : 'x'
      return beside.every((other) => other[across] === corner[across]) && !isOnlyOrigin(corners, [i], axis)
    })
    return free.length === 0
      ? []
      : [moving(corners, [i], free, `corner-${i + 1}`, 'corner', `Corner ${i + 1}`)]
  })
  return [...edges, ...points]
}

/** Places are measured from the corners nearest to the left end and to the wall: the last of them stays. */
function isOnlyOrigin(corners: readonly Place[], moved: readonly number[], axis: 'x' | 'y'): boolean {
  return !corners.some((corner, i) => corner[axis] === 0 && !moved.includes(i))
}

const MEASURED = { x: 'from the left end', y: 'from the wall' } as const

function moving(
  corners: readonly Place[],
  moved: readonly number[],
  free: readonly ('x' | 'y')[],
  id: string,
  kind: 'edge' | 'corner',
  label: string,
): Grip {
  const [first, last] = [corners[moved[0] ?? 0], corners[moved.at(-1) ?? 0]]
  if (first === undefined || last === undefined) throw new RangeError(`${id} has no corner`)
  return {
    id,
    kind,
    label,
    line: [first, last],
    axes: free.map((axis) => ({
      name: MEASURED[axis],
      way: { x: axis === 'x' ? 1 : 0, y: axis === 'y' ? 1 : 0 },
      value: first[axis],
      min: 0,
      max: REACH,
      step: STEP,
      fine: FINE,
    })),
    change(values) {
      const to = Object.fromEntries(free.map((axis, i) => [axis, values[i] ?? first[axis]]))
      const outline = corners.map((corner, i) => (moved.includes(i) ? { ...corner, ...to } : corner))
      const place = free.map((axis, i) => `${printLength(ticks(values[i] ?? first[axis]))} ${MEASURED[axis]}`)
      return {
        fields: { 'shape.outline': printCorners(outline) },
        label: `${label} ${place.join(', ')}`,
      }
    },
  }
}

function printCorners(corners: readonly Place[]): string {
  return corners.map(({ x, y }) => `${printLength(x)}, ${printLength(y)}`).join('; ')
}
