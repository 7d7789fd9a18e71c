import { feet } from '../../units/index.ts'
import type { FieldSpec } from '../types.ts'
import { GROUND_LEVEL_FIELDS } from './ground-level-fields.ts'
import { LOAD_FIELDS } from './load-fields.ts'

/** Ground snow, psf, of a place of which nobody has said: the last page of IRC 2021 Tables R507.3.1 to R507.6. */
const MOST_TABLED_SNOW = 70

/** Frost depth of a place of which nobody has said: about the deepest that building departments of the 48 states ask. */
const DEEP_FROST = '60 in'

const LOCAL = 'to be confirmed locally: the building department knows it'

export const SITE_FIELDS: readonly FieldSpec[] = [
  {
    path: 'site.attachment',
    label: 'Held by the house',
    section: 'site',
    kind: 'choice',
    choices: ['ledger', 'freestanding'],
    choiceLabels: ['by a ledger on its band joist', 'not at all: freestanding'],
    default: 'ledger',
    help: 'A ledger carries one side of the deck on the house. A freestanding deck has a second beam near the house and carries itself. Brick veneer, stone and most cantilevered bays must not carry a ledger.',
    basis: 'common practice, no source',
  },
  ...GROUND_LEVEL_FIELDS,
  {
    path: 'site.frostDepth',
    label: 'Frost depth',
    section: 'site',
    kind: 'length',
    min: 0,
    max: feet(10),
    boundsReason: 'deeper frost is ground for a local engineer',
    default: DEEP_FROST,
    help: 'How deep the ground freezes; 0 where it does not. Footings go at least this deep, and never less than 12 in. Until you state it they are dug as deep as in a very cold place.',
    basis: `not known: as deep as in northern Minnesota (from memory, no source); ${LOCAL} (IRC 2021, R301.2 leaves frost depth to it; clause from memory)`,
  },
  {
    path: 'site.frostSource',
    label: 'Frost depth told by',
    section: 'site',
    kind: 'text',
    max: 200,
    default: '',
    help: 'Who told you the frost depth and when, such as the building department’s page. It stands beside the number on the sheets.',
    basis: 'empty until you write it',
  },
  {
    path: 'site.soil',
    label: 'Soil',
    section: 'site',
    kind: 'choice',
    choices: ['unknown', 'clay or silt', 'sand', 'sandy gravel or gravel', 'rock'],
    default: 'unknown',
    help: 'Clay and silt hold water and lift rough-sided piers when they freeze; sand drains. Unknown is treated as the poor case.',
    basis: 'the safe side',
  },
  {
    path: 'site.soilBearing',
    label: 'Soil bearing',
    section: 'site',
    kind: 'psf',
    min: 500,
    max: 12_000,
    boundsReason:
      'below 500 psf an engineer must look; 12,000 psf is sound bedrock (IRC 2021, Table R401.4.1)',
    default: 1500,
    help: 'What the ground under a footing carries, in pounds per square foot. More than 1,500 wants a reason: gravel seen in the hole, or a soil report.',
    basis: `IRC 2021, Table R401.4.1: the least of its soils; ${LOCAL}`,
  },
  {
    path: 'site.snowLoad',
    label: 'Ground snow load',
    section: 'site',
    kind: 'psf',
    min: 0,
    max: 200,
    boundsReason: 'more snow than that needs an engineer',
    default: MOST_TABLED_SNOW,
    help: 'Local ground snow load in pounds per square foot; 0 where no snow lies. Where it is above the live load it decides. Until you state it the deck is reckoned for the most snow that the deck tables cover.',
    basis: `not known: the most that the deck tables of IRC 2021, R507 cover; ${LOCAL}`,
  },
  {
    path: 'site.liveLoad',
    label: 'Live load',
    section: 'site',
    kind: 'psf',
    min: 40,
    max: 200,
    boundsReason: 'a deck must carry at least 40 psf (IRC 2021, Table R301.5)',
    default: 40,
    help: 'People and furniture, in pounds per square foot. Some towns ask 60. A hot tub is far more: it needs an engineer.',
    basis: 'IRC 2021, Table R301.5',
  },
  {
    path: 'site.deadLoad',
    label: 'Dead load',
    section: 'site',
    kind: 'psf',
    min: 10,
    max: 100,
    boundsReason: 'the deck tables of the code reckon with 10 psf, and no frame of this kind is lighter',
    default: 10,
    help: 'The weight of the deck itself, in pounds per square foot.',
    basis: 'IRC 2021, R507: the dead load of its tables',
  },
  ...LOAD_FIELDS,
  {
    path: 'site.band',
    label: 'What the ledger hangs on',
    section: 'site',
    kind: 'choice',
    choices: ['sound', 'masonry veneer', 'cantilevered bay', 'I-joists or trusses', 'unknown'],
    choiceLabels: [
      'a sound band joist of wood',
      'brick or stone veneer',
      'a bay that is cantilevered',
      'I-joists or trusses without a solid band',
      'not known yet',
    ],
    default: 'sound',
    help: 'Look behind the siding: only a sound band joist of wood, carried all along by wall or sill, holds a ledger. Elsewhere the deck stands free.',
    basis:
      'the one case that the ledger table is made for (IRC 2021, R507.9.1.1): confirm it before you rely on it',
  },
  {
    path: 'site.ledgerFastener',
    label: 'Ledger fastener',
    section: 'site',
    kind: 'choice',
    choices: ['lag', 'bolt'],
    choiceLabels: ['1/2 in lag screws', '1/2 in bolts through the band'],
    default: 'lag',
    help: 'What holds the ledger to the band joist. Nails alone never do.',
    basis: 'common practice, no source; both stand in IRC 2021, Table R507.9.1.3(1)',
  },
  {
    path: 'site.sheathing',
    label: 'Sheathing behind the ledger',
    section: 'site',
    kind: 'choice',
    choices: ['up to 1/2 in', 'up to 1 in'],
    default: 'up to 1/2 in',
    help: 'How thick the boards are between ledger and band joist, stacked washers included. Measure it: thicker asks for more fasteners.',
    basis: 'common practice, no source; measure yours',
  },
]

export const CODE_FIELDS: readonly FieldSpec[] = [
  {
    path: 'code.edition',
    label: 'Code',
    section: 'code',
    kind: 'choice',
    choices: ['IRC 2021'],
    default: 'IRC 2021',
    help: 'The edition whose deck tables are used. Your town may have adopted another or changed this one: ask.',
    basis: `the edition this program holds; ${LOCAL}`,
  },
  {
    path: 'code.governs',
    label: 'What decides',
    section: 'code',
    kind: 'choice',
    choices: ['prescriptive', 'calculated'],
    choiceLabels: ['the code’s tables', 'the calculation'],
    default: 'prescriptive',
    help: 'The code’s tables can be used without an engineer. A calculation needs the official’s word.',
    basis: 'the way that needs no licensed designer',
  },
]
