import { common, without } from '../geometry/index.ts'
import { type Fault, type Job, type StatedZone, zoneList } from '../job/index.ts'
import { printLength } from '../units/index.ts'
import type { Level, Point } from './types.ts'
import { boxOf, isLarge } from './zones.ts'

/** The stated part that a whole further level lies in: it says how that level's joists run. */
export function zoneOver(job: Job, { outline }: Pick<Level, 'outline'>): StatedZone | null {
  return zoneList(job.shape.zones).find((zone) => coverOf(zone, outline) === 'all') ?? null
}

/** Stated parts that lie beside the deck, and those that would frame some of a further level another way. */
export function zoneFaults(job: Job, levels: readonly Level[]): readonly Fault[] {
  return zoneList(job.shape.zones).flatMap((zone, i): readonly Fault[] => {
    const name = `part ${i + 1}, ${printLength(zone.width)} by ${printLength(zone.depth)},`
    const at = (message: string, fix: string): Fault => ({ path: 'shape.zones', message, fix })
    // where it reaches in by less than a part needs, what is there stays as it is
    if (levels.every(({ outline }) => common([outline], [boxOf(zone)]).length === 0))
      return [
        at(
          `${name} lies beside the deck`,
          'measure its x from the deck’s left end and its y from the wall, or leave it out',
        ),
      ]
    return levels
      .filter(({ number, outline }) => number > 1 && coverOf(zone, outline) === 'some')
      .map(({ number }) =>
        at(
          `${name} covers only some of level ${number}, whose joists all run one way`,
          `let it cover all of level ${number}, or none of it`,
        ),
      )
  })
}

function coverOf(zone: StatedZone, outline: readonly Point[]): 'all' | 'some' | 'none' {
  const box = boxOf(zone)
  if (!common([outline], [box]).some(isLarge)) return 'none'
  return without([outline], [box]).some(isLarge) ? 'some' : 'all'
}
