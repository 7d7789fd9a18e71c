import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ServiceError, type Services } from '../../../main/app/service-types.ts'
import { createEventStream, type EventStream } from '../../../main/host/event-stream.ts'
import { openHost } from '../../../main/host/server.ts'
import type { Log } from '../../../main/log/index.ts'

export interface Answer {
  readonly status: number
  readonly headers: Readonly<Record<string, string | string[] | undefined>>
  readonly text: string
}

export interface Door {
  readonly port: number
  readonly link: string
  readonly cookie: string
  readonly events: EventStream
  /** what the host wrote to its log */
  readonly logged: { event: string; details: object }[]
  /** methods that reached the services */
  readonly reached: string[]
  /** a request exactly as given: no header is added */
  send(
    path: string,
    options?: { method?: string; headers?: Record<string, string>; body?: string },
  ): Promise<Answer>
  /** a call as the window makes it */
  call(method: string, params?: unknown): Promise<Answer>
  /** bytes straight onto the socket; resolves with all that comes back */
  raw(text: string): Promise<string>
  close(): Promise<void>
}

/** A host over services that only note what reached them, in front of a small window folder. */
export async function openDoor(): Promise<Door> {
  const outside = mkdtempSync(join(tmpdir(), 'kerfwright-host-'))
  const windowFolder = join(outside, 'window')
  mkdirSync(join(windowFolder, 'assets'), { recursive: true })
  writeFileSync(join(outside, 'secret.txt'), 'not for the window')
  writeFileSync(join(outside, 'window-secret.txt'), 'not for the window')
  writeFileSync(join(windowFolder, 'index.html'), '<!doctype html><title>window</title>')
  writeFileSync(join(windowFolder, 'assets/a.js'), 'export {}')
  writeFileSync(join(windowFolder, 'assets/a.map'), '{}')

  const reached: string[] = []
  const logged: { event: string; details: object }[] = []
  const log: Log = {
    info: (event, details = {}) => logged.push({ event, details }),
    error: (event, details = {}) => logged.push({ event, details }),
  }
  const services: Services = {
    async call(method, input) {
      reached.push(method)
      if (method === 'echo') return input
      if (method === 'conflict') throw new ServiceError('conflict', 'Changed elsewhere.')
      if (method === 'crash') throw new Error('secret detail of the program')
      throw new ServiceError('unknown-method', `There is no method "${method}".`)
    },
    async close() {},
  }
  const events = createEventStream()
  const host = await openHost({ port: 0, windowFolder, services, events, log })
  const port = Number(new URL(host.link).port)
  const origin = `http://127.0.0.1:${port}`

  const send: Door['send'] = (path, { method = 'GET', headers = {}, body } = {}) =>
    new Promise((done, failed) => {
      const sent = request({ host: '127.0.0.1', port, path, method, headers, agent: false }, (response) => {
        let text = ''
        response.setEncoding('utf8')
        response.on('data', (part) => {
          text += part
        })
        response.on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, text }))
      })
      sent.on('error', failed)
      sent.end(body)
    })
  const entry = await send(new URL(host.link).pathname + new URL(host.link).search)
  const cookie = String(entry.headers['set-cookie']).split(';', 1)[0] ?? ''

  return {
    port,
    link: host.link,
    cookie,
    events,
    logged,
    reached,
    send,
    call: (method, params) =>
      send('/rpc', {
        method: 'POST',
        headers: { cookie, origin, 'content-type': 'application/json' },
        body: JSON.stringify({ jsonrpc: '2.0', id: 1, method, params }),
      }),
    raw: (text) =>
      new Promise((done) => {
        const socket = connect(port, '127.0.0.1')
        let answer = ''
        socket.on('data', (part) => {
          answer += part
        })
        socket.on('error', () => done(answer))
        socket.on('close', () => done(answer))
        socket.end(text)
      }),
    close: () => host.close(),
  }
}
