export interface Outcome {
  readonly passed: number
  readonly failed: number
  readonly skipped: number
  /** what a person needs to mend it; empty where all is well */
  readonly report: string
}

/** One check of the gate. */
export interface Step {
  /** the word that `npm test -- --only` takes */
  readonly name: string
  readonly title: string
  run(): Promise<Outcome> | Outcome
}

/** A check that has one answer: no report means that it passed. */
export function verdict(report: string): Outcome {
  return report === ''
    ? { passed: 1, failed: 0, skipped: 0, report }
    : { passed: 0, failed: 1, skipped: 0, report }
}

export function together(outcomes: readonly Outcome[]): Outcome {
  const sum = (of: (outcome: Outcome) => number) => outcomes.reduce((total, one) => total + of(one), 0)
  return {
    passed: sum((one) => one.passed),
    failed: sum((one) => one.failed),
    skipped: sum((one) => one.skipped),
    report: outcomes
      .map((one) => one.report)
      .filter((text) => text !== '')
      .join('\n'),
  }
}
