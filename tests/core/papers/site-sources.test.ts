import { describe, expect, test } from 'vitest'
import { makeSheets, SHEET_IDS } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { type StatedJob, smallJob } from '../../fixtures/worked-job.ts'

const FACTS = { frostDepth: '36 in', snowLoad: 30, soil: 'sand', soilBearing: 2000, windExposure: 'C' }
const SOURCES = {
  frostSource: 'the town’s page of May',
  snowSource: 'the county’s map',
  soilSource: 'a report of June',
  windSource: 'the inspector, by phone',
}

/** Every text that is on a sheet of the set. */
function wordsOf(site: StatedJob): string {
  const found: string[] = []
  const walk = (value: unknown): void => {
    if (typeof value === 'string') found.push(value)
    else if (value !== null && typeof value === 'object') for (const each of Object.values(value)) walk(each)
  }
  for (const sheet of makeSheets(paperSource(smallJob('11 ft 10 in', { site })), SHEET_IDS))
    walk(sheet.blocks)
  return found.join('\n')
}

describe('facts of the site on the papers', () => {
  test.each([
    ['36 in', SOURCES.frostSource],
    ['30 psf', SOURCES.snowSource],
    ['2000 psf', SOURCES.soilSource],
    ['C', SOURCES.windSource],
  ])('%s stands with who told it: %s', (figure, source) => {
    const lines = wordsOf({ ...FACTS, ...SOURCES }).split('\n')
    expect(lines.filter((line) => line.includes(figure) && line.includes(`told by ${source}`))).not.toEqual(
      [],
    )
  })

  test('say in a whole sentence that nobody is named, and whom to ask', () => {
    const words = wordsOf(FACTS)
    expect(words).not.toContain('source not stated')
    for (const figure of ['Frost depth 36', '30 psf', '2000 psf', 'C'])
      expect(words).toMatch(
        new RegExp(`${figure}[^\\n]*nobody named as its source: confirm it with the building department`),
      )
  })

  test('say what was taken for those that are not known', () => {
    const words = wordsOf({})
    expect(words).toContain('Frost depth not known: taken as')
    expect(words).toContain('not known: taken as D, the most open')
  })
})
