import { fail, ok, type Result } from '../units/index.ts'
import type { JsonObject } from './json-shape.ts'
import type { Fault } from './types.ts'

/** The version of the job's statement that this program writes and reads without upgrade. */
export const JOB_VERSION = 1

/** Brings a statement of one version to the next. A number once used stays used. */
export interface Upgrade {
  readonly from: number
  readonly update: (statement: JsonObject) => JsonObject
}

/** Upgrades in order, one per version before the current one. Version 1 is the first, so there is none yet. */
export const UPGRADES: readonly Upgrade[] = []

/**
 * Brings a statement to the current version; a statement without a version is taken as current.
 * A newer one is refused and left as it is, since its fields may mean what this program does not know.
 */
export function upgradeStatement(
  statement: JsonObject,
  upgrades: readonly Upgrade[] = UPGRADES,
  current: number = JOB_VERSION,
): Result<JsonObject, Fault> {
  const version = Object.hasOwn(statement, 'version') ? statement.version : current
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    return fail({
      path: 'version',
      message: 'the version is not a whole number from 1',
      fix: `write "version": ${current}, or leave it out`,
    })
  }
  if (version > current) {
    return fail({
      path: 'version',
      message: `this job was written by a newer program (version ${version}; this one reads up to ${current})`,
      fix: 'open it with the newer program; it was left as it is',
    })
  }
  let upgraded = statement
  for (let at = version; at < current; at += 1) {
    const step = upgrades.find((upgrade) => upgrade.from === at)
    if (step === undefined) throw new Error(`no upgrade leads from version ${at} of the job`)
    upgraded = { ...step.update(upgraded), version: at + 1 }
  }
  return ok(upgraded)
}
