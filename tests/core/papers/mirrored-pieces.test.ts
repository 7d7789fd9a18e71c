import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { carriers } from '../../../core/frame/index.ts'
import { beamOnPostDetail } from '../../../core/papers/details/beam-on-post-detail.ts'
import { markingDrawing } from '../../../core/papers/drawings/marking-drawing.ts'
import { makeSheets } from '../../../core/papers/index.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'
import { paperSource } from '../../fixtures/paper-source.ts'

const source = paperSource(CATALOGUE.find(({ file }) => file === 'wrap-hip.json')?.job ?? {})
const { estimate } = source
const halves = carriers(estimate, estimate.plans).filter(({ outerFace }) => outerFace === true)

// the house's corner lies at the right and behind, that of the rims at the left and in front. The joists of HP1 stand in
// front of the hip: who faces it there has the rims at the left. Those of HP2 stand behind it, left of the house: who
// faces it there has the house at the left
test('the left end of each half of a hip is at the left of those who face its marked face', () => {
  expect(halves.map(({ mark, from, hookedAt }) => [mark, from, hookedAt])).toEqual([
    ['HP1', 'left', 'rims'],
    ['HP2', 'left', 'house'],
  ])
  const titles = markingDrawing(halves).primitives.flatMap((p) =>
    p.kind === 'text' && p.layer === 'beams' ? [p.text] : [],
  )
  expect(titles.find((words) => words.startsWith('hip HP2'))).toContain('left end, the one at the house')
})

// J32 hangs at the house, J37 is the shortest, by the rims
test('its lines run from the hooked end: on HP2 the joist by the house comes first', () => {
  const [front, rear] = halves
  expect(front?.marks.map(({ mark }) => mark)).toEqual(['J1', 'J2', 'J3', 'J4', 'J5', 'J6'])
  expect(rear?.marks.map(({ mark }) => mark)).toEqual(['J32', 'J33', 'J34', 'J35', 'J36', 'J37'])
  // the face that the joists meet is one and the same from either end: both halves are mirror images
  const far = (at = 0, wide = 0) => (front?.length ?? 0) - at - wide
  front?.marks.forEach(({ at, wide }, i) => {
    const other = rear?.marks[5 - i]
    expect(Math.abs((other?.at ?? 0) - far(at, wide))).toBeLessThanOrEqual(2)
  })
})

test('a piece that lies turned about on its board is said to, and what is up is up in the deck', () => {
  const blocks = makeSheets(source, ['cutting']).flatMap((sheet) => sheet.blocks)
  const boxes = blocks.flatMap((block) =>
    block.kind === 'set-up' ? block.boards.flatMap(({ marks }) => marks) : [],
  )
  const cuts = estimate.plans.flatMap(({ plan }) => plan.boards.flatMap((board) => board.cuts))
  // HP2 is measured from the house, which it has at its right: not turned, it lies with its left end at the right
  const turned = cuts.filter(
    ({ mark, mitres, turned = false }) => mitres !== undefined && turned !== (mark === 'HP2'),
  )
  expect(turned.length).toBeGreaterThan(0)
  expect(boxes.filter((words) => words.endsWith('(end for end)')).length).toBe(turned.length)
  for (const { mark } of turned) expect(boxes).toContain(`${mark} (end for end)`)
  const notes = blocks.flatMap((block) =>
    block.kind === 'steps' ? block.items.flatMap((item) => item.notes ?? []) : [],
  )
  expect(notes.join(' ')).toContain('No piece lies upside down')
  const rows = blocks.flatMap((block) => (block.kind === 'table' ? block.table.rows : []))
  const ends = (mark: string) => rows.find((row) => row.mark === mark)?.ends
  expect(ends('HP1')).toMatch(/^bevel left, at the rims, 45° long rear, right, at the house, 45° long front$/)
  expect(ends('HP2')).toMatch(/right, at the house, 45° long rear/)
})

test('plies are lettered alike on plan, detail and cutting sheet', () => {
  const plies = estimate.frame.members.filter(({ role }) => role === 'beam ply').map(({ mark }) => mark)
  expect(plies).toEqual(['B1a', 'B1b', 'B2a', 'B2b'])
  const letters = beamOnPostDetail(estimate)?.drawing.primitives.flatMap((p) =>
    p.kind === 'text' && p.layer === 'marks' ? [p.text] : [],
  )
  expect(letters).toEqual(['a', 'b'])
  const cut = estimate.plans.flatMap(({ plan }) =>
    plan.boards.flatMap(({ cuts }) => cuts.map(({ mark }) => mark)),
  )
  for (const ply of plies)
    expect(
      cut.some((mark) => mark === ply || mark.startsWith(`${ply}-`)),
      ply,
    ).toBe(true)
  const facts = makeSheets(source, ['framing']).flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'facts' ? block.rows.map(([, words]) => words) : [])),
  )
  expect(facts.join(' ')).toContain(
    'a of a beam is the rear one, or the left one where the beam runs away from the house',
  )
})

test('a is the rear ply of a beam, and the left one of a beam that runs away from the house', () => {
  let away = 0
  for (const { file, job } of CATALOGUE) {
    const made = design(job)
    const { beams, members } = made.ok ? made.value.frame : { beams: [], members: [] }
    for (const { mark, line, plyIds } of beams) {
      const [{ x, y }, to] = line
      const isAway = Math.abs(to.y - y) > 1.01 * Math.abs(to.x - x)
      if (isAway) away += 1
      const places = plyIds
        .map((id) => members.find((member) => member.id === id))
        .sort((a, b) => (a?.mark ?? '').localeCompare(b?.mark ?? ''))
        .map((ply) => {
          // from the beam's own line to the ply's middle, square to it: ends are sawn at other angles
          const [from, end] = ply?.line ?? middleLine(ply?.box)
          const [dx, dy] = [to.x - x, to.y - y]
          const off = (dx * ((from.y + end.y) / 2 - y) - dy * ((from.x + end.x) / 2 - x)) / Math.hypot(dx, dy)
          return isAway ? -Math.sign(dy) * off : Math.sign(dx) * off
        })
      places.forEach((place, i) => {
        if (i > 0) expect(place, `${file} ${mark}`).toBeGreaterThan(places[i - 1] ?? 0)
      })
    }
  }
  expect(away).toBeGreaterThan(4)
})

function middleLine(box = { x0: 0, x1: 0, y0: 0, y1: 0 }) {
  const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2]
  return box.x1 - box.x0 > box.y1 - box.y0
    ? ([
        { x: box.x0, y },
        { x: box.x1, y },
      ] as const)
    : ([
        { x, y: box.y0 },
        { x, y: box.y1 },
      ] as const)
}

// caps lie flat and are cut across their face; the 2x10 of the frame stand on edge
test('each product says whether its slanting lines are mitres or bevels', () => {
  const blocks = makeSheets(source, ['cutting']).flatMap((sheet) => sheet.blocks)
  const said = (size: string) => {
    const at = blocks.findIndex((block) => block.kind === 'heading' && block.text.startsWith(size))
    const next = blocks[at + 1]
    return next?.kind === 'text' ? next.text : ''
  }
  expect(said('2x6 ')).toBe('Drawn lying flat: a slanting line is a mitre across the face.')
  expect(said('5/4x6 ')).toBe('Drawn lying flat: a slanting line is a mitre across the face.')
  expect(said('2x10 ')).toMatch(/^Drawn on edge/)
})
