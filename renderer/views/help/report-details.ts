import type { Design } from '../../../core/estimate-types.ts'
import type { PricesInUse } from '../../../shared/contract/index.ts'

/** What a report of a fault needs, and no more: no name, no place, no sum, no text that a user typed. */
export function reportDetails(facts: {
  readonly version: string
  readonly door: string
  readonly browser: string
  readonly screen: string
  readonly place: string
  readonly theme: string
  readonly design: Design | null
  readonly prices: PricesInUse | null
}): string {
  const { design, prices } = facts
  const count = (status: string) => design?.checks.filter((check) => check.status === status).length ?? 0
  const lines = [
    `Kerfwright ${facts.version}, ${facts.door}`,
    facts.browser,
    `Screen ${facts.screen}, ${facts.theme}, at ${facts.place}`,
    prices === null
      ? 'Prices not read'
      : prices.importedAt === null
        ? 'Sample prices'
        : `Own prices, ${prices.age} days old`,
  ]
  if (design !== null) {
    lines.push(
      `${design.frame.members.length} members, ${design.frame.posts.length} posts, ${design.frame.footings.length} footings, ${design.stairs.length} stairs`,
      `${design.checks.length} checks: ${count('passes')} pass, ${count('near')} near, ${count('fails')} fail, ${count('calculated only')} calculated only, ${count('outside scope')} outside scope`,
    )
  }
  return lines.join('\n')
}
