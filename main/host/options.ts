import { parseArgs } from 'node:util'
import { fail, ok, type Result } from '../../core/units/index.ts'

export interface HostFlags {
  /** 0: the system chooses one */
  readonly port: number
  /** null: where the operating system keeps program data */
  readonly store: string | null
}

/** Reads the host's flags; anything else is a sentence that says what is accepted. */
export function parseHostFlags(args: readonly string[]): Result<HostFlags, string> {
  let values: { port?: string; store?: string }
  try {
    values = parseArgs({
      args: [...args],
      options: { port: { type: 'string' }, store: { type: 'string' } },
      strict: true,
    }).values
  } catch (fault) {
    return fail(`${(fault as Error).message}. The host takes --port NUMBER and --store FOLDER.`)
  }
  const port = values.port ?? '0'
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535)
    return fail(`--port takes a number from 0 to 65535, not "${port}".`)
  if (values.store === '') return fail('--store takes a folder, and was given nothing.')
  return ok({ port: Number(port), store: values.store ?? null })
}
