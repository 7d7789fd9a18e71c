import type { Bridge, Client } from '../../shared/contract/index.ts'
import { CallError } from './call-error.ts'

/** The contract over the desktop's bridge, where failures arrive as plain data. */
export function desktopClient(bridge: Pick<Bridge, 'call' | 'on'>): Client {
  async function call(method: string, input: unknown): Promise<unknown> {
    const reply = await bridge.call(method, input)
    if (!reply.ok) throw new CallError(reply.code, reply.message)
    return reply.result
  }
  return {
    call: call as Client['call'],
    on: (event, listener) => bridge.on(event, listener as (data: unknown) => void),
  }
}
