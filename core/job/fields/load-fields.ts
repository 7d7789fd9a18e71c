import type { FieldSpec } from '../types.ts'

const LOCAL = 'to be confirmed locally: the building department knows it'
const EMPTY = 'empty until you write it'

/** What stands and blows on the deck, and who said what of the place. */
export const LOAD_FIELDS: readonly FieldSpec[] = [
  {
    path: 'site.onDeck',
    label: 'Heavy things on the deck',
    section: 'site',
    kind: 'choice',
    choices: ['none', 'hot tub', 'roof', 'planters', 'several', 'unknown'],
    choiceLabels: [
      'none: people and furniture',
      'a hot tub',
      'a roof or a screened room',
      'planters of earth',
      'several of these',
      'not known yet',
    ],
    default: 'none',
    help: 'A hot tub, a roof or planters weigh many times what the deck tables of the code reckon with: a licensed designer must size what carries them. Not known is treated as if there were one.',
    basis: 'people and furniture alone: what the code’s deck tables are made for (IRC 2021, R507.1)',
  },
  {
    path: 'site.concentratedLoad',
    label: 'Concentrated load, lb',
    section: 'site',
    kind: 'count',
    min: 0,
    max: 3000,
    boundsReason: 'more than that at one place is for a licensed designer',
    default: 0,
    help: 'The heaviest single thing on a small foot, in pounds, such as a grill or a stove of stone. It is put where it is worst on one joist; nothing in the code’s tables covers it. 0 for none.',
    basis: 'none, until you state it',
  },
  {
    path: 'site.snowSource',
    label: 'Snow load told by',
    section: 'site',
    kind: 'text',
    max: 200,
    default: '',
    help: 'Who told you the ground snow load and when. Without it the sheets say that the load is not confirmed.',
    basis: EMPTY,
  },
  {
    path: 'site.soilSource',
    label: 'Soil told by',
    section: 'site',
    kind: 'text',
    max: 200,
    default: '',
    help: 'Who told you the soil and what it carries: a soil report, the building department, a hole you dug.',
    basis: EMPTY,
  },
  {
    path: 'site.windExposure',
    label: 'Wind exposure',
    section: 'site',
    kind: 'choice',
    choices: ['unknown', 'B', 'C', 'D'],
    choiceLabels: [
      'not known: taken as D',
      'B: town, suburb or wood',
      'C: open ground',
      'D: beside open water or flats',
    ],
    default: 'unknown',
    help: 'How open the place is to wind, as IRC 2021 R301.2.1.4 tells them apart. Not known is treated as D, the most open.',
    basis: `the safe side; ${LOCAL}`,
  },
  {
    path: 'site.windSource',
    label: 'Wind exposure told by',
    section: 'site',
    kind: 'text',
    max: 200,
    default: '',
    help: 'Who told you the exposure and when.',
    basis: EMPTY,
  },
]
