import type { Check } from '../checks/index.ts'

/** What the checks of a title find, each finding once. */
export function said(checks: readonly Check[], title: string): readonly string[] {
  return [...new Set(checks.filter((check) => check.title === title).map(({ message }) => message))]
}
