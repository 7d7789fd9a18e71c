import { bearingOf, type Check } from '../../checks/index.ts'
import { toldBy } from '../../job/index.ts'
import { printInches, printLength } from '../../units/index.ts'
import { outsideWords } from '../build/outside-words.ts'
import { squareWords } from '../build/square-words.ts'
import { siteFacts } from '../quote/customer-facts.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'
import { reviewTable } from '../tables/review-table.ts'
import { permitGaps, permitList } from './permit-list.ts'
import { standsOn } from './stands-on.ts'

/** For the plan reviewer: what was stated and by whom, every check, the steps of what decides, what lies outside. */
export function checksSheet(source: PaperSource): Sheet {
  const { checks } = source.estimate
  const open = checks.filter(({ status }) => status !== 'passes' && status !== 'near')
  return {
    id: 'checks',
    title: 'Checks for the plan reviewer',
    audience: 'permit office',
    across: true,
    blocks: [
      { kind: 'heading', text: 'Basis' },
      { kind: 'facts', rows: basis(source) },
      { kind: 'heading', text: 'What a plan review asks for' },
      { kind: 'checklist', items: permitList(source) },
      ...permitGaps(source).map((text): Block => ({ kind: 'caution', text })),
      { kind: 'table', table: reviewTable(checks), empty: 'There are no checks.' },
      { kind: 'heading', text: 'What does not pass by a table' },
      ...(open.length === 0
        ? [
            {
              kind: 'text',
              text: 'Nothing fails, lies outside the tables or stands on a calculation alone. What the rest stands on:',
            } as const,
          ]
        : open.map(openBlock)),
      ...standsOn(source).map((text): Block => ({ kind: 'text', text })),
      { kind: 'heading', text: 'Remarks' },
      ...remarks(checks),
      { kind: 'heading', text: 'Cautions' },
      {
        kind: 'caution',
        text: 'Local code and the building official govern. Frost depth, snow, soil and wind are local facts and were stated, not found, by whoever made this. What lies outside the tables needs a licensed designer. This is not engineering and not a permit.',
      },
      {
        kind: 'text',
        tone: 'soft',
        text: 'Verified: the value was compared with the published table. From memory: it was not, and the official copy decides. Calculated only: no table covers it; the calculation stands alone and needs the official’s word.',
      },
      { kind: 'heading', columns: 'steps', text: 'Steps of what decides' },
      ...stepBlocks(checks),
    ],
  }
}

function basis({ estimate }: PaperSource): readonly (readonly [string, string])[] {
  const { job, given } = estimate
  const { site, size } = job
  const bearing = bearingOf(job).psf
  const said = (path: string): string =>
    given.includes(path) ? 'stated in the job' : 'the program’s default, to be confirmed'
  return [
    ...siteFacts(job),
    [
      'Code',
      `${job.code.edition}; ${job.code.governs === 'prescriptive' ? 'its tables govern where they cover a member, the calculation stands beside them' : 'the calculation governs, the tables stand beside it'}`,
    ],
    [
      'Deck',
      `${outsideWords(estimate)}; ${printLength(size.height)} high; ${site.attachment === 'ledger' ? 'on a ledger' : 'freestanding'}; ${squareWords(estimate)}`,
    ],
    ['Lumber', `${job.frame.species} ${job.frame.grade}, ${job.frame.treatment}: ${said('frame.species')}`],
    ['Live load, dead load', `${site.liveLoad} psf, ${site.deadLoad} psf: ${said('site.liveLoad')}`],
    [
      'Ground snow',
      site.snowStated
        ? `${site.snowLoad} psf, ${toldBy(site.snowSource)}`
        : `not known: taken as ${site.snowLoad} psf, the most that the deck tables cover; to be asked for locally`,
    ],
    [
      'Soil',
      `${site.soil}, bearing ${site.soilBearing} psf: ${said('site.soilBearing')}, ${toldBy(site.soilSource)}${bearing < site.soilBearing ? `; reckoned with ${bearing} psf` : ''}`,
    ],
    [
      'Wind exposure',
      site.windExposure === 'unknown'
        ? 'not known: taken as D, the most open; to be asked for locally'
        : `${site.windExposure}, ${toldBy(site.windSource)}`,
    ],
    [
      'Frost depth',
      site.frostStated
        ? `${printInches(site.frostDepth)}, ${toldBy(site.frostSource)}`
        : `not known: taken as ${printInches(site.frostDepth)}, as in a very cold place; to be asked for locally`,
    ],
    ...(site.attachment === 'ledger'
      ? [
          [
            'Ledger',
            `${site.ledgerFastener === 'lag' ? 'lag screws' : 'bolts'} 1/2 in, sheathing ${site.sheathing}, on a band that is ${site.band}: ${said('site.band')}`,
          ] as const,
        ]
      : []),
  ]
}

function openBlock({ title, status, message, remedy }: Check): Block {
  return {
    kind: 'caution',
    text: [`${title}, ${status}: ${message}`, remedy].filter((words) => words !== '').join(' '),
  }
}

function remarks(checks: readonly Check[]): readonly Block[] {
  const words = checks.filter(
    ({ remedy, status }) => remedy !== '' && (status === 'passes' || status === 'near'),
  )
  const seen = new Set<string>()
  return words
    .filter(({ remedy }) => !seen.has(remedy) && seen.add(remedy))
    .map(({ title, remedy }): Block => ({ kind: 'text', text: `${title}: ${remedy}` }))
}

/** Steps of the finding that decides; like checks that went the same way stand once, with what each of them found. */
function stepBlocks(checks: readonly Check[]): readonly Block[] {
  const alike = new Map<
    string,
    { readonly title: string; readonly found: string[]; readonly lines: string }
  >()
  for (const { title, governing, message } of checks) {
    if (governing === null) continue
    const { document, edition, clause, lookup, steps, confidence } = governing
    const head = `${title} · ${document} ${edition} ${clause} · ${confidence}`
    const lines = [lookup, ...steps].filter((line) => line !== '').join('\n')
    const key = `${head}\n${lines}`
    const group = alike.get(key) ?? { title: head, found: [], lines }
    if (!group.found.includes(message)) group.found.push(message)
    alike.set(key, group)
  }
  return [...alike.values()].flatMap(({ title, found, lines }): readonly Block[] => [
    { kind: 'text', columns: 'steps', tone: 'strong', text: title },
    { kind: 'text', columns: 'steps', tone: 'soft', text: [found.join(' '), lines].join('\n') },
  ])
}
