import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { design } from '../../../../core/design.ts'
import type { Design } from '../../../../core/estimate-types.ts'
import { clearField, type JobStatement, setField } from '../../../../core/job/index.ts'
import { inches, printLength, ticks } from '../../../../core/units/index.ts'
import { type Grip, gripFor, gripsOf } from '../../../../renderer/state/grips/index.ts'
import { drawnTo, movedLine, nudgedTo, stepped } from '../../../../renderer/state/grips/snap.ts'
import { type StatedJob, workedJob } from '../../../fixtures/worked-job.ts'

function designOf(statement: StatedJob): Design {
  const made = design(statement)
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  return made.value
}

function grip(of: Design, id: string): Grip {
  const found = gripsOf(of).find((each) => each.id === id)
  if (found === undefined) throw new Error(`${id} cannot be moved`)
  return found
}

const L_SHAPE = "0, 0; 24', 0; 24', 8'; 14', 8'; 14', 14'; 0, 14'"
const worked = designOf(workedJob())
const shaped = designOf({ ...workedJob(), size: { height: '42 in' }, shape: { outline: L_SHAPE } })
/** so many inches along the house */
const along = (count: number) => ({ x: Math.round(count * 32), y: 0 })

describe('the grips of the worked job', () => {
  test('are its two free edges, its beam and its four posts; the wall and the left end stand still', () => {
    expect(gripsOf(worked).map(({ id }) => id)).toEqual([
      'edge-2',
      'edge-3',
      'beam-front',
      'post-front-1',
      'post-front-2',
      'post-front-3',
      'post-front-4',
    ])
  })

  test('move the width by 6 in, and by 1 in with the fine step', () => {
    const edge = grip(worked, 'edge-2')
    // 23 ft 6 in and 10 in: the nearest half foot is 24 ft 6 in, the nearest inch 24 ft 4 in
    expect(edge.change(drawnTo(edge, along(10), false)).fields).toEqual({ 'size.width': '24\'-6"' })
    expect(edge.change(drawnTo(edge, along(10), true)).fields).toEqual({ 'size.width': '24\'-4"' })
  })

  test('never leave the bounds of the field that they state', () => {
    const edge = grip(worked, 'edge-3')
    expect(edge.change(drawnTo(edge, { x: 0, y: inches(9999) }, false)).fields).toEqual({
      'size.depth': '40\'-0"',
    })
    expect(edge.change(drawnTo(edge, { x: 0, y: -inches(9999) }, false)).fields).toEqual({
      'size.depth': '4\'-0"',
    })
  })

  test('move the beam against its setback: towards the house it grows', () => {
    const beam = grip(worked, 'beam-front')
    // 24 in from the rim as stated; 3 in towards the house is 27 in
    expect(beam.change(drawnTo(beam, { x: 0, y: -inches(3) }, false)).fields).toEqual({
      'frame.beams.front.setback': '2\'-3"',
    })
  })

  test('move a post along its beam by what is written beside it on the list of moved posts', () => {
    const post = grip(worked, 'post-front-2')
    // post 2 stands 98 in from the left end (worked by hand); 5 in on it stands 103 in from it
    const to = drawnTo(post, along(5.2), false)
    expect(to.map(printLength)).toEqual(['8\'-7"'])
    expect(post.change(to).fields).toEqual({ 'ground.moved': '2: 5"' })
    const moved = designOf({
      ...workedJob(),
      ground: { ...(workedJob().ground as StatedJob), moved: '2: 5"' },
    })
    expect(moved.frame.posts[1]?.x).toBe(inches(103))
  })

  test('take a post that is back at its place off the list, and the list off the job', () => {
    const ground = workedJob().ground as StatedJob
    const moved = designOf({ ...workedJob(), ground: { ...ground, moved: '2: 5 in; 3: -4 in' } })
    const second = grip(moved, 'post-front-2')
    expect(second.change(drawnTo(second, along(-5), false)).fields).toEqual({ 'ground.moved': '3: -4"' })
    const one = designOf({ ...workedJob(), ground: { ...ground, moved: '2: 5 in' } })
    const only = grip(one, 'post-front-2')
    expect(only.change(drawnTo(only, along(-5), false)).fields).toEqual({ 'ground.moved': undefined })
  })

  test('keep two footings apart, whatever the pointer does', () => {
    const post = grip(worked, 'post-front-2')
    const { fields } = post.change(drawnTo(post, along(500), false))
    // bases are 20 in across: with post 3 at 184 in, post 2 comes to 164 in, 66 in on
    expect(fields).toEqual({ 'ground.moved': '2: 5\'-6"' })
  })

  test('go by arrow keys along their own way only', () => {
    const post = grip(worked, 'post-front-2')
    const from = post.axes.map(({ value }) => value)
    expect(nudgedTo(post, from, { x: 1, y: 0 }, 1, false)).toEqual([inches(99)])
    expect(nudgedTo(post, from, { x: -1, y: 0 }, 4, false)).toEqual([inches(94)])
    expect(nudgedTo(post, from, { x: 0, y: 1 }, 1, false)).toBeNull()
    const beam = grip(worked, 'beam-front')
    // down the screen is away from the house: the setback shrinks
    expect(nudgedTo(beam, [inches(24)], { x: 0, y: 1 }, 1, false)).toEqual([inches(23)])
  })

  test('are found by what is pressed: a footing’s post, a ply’s beam, the edge of a rim', () => {
    const all = gripsOf(worked)
    const found = (id: string) => gripFor(id, all, worked)?.id
    expect(found('footing-front-3')).toBe('post-front-3')
    expect(found('beam-front-ply-2')).toBe('beam-front')
    expect(found('rim-front-1')).toBe('edge-3')
    expect(found('ledger')).toBeUndefined()
    expect(found('joist-3')).toBeUndefined()
  })
})

