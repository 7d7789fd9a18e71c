/**
 * Who told a fact of the site, to stand behind its figure: "told by the county’s page". Where nobody is named the
 * figure wants to be confirmed, and that is said.
 */
export function toldBy(source: string): string {
  return source.trim() === ''
    ? 'nobody named as its source: confirm it with the building department'
    : `told by ${source}`
}
