import { cite, densitySource, dressedSizesSource, poundsPerFoot } from '../data/index.ts'
import type { Member } from '../frame/index.ts'
import { toFeet } from '../units/index.ts'
import type { LumberWeight } from './types.ts'

/** Weight of the lumber by its species and dressed section: for the truck, and for who has to lift it. */
export function lumberWeight(members: readonly Member[]): LumberWeight {
  const pounds = (state: 'seasoned' | 'freshlyTreated') =>
    Math.ceil(
      members.reduce(
        (sum, { length, product }) =>
          sum + toFeet(length) * poundsPerFoot(product.size, product.species, state),
        0,
      ),
    )
  return {
    seasoned: pounds('seasoned'),
    freshlyTreated: pounds('freshlyTreated'),
    cause: {
      fields: ['frame.species'],
      ids: [],
      rule: `Density (${cite(densitySource)}) × dressed section (${cite(dressedSizesSource)}), at 19 and 60 % moisture`,
    },
  }
}
