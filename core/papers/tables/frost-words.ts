import { type Job, toldBy } from '../../job/index.ts'
import { printInches } from '../../units/index.ts'

/** The frost depth that the footings reach, and who told it. */
export function frostWords({ site: { frostDepth, frostStated, frostSource } }: Job): string {
  const depth = printInches(frostDepth)
  return frostStated
    ? `Frost depth ${depth}, ${toldBy(frostSource)}`
    : `Frost depth not known: taken as ${depth}, as in a very cold place; ask the building department`
}
