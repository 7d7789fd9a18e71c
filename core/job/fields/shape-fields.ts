import type { FieldSpec } from '../types.ts'

const COMMON = 'common practice, no source'
const RECTANGLE = 'a rectangle of the stated width and depth'

/** What makes a deck other than a rectangle. Left as they are, the deck is one. */
export const SHAPE_FIELDS: readonly FieldSpec[] = [
  {
    path: 'shape.outline',
    label: 'Outline',
    section: 'shape',
    kind: 'text',
    lists: 'corners',
    max: 2000,
    default: '',
    help: "Corners of the frame's outside in order, each as x, y with semicolons between: 0, 0; 24', 0; 24', 8'; 14', 8'; 14', 14'; 0, 14'. x is measured along the wall from the left end, y away from the wall. The outline closes itself; its extent is then the deck's width and depth. Empty for a rectangle.",
    basis: RECTANGLE,
  },
  {
    path: 'shape.walls',
    label: 'Edges on a wall',
    section: 'shape',
    kind: 'text',
    lists: 'edges',
    max: 200,
    default: '',
    help: 'Numbers of the edges that stand against the house, such as 1, 6; edge 1 runs from the first corner to the second. Where joists end there a ledger carries them. Empty for the edges at the back, y = 0.',
    basis: 'the edges at the back',
  },
  {
    path: 'shape.joists',
    label: 'Joists run',
    section: 'shape',
    kind: 'choice',
    choices: ['away', 'along'],
    choiceLabels: ['away from the house', 'along the house'],
    default: 'away',
    help: 'The way the joists run; the decking lies across them.',
    basis: COMMON,
  },
  {
    path: 'shape.zones',
    label: 'Parts framed another way',
    section: 'shape',
    kind: 'text',
    lists: 'zones',
    max: 1000,
    default: '',
    help: "Rectangles whose joists run another way, each as x, y, width, depth: along (or: away), with semicolons between, such as 24', 0, 8', 20': along. Where they meet the rest, a beam carries the joists that end there.",
    basis: 'the whole deck is framed one way',
  },
  {
    path: 'shape.openings',
    label: 'Openings',
    section: 'shape',
    kind: 'text',
    lists: 'rectangles',
    max: 1000,
    default: '',
    help: "Holes in the frame for a chimney or a tree, each as x, y, width, depth with semicolons between, such as 8', 3', 4', 3' 6\". Joists end at headers that hang between doubled trimmers.",
    basis: 'none',
  },
]
