import type { FieldSpec, ScopeTopic } from '../types.ts'

/** What each topic means, and whether the program counts it from the takeoff by itself. */
const TOPICS: readonly {
  readonly topic: ScopeTopic
  readonly label: string
  readonly counted: boolean
  readonly what: string
}[] = [
  {
    topic: 'stairs',
    label: 'Stairs',
    counted: false,
    what: 'steps from the deck to the ground, with their rail',
  },
  {
    topic: 'guard',
    label: 'Guard',
    counted: false,
    what: 'the railing around the open sides; the checks say whether the code asks for one',
  },
  {
    topic: 'taking away',
    label: 'Taking away',
    counted: false,
    what: 'pulling down an old deck, slab or steps',
  },
  { topic: 'hauling', label: 'Hauling', counted: false, what: 'a container, or trips to the dump' },
  { topic: 'delivery', label: 'Delivery', counted: false, what: 'bringing the order to the site' },
  { topic: 'permit', label: 'Permit', counted: false, what: 'the building permit and its inspections' },
  {
    topic: 'marking',
    label: 'Marking of services',
    counted: false,
    what: 'having buried pipes and cables marked before anything is dug; a sum stated for it stands instead of the hours that its own field counts',
  },
  {
    topic: 'flashing',
    label: 'Flashing',
    counted: true,
    what: 'the metal or tape that keeps water out behind the ledger',
  },
  { topic: 'fasteners', label: 'Fasteners', counted: true, what: 'nails, screws, bolts and connectors' },
  {
    topic: 'hire',
    label: 'Hire',
    counted: false,
    what: 'tools and machines hired; a sum stated for them stands instead of the days of hire that the ground’s fields ask for',
  },
  { topic: 'clean-up', label: 'Clean-up', counted: false, what: 'leaving the place as it was found' },
]

export const SCOPE_FIELDS: readonly FieldSpec[] = TOPICS.flatMap(
  ({ topic, label, counted, what }): FieldSpec[] => [
    {
      path: `scope.${topic}.included`,
      label: `${label}: included`,
      section: 'scope',
      kind: 'flag',
      default: counted,
      help: `Whether the price holds this: ${what}. ${
        counted
          ? 'It is counted from the frame.'
          : 'Where it is not included the papers say so. A sum stated for it includes it.'
      }`,
      basis: counted ? 'counted by the program' : 'not included, until you say so',
    },
    {
      path: `scope.${topic}.allowance`,
      label: `${label}: sum`,
      section: 'scope',
      kind: 'money',
      min: 0,
      max: 100_000_000,
      boundsReason: 'a larger sum is a job of its own',
      default: '$0',
      help: counted
        ? 'A sum on top of what the program counts.'
        : 'The sum set down for it, as a cost to you before overhead and margin. It counts only where it is included.',
      basis: 'none, until you state it',
    },
  ],
)
