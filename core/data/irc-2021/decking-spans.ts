import type { CodeTable } from '../code-table.ts'

/**
 * Greatest joist spacing under decking. The pages name the edition: the 2018 values were read; the 2021 ones, which
 * tell single spans from multiple ones, are from memory, so the lesser of both holds.
 */
export const DECKING_SPANS: CodeTable = {
  id: 'irc-2021/decking-spans',
  title: 'Joist spacing under decking',
  unit: 'in',
  blockAxes: [
    { name: 'edition', unit: '', entries: ['2018', '2021'], safeSide: 'exact' },
    { name: 'spans of a board', unit: '', entries: ['single span', 'multiple spans'], safeSide: 'exact' },
  ],
  rowAxis: { name: 'decking', unit: '', entries: ['1-1/4 in wood', '2 in wood'], safeSide: 'exact' },
  columnAxis: { name: 'lay', unit: '', entries: ['perpendicular', 'diagonal'], safeSide: 'exact' },
  blocks: [
    {
      at: ['2018', 'multiple spans'],
      source: {
        document: 'IRC',
        edition: '2018',
        clause: 'Table R507.7',
        confidence: 'verified',
        note: 'Read in a permit document (Everett WA document portal, document 1467330, page 24). Diagonal: 45 degrees or less from perpendicular.',
      },
      rows: { '1-1/4 in wood': [16, 12], '2 in wood': [24, 16] },
    },
    {
      at: ['2021', 'single span'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.7',
        confidence: 'from memory',
        note: 'That single spans are told from multiple ones was read; the values were not.',
      },
      rows: { '1-1/4 in wood': [12, 8], '2 in wood': [24, 18] },
    },
    {
      at: ['2021', 'multiple spans'],
      source: {
        document: 'IRC',
        edition: '2021',
        clause: 'Table R507.7',
        confidence: 'from memory',
        note: 'Values not read. 24 in for 2 in boards laid diagonally is more than the 16 in of 2018: use 16.',
      },
      rows: { '1-1/4 in wood': [16, 12], '2 in wood': [24, 24] },
    },
  ],
}
