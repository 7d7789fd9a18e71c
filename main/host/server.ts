import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Services } from '../app/service-types.ts'
import { readWindowFile, windowHeaders } from '../app/window-files.ts'
import type { Log } from '../log/index.ts'
import { type Access, createAccess } from './access.ts'
import { largestBody, readBody } from './body.ts'
import type { EventStream } from './event-stream.ts'
import { answerRpc } from './rpc.ts'

export interface HostOptions {
  /** 0 lets the system choose */
  readonly port: number
  /** folder of the built window */
  readonly windowFolder: string
  readonly services: Services
  readonly events: EventStream
  readonly log: Log
}

export interface Host {
  /** the link that opens the program, token included */
  readonly link: string
  close(): Promise<void>
}

/** Opens the loopback door. Rejects where the port is taken. */
export async function openHost(options: HostOptions): Promise<Host> {
  const server = createServer({ requestTimeout: 30_000 })
  await listen(server, options.port)
  const { port } = server.address() as AddressInfo
  const access = createAccess(port)
  server.on('request', (request, response) => {
    answer(request, response, access, options).catch((fault) => {
      options.log.error('request failed', { fault })
      if (response.headersSent) response.destroy()
      else say(response, 500, 'The program failed to answer; its log has the details.')
    })
  })
  return {
    link: `http://127.0.0.1:${port}/?t=${access.token}`,
    close: () =>
      new Promise((done) => {
        options.events.close()
        server.close(() => done())
        server.closeAllConnections()
      }),
  }
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((done, failed) => {
    server.once('error', failed)
    server.listen(port, '127.0.0.1', () => {
      server.off('error', failed)
      done()
    })
  })
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  access: Access,
  options: HostOptions,
): Promise<void> {
  for (const [name, value] of Object.entries(windowHeaders)) response.setHeader(name, value)
  const refusal = access.refuse(request)
  if (refusal) return say(response, refusal.status, refusal.sentence)
  const path = (request.url ?? '/').split('?', 1)[0] ?? '/'
  if (path === '/rpc') return answerCall(request, response, options)
  if (request.method !== 'GET' && request.method !== 'HEAD')
    return say(response, 405, 'Pages are only read here.')
  if (path === '/events') return options.events.join(request, response)
  const token = request.url?.startsWith('/?t=') ? request.url.slice('/?t='.length) : null
  if (token !== null) return enter(response, access, token)
  const file = await readWindowFile(options.windowFolder, path)
  if (!file) return say(response, 404, 'There is nothing at this address.')
  response.writeHead(200, { 'content-type': file.type, 'content-length': file.body.length })
  response.end(request.method === 'HEAD' ? undefined : file.body)
}

function enter(response: ServerResponse, access: Access, token: string): void {
  if (access.tokenMatches(token)) {
    response.writeHead(303, { location: '/', 'set-cookie': access.setCookie })
    response.end()
  } else {
    say(response, 401, 'This link is from an earlier start of the program. Use the one it printed now.')
  }
}

async function answerCall(
  request: IncomingMessage,
  response: ServerResponse,
  options: HostOptions,
): Promise<void> {
  const type = (request.headers['content-type'] ?? '').split(';', 1)[0]?.trim()
  if (request.method !== 'POST' || type !== 'application/json' || request.headers.origin === undefined)
    return say(response, 405, 'Calls are POST requests of application/json from this host’s own pages.')
  const text = await readBody(request)
  if (text === null) {
    response.setHeader('connection', 'close')
    return say(response, 413, `A request may hold at most ${largestBody / 1_000_000} MB.`)
  }
  const body = JSON.stringify(await answerRpc(text, options.services, options.log))
  response.writeHead(200, { 'content-type': 'application/json; charset=utf-8' })
  response.end(body)
}

function say(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' })
  response.end(`${sentence}\n`)
}
