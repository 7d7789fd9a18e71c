import type { Design } from '../../estimate-types.ts'
import type { Member } from '../../frame/index.ts'
import { inches, printInches } from '../../units/index.ts'
import type { Primitive } from '../types.ts'

/** Heights are drawn upward: a page counts down, so z turns its sign. */
const up = (z: number): number => (z === 0 ? 0 : -z)

type Say = (id: string, x: number, z: number, text: string, anchor: 'start' | 'middle' | 'end') => Primitive

/** Between a thing and its name, and what a name takes at a usual scale. */
const BESIDE = inches(5)
const WORDS = inches(48)

/**
 * What each thing that is cut is, beside it: a person who holds only this sheet need not look it up.
 * @param from where the section begins, at the wall or the frame's rear
 */
export function sectionNames(
  { job, frame }: Design,
  cut: readonly Member[],
  from: number,
): readonly Primitive[] {
  const say: Say = (id, x, z, text, anchor) => ({
    kind: 'text',
    id,
    layer: 'marks',
    x,
    y: up(z),
    text,
    anchor,
    size: 'small',
  })
  const joist = cut.find(({ role }) => role === 'joist')
  // at its left no other post stands where the words do
  const [footing] = frame.footings.filter(({ y }) => y >= from).sort((a, b) => a.y - b.y)
  const ledger = cut.find(({ role }) => role === 'ledger')
  const { joists, postSize } = job.frame
  return [
    ...(joist === undefined
      ? []
      : [
          say(
            joist.id,
            (joist.box.y0 + joist.box.y1) / 2,
            (joist.box.z0 + joist.box.z1) / 2,
            `joists ${joists.size} at ${printInches(joists.spacing)} o.c.`,
            'middle',
          ),
        ]),
    ...(ledger === undefined ? [] : ledgerName(ledger, frame, cut, say)),
    ...frame.beams.flatMap((beam) => {
      const ply = cut.find(({ id }) => beam.plyIds.includes(id))
      return ply === undefined
        ? []
        : [
            say(
              beam.id,
              ply.box.y0 - BESIDE,
              (ply.box.z0 + ply.box.z1) / 2,
              `${beam.mark}: ${beam.plies}-${beam.size}`,
              'end',
            ),
          ]
    }),
    ...(footing === undefined ? [] : footingNames(footing, postSize, from, say)),
  ]
}

/** Beams that are seen beyond and not cut, by their marks: those that cover each other have one name together. */
export function beyondNames({ frame }: Design, seen: readonly Member[]): readonly Primitive[] {
  const named = frame.beams.flatMap(({ id, mark, plyIds }) => {
    const plies = seen.filter((ply) => plyIds.includes(ply.id)).map(({ box }) => box)
    return plies.length === 0
      ? []
      : [
          {
            id,
            mark,
            y0: Math.min(...plies.map(({ y0 }) => y0)),
            y1: Math.max(...plies.map(({ y1 }) => y1)),
            z0: Math.min(...plies.map(({ z0 }) => z0)),
            z1: Math.max(...plies.map(({ z1 }) => z1)),
          },
        ]
  })
  const alike = Map.groupBy(
    named,
    ({ y0, y1, z0 }) => `${Math.round(y0)} ${Math.round(y1)} ${Math.round(z0)}`,
  )
  return [...alike.values()].flatMap(([first, ...others]): readonly Primitive[] =>
    first === undefined
      ? []
      : [
          {
            kind: 'text',
            id: first.id,
            layer: 'marks',
            // on the yard's side of one that is seen from its end: its post stands under it
            ...(first.y1 - first.y0 > WORDS
              ? { x: (first.y0 + first.y1) / 2, y: up(first.z0 - inches(5)), anchor: 'middle' }
              : { x: first.y1 + BESIDE, y: up((first.z0 + first.z1) / 2), anchor: 'start' }),
            text: `${[first, ...others].map(({ mark }) => mark).join(', ')} beyond`,
            size: 'small',
          },
        ],
  )
}

/** Under the ledger; where a beam is seen behind that place, over the decking, on a line to the ledger. */
function ledgerName(
  { id, box, product }: Member,
  { beams, members }: Design['frame'],
  cut: readonly Member[],
  say: Say,
): readonly Primitive[] {
  const words = `ledger ${product.size}, flashed`
  const x = box.y1 + BESIDE
  const plies = new Set(beams.flatMap(({ plyIds }) => plyIds))
  const isCut = new Set(cut.map((member) => member.id))
  const hidden = members.some(
    ({ id: own, box: ply }) =>
      plies.has(own) && !isCut.has(own) && ply.y0 < x + WORDS && ply.y1 > x && ply.z1 > box.z0 - inches(8),
  )
  if (!hidden) return [say(id, x, box.z0 - inches(4), words, 'start')]
  const over = box.z1 + inches(12)
  const line = { kind: 'line', id, layer: 'marks', weight: 'fine', stroke: 'solid' } as const
  const [at, z] = [(box.y0 + box.y1) / 2, (box.z0 + box.z1) / 2]
  return [{ ...line, x1: at, y1: up(z), x2: x, y2: up(over) }, say(id, x + inches(1), over, words, 'start')]
}

/** Beside the first post and its footing: on the side of the house where there is room for words, else on the other. */
function footingNames(
  footing: Design['frame']['footings'][number],
  postSize: string,
  from: number,
  say: Say,
): readonly Primitive[] {
  const { id, y, tube, holeDiameter, topOfConcrete, ground: level, depth, base, baseThickness } = footing
  const isLeft = y - holeDiameter / 2 - from > WORDS
  const beside = (reach: number, z: number, text: string): Primitive =>
    say(id, isLeft ? y - reach - BESIDE : y + reach + BESIDE, z, text, isLeft ? 'end' : 'start')
  return [
    beside(tube / 2, topOfConcrete + inches(6), `post ${postSize}`),
    beside(holeDiameter / 2, level - depth * 0.6, `tube ${printInches(tube)}`),
    ...(base > 0
      ? [
          beside(
            holeDiameter / 2,
            level - depth + baseThickness / 2,
            `base ${printInches(base)} × ${printInches(baseThickness)}`,
          ),
        ]
      : []),
  ]
}
