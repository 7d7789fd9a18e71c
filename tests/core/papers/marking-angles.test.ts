import { expect, test } from 'vitest'
import { makeSheets } from '../../../core/papers/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

const cautions = (shape: object) =>
  makeSheets(paperSource({ ...smallJob(), ...shape }), ['marking']).flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'caution' ? [block.text] : [])),
  )

test('what stands at an angle is named on the marking sheet, for it has no marks there', () => {
  expect(cautions({})).toEqual([])
  const [caution] = cautions({ shape: { outline: "0, 0; 12', 0; 12', 8'; 10', 10'; 0, 10'" } })
  expect(caution).toMatch(/at an angle and ha(s|ve) no marks on this sheet/)
})
