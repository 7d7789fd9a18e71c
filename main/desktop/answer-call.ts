import type { Reply } from '../../shared/contract/index.ts'
import { ServiceError, type Services } from '../app/service-types.ts'
import type { Log } from '../log/index.ts'
import { isOwnPage } from './address.ts'

/** The part of Electron's event that says who asks. */
export interface Caller {
  readonly senderFrame: { readonly url: string; readonly parent: unknown } | null
}

/** Whether the window's own page asks, and not a frame inside it or a page that is not ours. */
export function isOwnCaller({ senderFrame }: Caller): boolean {
  return senderFrame !== null && !senderFrame.parent && isOwnPage(senderFrame.url)
}

/** Answers one call of the window; a frame inside the page, or a page that is not ours, is refused. */
export async function answerCall(
  caller: Caller,
  method: unknown,
  input: unknown,
  services: Services,
  log: Log,
): Promise<Reply> {
  if (!isOwnCaller(caller))
    return { ok: false, code: 'bad-input', message: 'Only the program’s own window is answered.' }
  if (typeof method !== 'string') return { ok: false, code: 'bad-input', message: 'A call names its method.' }
  try {
    return { ok: true, result: await services.call(method, input ?? {}) }
  } catch (fault) {
    if (fault instanceof ServiceError) return { ok: false, code: fault.code, message: fault.message }
    log.error('method failed', { method, fault })
    return {
      ok: false,
      code: 'internal',
      message:
        'The program failed on its own account; the log in its store folder has the details. Your job is unchanged.',
    }
  }
}
