import { describe, expect, test } from 'vitest'
import { distance, findByName } from '../../../renderer/state/find-by-name.ts'

const NAMES = [
  'Frost depth told by (site)',
  'Front beam: size (frame)',
  'Joist 7',
  'Joist 17',
  'Save the workbook',
]
const found = (query: string) => findByName(query, NAMES, (name) => name)

describe('finding by name', () => {
  test('takes words in any order and any case, and letters left out', () => {
    expect(found('told FROST')).toEqual(['Frost depth told by (site)'])
    expect(found('sv wrkbk')).toEqual([])
    expect(found('save wrkbk')).toEqual(['Save the workbook'])
    expect(found('frbm')).toEqual(['Front beam: size (frame)'])
  })
  test('puts a whole word before the beginning of one, and that before what stands within', () => {
    expect(found('joist 7')).toEqual(['Joist 7', 'Joist 17'])
    expect(found('fro')).toEqual(['Frost depth told by (site)', 'Front beam: size (frame)'])
    expect(distance('joist', 'Joist 7')).toBeLessThan(distance('joi', 'Joist 7') ?? 0)
    expect(distance('joi', 'Joist 7')).toBeLessThan(distance('oist', 'Joist 7') ?? 0)
  })
  test('finds nothing where a word is missing, and everything where nothing is asked', () => {
    expect(found('joist nine')).toEqual([])
    expect(found('  ')).toEqual(NAMES)
  })
  test('letters in another order are another name', () => {
    expect(distance('tsoij', 'Joist 7')).toBeNull()
  })
})
