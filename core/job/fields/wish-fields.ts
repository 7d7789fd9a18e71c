import type { FieldSpec } from '../types.ts'

const WISH = 'none, until you wish it'

/** What its user wishes of the order and the cuts; each wish that costs something says what. */
export const WISH_FIELDS: readonly FieldSpec[] = [
  {
    path: 'cutting.objective',
    label: 'Cut for',
    section: 'cutting',
    kind: 'choice',
    choices: ['least cost', 'fewest joints', 'least waste', 'fewest lengths'],
    default: 'least cost',
    help: 'What the boards are chosen for. Fewest joints, least waste and fewest different lengths may cost more; how much is said.',
    basis: 'the order that costs least',
  },
  {
    path: 'cutting.objectiveThen',
    label: 'Among equals',
    section: 'cutting',
    kind: 'choice',
    choices: ['least cost', 'fewest joints', 'least waste', 'fewest lengths'],
    default: 'least cost',
    help: 'Decides between orders that are equal in the first. Money decides in the end.',
    basis: 'the cheaper of two equals',
  },
  {
    path: 'cutting.onePiece',
    label: 'Held in one piece',
    section: 'cutting',
    kind: 'text',
    lists: 'runs',
    max: 1000,
    boundsReason: 'a deck has few runs',
    default: '',
    help: 'Runs that may not be jointed, by the names they have under Boards: "Ledger; Beam B1".',
    basis: WISH,
  },
  {
    path: 'cutting.doWithout',
    label: 'Lengths to do without',
    section: 'cutting',
    kind: 'text',
    lists: 'stock lengths',
    max: 1000,
    boundsReason: 'a yard has few lengths',
    default: '',
    help: 'Stock lengths that are not bought, by the size of the boards, in feet: "2x10: 14, 18; 5/4x6: 12".',
    basis: WISH,
  },
  {
    path: 'cutting.atMost',
    label: 'At most of a length',
    section: 'cutting',
    kind: 'text',
    lists: 'stock counts',
    max: 1000,
    boundsReason: 'a yard has few lengths',
    default: '',
    help: 'No more than so many boards of a length are bought, spares among them: "2x10: 3 of 16, 2 of 18".',
    basis: WISH,
  },
]
