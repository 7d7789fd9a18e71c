import type { Client } from '../../shared/contract/index.ts'
import { CallError } from './call-error.ts'

interface Answer {
  readonly result?: unknown
  readonly error?: {
    readonly code: string | number
    readonly message: string
    readonly data?: { readonly code?: string }
  }
}

const NO_ANSWER = 'The program behind this page gives no answer. If it was closed, start it again and reload.'

/** Browsers keep requests of at most 64 kB alive. */
const KEPT_ALIVE = 60_000

/** The contract over the loopback host: calls by JSON-RPC, events by an event stream. */
export function httpClient(): Client {
  let id = 0
  let stream: EventSource | null = null

  async function call(method: string, params: unknown): Promise<unknown> {
    id += 1
    const body = JSON.stringify({ jsonrpc: '2.0', id, method, params })
    let response: Response
    try {
      response = await fetch('/rpc', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body,
        // a save under way is finished though the page goes
        keepalive: body.length < KEPT_ALIVE,
      })
    } catch {
      throw new CallError('unreachable', NO_ANSWER)
    }
    const text = await response.text()
    let answer: Answer
    try {
      answer = JSON.parse(text) as Answer
    } catch {
      throw new CallError(response.status === 401 ? 'signed out' : 'refused', text.slice(0, 300) || NO_ANSWER)
    }
    if (answer.error)
      throw new CallError(String(answer.error.data?.code ?? answer.error.code), answer.error.message)
    return answer.result
  }

  return {
    call: call as Client['call'],
    on(event, listener) {
      stream ??= new EventSource('/events')
      const source = stream
      const handle = (message: MessageEvent<string>) => listener(JSON.parse(message.data))
      source.addEventListener(event, handle)
      return () => source.removeEventListener(event, handle)
    },
  }
}
