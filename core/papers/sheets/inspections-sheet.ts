import { printInches } from '../../units/index.ts'
import { squareWords } from '../build/square-words.ts'
import type { Block, Sheet } from '../sheet-types.ts'
import type { PaperSource } from '../source.ts'

/** A card for each inspection: what must be open to view, with this deck's numbers. */
export function inspectionsSheet({ estimate }: PaperSource): Sheet {
  const cards: readonly (readonly [string, string, readonly string[]])[] = [
    ['Footings', 'Before concrete. Holes open, dry and clean, this set on the site.', footingItems(estimate)],
    ['Framing', 'Before decking. Every connector in sight.', framingItems(estimate)],
    ['Final', 'Before use.', finalItems(estimate)],
  ]
  return {
    id: 'inspections',
    title: 'Inspection cards',
    audience: 'crew',
    across: false,
    blocks: cards.flatMap(([name, when, items], index): readonly Block[] => [
      ...(index === 0 ? [] : [{ kind: 'page break' } as const]),
      { kind: 'heading', text: name },
      { kind: 'text', text: when },
      { kind: 'checklist', items },
      { kind: 'signatures', lines: ['Seen by, date', 'What was asked for'] },
    ]),
  }
}

type Source = PaperSource['estimate']

function footingItems({ job, frame }: Source): readonly string[] {
  return [
    'Services marked; the marks can still be seen',
    ...frame.footings.map(
      ({ number, depth, holeDiameter, base, baseThickness, tube }) =>
        `Hole ${number}: ${printInches(depth)} deep from the ground there, ${printInches(holeDiameter)} across; tube ${printInches(tube)}${base > 0 ? ` on a base ${printInches(base)} × ${printInches(baseThickness)}` : ''}`,
    ),
    `Bottom at or under the frost depth, ${printInches(job.site.frostDepth)}, on undisturbed ground; no water, no loose earth`,
    'Strings up, or marks from which they can be put up',
  ]
}

function framingItems({ job, frame, layout, checks }: Source): readonly string[] {
  const said = (title: string): readonly string[] =>
    checks.filter((check) => check.title === title).map(({ message }) => message)
  return [
    ...(job.site.attachment === 'ledger'
      ? [
          ...said('Ledger fasteners'),
          ...said('Places of ledger fasteners'),
          'Flashing over the ledger, lapped by the house’s barrier',
        ]
      : []),
    `Joists ${job.frame.joists.size} at ${printInches(job.frame.joists.spacing)} on centre, crowns up`,
    ...frame.connectors.map(
      ({ kind, count, size }) => `${count} ${kind}${count === 1 ? '' : 's'} (${size}), every hole filled`,
    ),
    ...frame.beams.map(
      ({ mark, plies, size, postIds }) =>
        `Beam ${mark}: ${plies}-${size} on ${postIds.length} posts, ply joints over posts only, full bearing`,
    ),
    `Frame square: ${squareWords({ layout, frame })}`,
    'Field cuts brushed with preservative; metal galvanised or stainless',
    ...said('Lateral load connection'),
  ]
}

function finalItems({ job, checks }: Source): readonly string[] {
  return [
    ...checks
      .filter(({ title }) => title === 'Guard')
      .map(({ message, remedy }) => `${message} ${remedy}`.trim()),
    'Guard: nothing passes a 4 in ball, 36 in high or more, holds a person who leans on it',
    ...(job.scope.stairs.included
      ? [
          'Stairs: risers equal within 3/8 in and no more than 7 3/4 in, treads 10 in or more, handrail from four risers',
        ]
      : []),
    'Decking fastened at every joist; no nail or screw stands proud',
    'Ground slopes away from the house and the piers; the site is clear',
  ]
}