describe('the grips of an outline', () => {
  test('are every open edge and corner; the wall’s corners only go along it', () => {
    const all = gripsOf(shaped).filter(({ kind }) => kind === 'edge' || kind === 'corner')
    expect(
      all.map(({ id, axes }) => `${id} ${axes.map(({ way }) => (way.x === 0 ? 'y' : 'x')).join('')}`),
    ).toEqual([
      'edge-2 x',
      'edge-3 y',
      'edge-4 x',
      'edge-5 y',
      'corner-1 x',
      'corner-2 x',
      'corner-3 xy',
      'corner-4 xy',
      'corner-5 xy',
      'corner-6 xy',
    ])
  })

  test('move an edge with both its corners, and the deck that comes of it has them there', () => {
    const edge = grip(shaped, 'edge-3')
    const { fields, label } = edge.change(drawnTo(edge, { x: 0, y: inches(13) }, false))
    expect(fields).toEqual({
      'shape.outline': '0", 0"; 24\'-0", 0"; 24\'-0", 9\'-0"; 14\'-0", 9\'-0"; 14\'-0", 14\'-0"; 0", 14\'-0"',
    })
    expect(label).toBe('Edge 3 9\'-0" from the wall')
    const [from, to] = movedLine(edge, drawnTo(edge, { x: 0, y: inches(13) }, false))
    expect([from.y, to.y]).toEqual([inches(108), inches(108)])
  })

  test('move a corner both ways', () => {
    const corner = grip(shaped, 'corner-4')
    const { fields } = corner.change(drawnTo(corner, { x: inches(-12), y: inches(6) }, false))
    expect(fields['shape.outline']).toContain('13\'-0", 8\'-6"')
  })

  test('state the setback of the edge that a beam follows', () => {
    const beam = gripsOf(shaped).find(({ kind, line }) => kind === 'beam' && line[0].x === 0)
    if (beam === undefined) throw new Error('no beam begins at the left end')
    const { fields } = beam.change(drawnTo(beam, { x: 0, y: -inches(6) }, false))
    // edge 5 is the front of the deep part; 24 in as stated and 6 in more
    expect(fields).toEqual({ 'shape.setbacks': '5: 2\'-6"' })
  })

  test('one step on state a deck that can be built: edges, beams and posts', () => {
    const statement = { ...workedJob(), size: { height: '42 in' }, shape: { outline: L_SHAPE } }
    for (const each of gripsOf(shaped)) {
      if (each.kind === 'corner') continue
      const values = each.axes.map((axis) => stepped(axis, axis.value, 1, false))
      const stated = Object.entries(each.change(values).fields).reduce<JobStatement>(
        (all, [path, text]) => (text === undefined ? clearField(all, path) : setField(all, path, text)),
        statement,
      )
      const moved = designOf(stated as StatedJob)
      const now = gripsOf(moved).find(({ id }) => id === each.id)
      expect(
        now?.axes.map(({ value }) => value),
        each.label,
      ).toEqual(values)
    }
  })
})

describe('beams whose top is level with the joists’', () => {
  const catalogued = (name: string) =>
    designOf(
      JSON.parse(readFileSync(join(import.meta.dirname, `../../../fixtures/catalogue/${name}.json`), 'utf8'))
        .job,
    )

  test('in the middle they move like any other and stay flush', () => {
    const deck = catalogued('flush-middle')
    const [middle] = gripsOf(deck).filter(({ id }) => id.includes('middle'))
    const [axis] = middle?.axes ?? []
    if (middle === undefined || axis === undefined) throw new Error('the middle beam cannot be moved')
    const to = ticks(axis.value + inches(1))
    expect(middle.change([to]).fields).toEqual({ 'shape.middleBeams': `${printLength(to)} flush` })
  })

  test('at an edge they lie where the edge lies, and only with it do they move', () => {
    const moved = gripsOf(catalogued('flush-front')).map(({ id }) => id)
    expect(moved).toContain('edge-3')
    expect(moved).not.toContain('beam-front')
  })
})
