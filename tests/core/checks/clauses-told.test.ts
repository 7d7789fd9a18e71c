import { expect, test } from 'vitest'
import { design } from '../../../core/design.ts'
import { CATALOGUE } from '../../fixtures/catalogue.ts'

const made = design(CATALOGUE.find(({ file }) => file === 'high-stairs-landing.json')?.job)
if (!made.ok) throw new Error(JSON.stringify(made.error))
const { checks } = made.value
const said = (title: string) => checks.find((check) => check.title === title)?.message ?? ''

// IRC 2021 R312.1: .2 is height, .3 opening limitations; R311.7.5: .1 is risers, .2 treads
test('each measure of a check that has several is told with the clause that sets it', () => {
  const guard = said('Height and openings of the guard')
  expect(guard).toMatch(/ high \(R312\.1\.2\), openings of [^,]+ at most \(R312\.1\.3\)/)
  expect(guard).toMatch(/beside the stairs of [^,]+ at most, where 4 3\/8" may be \(R312\.1\.3/)
  expect(said('Steps of the stairs')).toMatch(/ \(R311\.7\.5\.1\), treads of [^(]+ \(R311\.7\.5\.2\)/)
})

test('what goes by a row of the 2018 edition in a set built to 2021 says why', () => {
  for (const title of ['Decking span', 'Treads'])
    expect(said(title), title).toContain(
      'by the row of the 2018 edition, which was read; that of 2021, from memory, has 16 in',
    )
})
