import type { Design } from '../../../core/estimate-types.ts'
import type { Beam } from '../../../core/frame/index.ts'
import { edgeLengthList, fieldAt, isRectangle, middleBeamList } from '../../../core/job/index.ts'
import { feet, inches, printInches, printLength, type Ticks, ticks } from '../../../core/units/index.ts'
import { nudgeStep } from '../field-value.ts'
import type { Grip, GripAxis } from './types.ts'

const SETBACK = { front: 'frame.beams.front.setback', rear: 'frame.beams.rear.setback' } as const
const STEP = nudgeStep(fieldAt(SETBACK.front))
const FINE = inches(1 / 4)
/** Least distance between a beam and what is parallel to it, as the job has it. */
const APART = inches(12)

/**
 * Beams that can be moved away from the edge that they follow, or over the deck; those on a seam stay on it, and flush
 * ones at an edge lie where the edge lies.
 */
export function beamGrips(design: Design): readonly Grip[] {
  return design.frame.beams.flatMap((beam) => {
    if (beam.key.startsWith('middle')) return middleGrip(design, beam)
    if (beam.flush) return []
    return isRectangle(design.job) ? [setbackGrip(design, beam)] : edgeSetbackGrip(design, beam)
  })
}

/** Beams of a rectangle go by the two fields of its setbacks. */
function setbackGrip({ job }: Design, beam: Beam): Grip {
  const path = SETBACK[beam.beam]
  const { min = 0, max = feet(40) } = fieldAt(path)
  const other = beam.beam === 'front' ? job.frame.beams.rear.setback : job.frame.beams.front.setback
  const taken = job.site.attachment === 'freestanding' ? other : 0
  const value = job.frame.beams[beam.beam].setback
  return {
    ...ofBeam(beam),
    axes: [
      axis(
        'from the rim',
        value,
        { x: 0, y: beam.beam === 'front' ? -1 : 1 },
        min,
        Math.min(max, job.size.depth - taken - APART),
      ),
    ],
    change: ([to = value]) => ({
      fields: { [path]: printLength(to) },
      label: `${beamName(beam)} ${printInches(to)} from the rim`,
    }),
  }
}

/** A beam behind edges of an outline: its distance is stated for each of those that it follows. */
function edgeSetbackGrip({ job, layout }: Design, beam: Beam): readonly Grip[] {
  const zone = layout.zones.find(({ supports }) => supports.some(({ id }) => id === beam.id))
  const support = zone?.supports.find(({ id }) => id === beam.id)
  const edge = support === undefined ? undefined : zone?.edges[support.edge]
  if (zone === undefined || edge === undefined || edge.number === null) return []
  const axisName = zone.joists === 'away' ? 'y' : 'x'
  const stated = new Map(edgeLengthList(job.shape.setbacks).map((each) => [each.edge, each.length]))
  const value = stated.get(edge.number) ?? job.frame.beams[beam.beam].setback
  const [from, to] = beam.line
  const out = (edge.from[axisName] + edge.to[axisName]) / 2 - (from[axisName] + to[axisName]) / 2
  const sign = out > 0 ? -1 : 1
  // edges at one height whose beams reach each other share this one
  const numbers = zone.edges.flatMap((each) =>
    each.number !== null &&
    each.kind === 'open' &&
    each.from[axisName] === edge.from[axisName] &&
    each.to[axisName] === edge.to[axisName]
      ? [each.number]
      : [],
  )
  const way = axisName === 'y' ? { x: 0, y: sign } : { x: sign, y: 0 }
  const reach = zone.outline.map((corner) => corner[axisName])
  const most = Math.max(...reach) - Math.min(...reach) - APART
  return [
    {
      ...ofBeam(beam),
      axes: [axis('from the rim', value, way, inches(1), most)],
      change: ([next = value]) => ({
        fields: { 'shape.setbacks': printSetbacks(stated, numbers, next) },
        label: `${beamName(beam)} ${printInches(next)} from the rim`,
      }),
    },
  ]
}

function printSetbacks(stated: ReadonlyMap<number, Ticks>, numbers: readonly number[], next: Ticks): string {
  const all = new Map([...stated, ...numbers.map((number) => [number, next] as const)])
  return [...all]
    .sort(([a], [b]) => a - b)
    .map(([number, length]) => `${number}: ${printLength(length)}`)
    .join('; ')
}

/** A middle beam lies so far from the wall, or from the left end under joists along it. */
function middleGrip({ job, layout }: Design, beam: Beam): readonly Grip[] {
  const zone = layout.zones.find(({ supports }) => supports.some(({ id }) => id === beam.id))
  const axisName = zone?.joists === 'along' ? 'x' : 'y'
  const places = middleBeamList(job.shape.middleBeams)
  const value = beam.line[0][axisName]
  const at = places.findIndex((place) => place.at === Math.round(value))
  if (zone === undefined || at === -1) return []
  const name = axisName === 'y' ? 'from the wall' : 'from the left end'
  const way = axisName === 'y' ? { x: 0, y: 1 } : { x: 1, y: 0 }
  return [
    {
      ...ofBeam(beam),
      axes: [axis(name, ticks(value), way, APART, feet(100))],
      change: ([to = ticks(value)]) => ({
        fields: {
          'shape.middleBeams': places
            .map(
              ({ at: place, set }, i) =>
                `${printLength(i === at ? to : place)}${set === 'flush' ? ' flush' : ''}`,
            )
            .join('; '),
        },
        label: `${beamName(beam)} ${printLength(to)} ${name}`,
      }),
    },
  ]
}

function ofBeam(beam: Beam): Pick<Grip, 'id' | 'kind' | 'label' | 'line'> {
  return { id: beam.id, kind: 'beam', label: beamName(beam), line: beam.line }
}

function beamName({ mark }: Beam): string {
  return `Beam ${mark}`
}

function axis(name: string, value: Ticks, way: GripAxis['way'], min: number, max: number): GripAxis {
  return { name, way, value, min, max, step: STEP, fine: FINE }
}
