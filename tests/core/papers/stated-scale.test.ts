import { expect, test } from 'vitest'
import { aboutOf, layOutPages, makeSheets } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const source = paperSource({ ...smallJob(), stairs: { kind: 'straight' }, guard: { where: 'where needed' } })
const captions = (ids: Parameters<typeof makeSheets>[1]) =>
  layOutPages(makeSheets(source, ids), aboutOf(source), { paper: 'tabloid', scale: 48 })
    .flatMap(({ marks }) => marks)
    .flatMap((mark) => (mark.kind === 'text' && mark.text.includes('Scale ') ? [mark.text] : []))

test('a scale that is stated is that of plans, sections and elevations', () => {
  const told = captions(['framing', 'section', 'footings'])
  expect(told.length).toBeGreaterThanOrEqual(5)
  for (const caption of told) expect(caption).toContain('1/4 in = 1 ft (1:48)')
})

test('details, stringers and the bay of a guard stay as large as fits: at 1/4 in to the foot a bolt is a dot', () => {
  const told = captions(['details', 'stairs']).filter((caption) => !caption.startsWith('Guard from above'))
  expect(told.length).toBeGreaterThan(8)
  for (const caption of told) expect(Number(/\(1:(\d+)\)/.exec(caption)?.[1])).toBeLessThan(48)
})
