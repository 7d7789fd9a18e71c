import type { IncomingMessage, ServerResponse } from 'node:http'
import type { Emit } from '../app/service-types.ts'

export interface EventStream {
  readonly emit: Emit
  /** keeps the answer open and sends it every event from now on */
  join(request: IncomingMessage, response: ServerResponse): void
  close(): void
}

const heartbeat = 15_000
/** A window that has stopped reading is dropped rather than let its unread events pile up; it joins again by itself. */
const mostUnread = 8_000_000

/** Server-sent events to every open window. */
export function createEventStream(): EventStream {
  const listeners = new Set<ServerResponse>()
  const send = (text: string) => {
    for (const listener of listeners) {
      if (listener.writableLength > mostUnread) listener.destroy()
      else listener.write(text)
    }
  }
  const timer = setInterval(() => send(': still here\n\n'), heartbeat)
  timer.unref()
  return {
    emit: (event, data) => send(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`),
    join(request, response) {
      response.writeHead(200, { 'content-type': 'text/event-stream' })
      response.write(': joined\n\n')
      listeners.add(response)
      request.on('close', () => listeners.delete(response))
      response.on('close', () => listeners.delete(response))
    },
    close() {
      clearInterval(timer)
      for (const listener of listeners) listener.end()
      listeners.clear()
    },
  }
}
