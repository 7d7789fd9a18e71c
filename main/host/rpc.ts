import { ServiceError, type ServiceErrorCode, type Services } from '../app/service-types.ts'
import type { Log } from '../log/index.ts'

type Id = string | number | null

export interface RpcAnswer {
  readonly jsonrpc: '2.0'
  readonly id: Id
  readonly result?: unknown
  readonly error?: {
    readonly code: number
    readonly message: string
    readonly data: { readonly code: ServiceErrorCode }
  }
}

/** JSON-RPC's own numbers; the program's code, which callers should read, is in `data.code`. */
const numbers: Readonly<Record<ServiceErrorCode, number>> = {
  'unknown-method': -32601,
  'bad-input': -32602,
  internal: -32603,
  'not-found': -32001,
  conflict: -32002,
  'store-unusable': -32003,
  stopped: -32004,
}

/** Answers one JSON-RPC 2.0 request. Every failure is an answer with a code and a sentence; a stack goes to the log only. */
export async function answerRpc(text: string, services: Services, log: Log): Promise<RpcAnswer> {
  let message: unknown
  try {
    message = JSON.parse(text)
  } catch {
    return failure(null, -32700, 'bad-input', 'The request is not JSON.')
  }
  if (!isRequest(message))
    return failure(
      null,
      -32600,
      'bad-input',
      'The request must be one JSON-RPC 2.0 object with method and id.',
    )
  const { id, method, params } = message
  try {
    const result = await services.call(method, params ?? {})
    return { jsonrpc: '2.0', id, result: result ?? null }
  } catch (fault) {
    if (fault instanceof ServiceError) return failure(id, numbers[fault.code], fault.code, fault.message)
    log.error('method failed', { method, fault })
    return failure(
      id,
      numbers.internal,
      'internal',
      'The program failed on its own account; the log in its store folder has the details. Your job is unchanged.',
    )
  }
}

function failure(id: Id, number: number, code: ServiceErrorCode, message: string): RpcAnswer {
  return { jsonrpc: '2.0', id, error: { code: number, message, data: { code } } }
}

function isRequest(value: unknown): value is { id: string | number; method: string; params?: unknown } {
  if (typeof value !== 'object' || value === null) return false
  const { jsonrpc, id, method } = value as Record<string, unknown>
  return jsonrpc === '2.0' && (typeof id === 'string' || typeof id === 'number') && typeof method === 'string'
}
