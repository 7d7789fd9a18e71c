import { fail, ok, type Result } from '../units/index.ts'
import { nearestName } from './nearest-name.ts'
import type { Fault } from './types.ts'

type Wrong = Pick<Fault, 'message' | 'fix'>

/** What a run can be called by: its label on the screen, or its id. */
interface Named {
  readonly id: string
  readonly label: string
}

/** Reads names of runs as typed, `Ledger; Beam B1`, semicolons or lines between them. */
export function readRunNames(text: string): Result<readonly string[], Wrong> {
  const names = namesIn(text)
  const twice = names.find((name, i) => names.findIndex((other) => folded(other) === folded(name)) < i)
  if (twice === undefined) return ok(names)
  return fail({ message: `"${twice}" is named twice`, fix: 'name each run once' })
}

/** Which of a deck's runs are named, and the names that are those of none. */
export function namedRuns<Run extends Named>(
  text: string,
  runs: readonly Run[],
): { readonly named: readonly Run[]; readonly unknown: readonly string[] } {
  const names = namesIn(text)
  return {
    named: runs.filter((run) => names.some((name) => isCalled(run, name))),
    unknown: names.filter((name) => !runs.some((run) => isCalled(run, name))),
  }
}

/** What is wrong with a name that is no run's. */
export function noSuchRun(name: string, runs: readonly Named[]): Wrong {
  const labels = runs.map((run) => run.label)
  const nearest =
    nearestName(name, labels) ??
    nearestName(
      name,
      runs.map((run) => run.id),
    )
  const known =
    labels.length === 0 ? 'this deck has no runs' : `the runs of this deck are ${labels.join(', ')}`
  return {
    message: `no run of this deck is called "${name}"`,
    fix: nearest === null ? known : `the nearest is "${nearest}"; ${known}`,
  }
}

/** The text with a run named in it; its other names stay as they were typed. */
export function withRun(text: string, run: Named): string {
  return [...namesIn(text).filter((name) => !isCalled(run, name)), run.label].join('; ')
}

export function withoutRun(text: string, run: Named): string {
  return namesIn(text)
    .filter((name) => !isCalled(run, name))
    .join('; ')
}

function namesIn(text: string): readonly string[] {
  return text
    .split(/[;\n]/)
    .map((name) => name.replace(/\s+/g, ' ').trim())
    .filter((name) => name !== '')
}

function isCalled({ id, label }: Named, name: string): boolean {
  return folded(name) === folded(label) || folded(name) === folded(id)
}

function folded(name: string): string {
  return name.toLowerCase()
}
