import { get } from 'node:http'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Door, openDoor } from './door.ts'

let door: Door
let origin: string
let json: Record<string, string>

beforeAll(async () => {
  door = await openDoor()
  origin = `http://127.0.0.1:${door.port}`
  json = { cookie: door.cookie, origin, 'content-type': 'application/json' }
})
afterAll(() => door.close())

describe('the link', () => {
  test('trades its token for a cookie that scripts cannot read and other sites cannot send', async () => {
    const answer = await door.send(door.link.slice(origin.length))
    expect(answer.status).toBe(303)
    expect(answer.headers.location).toBe('/')
    expect(String(answer.headers['set-cookie'])).toMatch(
      new RegExp(`^kerfwright_${door.port}=[\\w-]{32}; HttpOnly; SameSite=Strict; Path=/$`),
    )
  })
  test.each(['/?t=', '/?t=wrong', `/?t=${'A'.repeat(32)}`, '/?t=%00'])(
    'with the token of %s is refused',
    async (path) => {
      const answer = await door.send(path)
      expect(answer.status).toBe(401)
      expect(answer.headers['set-cookie']).toBeUndefined()
    },
  )
  test('does not let the token stand in for the cookie', async () => {
    const token = new URL(door.link).searchParams.get('t')
    const cookie = `kerfwright_${door.port}=${token}`
    expect((await door.send('/', { headers: { cookie } })).status).toBe(401)
  })
})

describe('a request without the session', () => {
  test.each(['/', '/assets/a.js', '/events', '/nowhere', '/rpc', '/?x=1', '//?t=1'])(
    'for %s is refused',
    async (path) => {
      expect((await door.send(path)).status).toBe(401)
    },
  )
  test('is told in a sentence what to do', async () => {
    expect((await door.send('/')).text).toContain('Open the program by the link it printed')
  })
  test.each(['', 'x', 'kerfwright_PORT=', 'kerfwright_PORT=wrong', 'kerfwright_1=COOKIE'])(
    'but with the cookie "%s" is refused',
    async (text) => {
      const cookie = text
        .replace('PORT', String(door.port))
        .replace('COOKIE', door.cookie.split('=')[1] ?? '')
      expect((await door.send('/', { headers: { cookie } })).status).toBe(401)
    },
  )
})

describe('a request under another name', () => {
  test.each(['localhost', 'evil.example', '127.0.0.1', '127.0.0.1:1', '127.0.0.1.evil.example:80'])(
    'of Host "%s" is refused, cookie or not',
    async (host) => {
      expect((await door.send('/', { headers: { host, cookie: door.cookie } })).status).toBe(421)
    },
  )
  test('of no Host at all is refused', async () => {
    expect(await door.raw(`GET / HTTP/1.0\r\nCookie: ${door.cookie}\r\n\r\n`)).toMatch(/^HTTP\/1\.1 421 /)
  })
  test.each(['https://evil.example', 'null', 'http://127.0.0.1:1', 'http://localhost'])(
    'of Origin "%s" is refused, cookie or not',
    async (foreign) => {
      const headers = { ...json, origin: foreign }
      expect((await door.send('/rpc', { method: 'POST', headers, body: '{}' })).status).toBe(403)
      expect((await door.send('/', { headers })).status).toBe(403)
    },
  )
  test('from a script of another site is refused though a browser left the Origin out', async () => {
    const headers = { cookie: door.cookie, 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' }
    expect((await door.send('/assets/a.js', { headers })).status).toBe(403)
  })
})

describe('the window’s files', () => {
  test('are served with the content security policy and are not sniffed, cached or framed', async () => {
    const answer = await door.send('/', { headers: { cookie: door.cookie } })
    expect(answer.status).toBe(200)
    expect(answer.headers['content-type']).toBe('text/html; charset=utf-8')
    expect(answer.headers['content-security-policy']).toContain("default-src 'none'; script-src 'self';")
    expect(answer.headers['content-security-policy']).toContain("frame-ancestors 'none'")
    expect(answer.headers['x-content-type-options']).toBe('nosniff')
    expect(answer.headers['cache-control']).toBe('no-store')
    expect(answer.headers['access-control-allow-origin']).toBeUndefined()
  })
  test.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/assets/../../secret.txt',
    '/..%5csecret.txt',
    '/../window-secret.txt',
    '/secret.txt%00.js',
    '//etc/passwd',
    '/etc/passwd',
    '/assets',
    '/assets/',
    '/assets/a.map',
    '/%zz',
    '/%ff',
    '/nowhere.html',
  ])('do not include %s', async (path) => {
    const answer = await door.send(path, { headers: { cookie: door.cookie } })
    expect(answer.status).toBe(404)
    expect(answer.text).not.toContain('not for the window')
  })
  test('are not there at an absolute address in the request line', async () => {
    const answer = await door.raw(
      `GET http://evil.example/ HTTP/1.1\r\nHost: evil.example\r\nCookie: ${door.cookie}\r\nConnection: close\r\n\r\n`,
    )
    expect(answer).toMatch(/^HTTP\/1\.1 421 /)
  })
  test.each(['PUT', 'DELETE', 'POST', 'OPTIONS', 'PATCH'])('are only read: %s is refused', async (method) => {
    expect((await door.send('/', { method, headers: { cookie: door.cookie } })).status).toBe(405)
  })
  test('are only described to HEAD', async () => {
    const answer = await door.send('/', { method: 'HEAD', headers: { cookie: door.cookie } })
    expect([answer.status, answer.text]).toEqual([200, ''])
  })
})

describe('a call', () => {
  test('reaches the services with its input and brings their answer back', async () => {
    const answer = await door.call('echo', { text: 'Łódź ≤ 5/8"' })
    expect(JSON.parse(answer.text)).toEqual({ jsonrpc: '2.0', id: 1, result: { text: 'Łódź ≤ 5/8"' } })
  })
  test.each([
    ['GET', {}],
    ['PUT', {}],
    ['POST', { 'content-type': 'text/plain' }],
    ['POST', { 'content-type': 'application/x-www-form-urlencoded' }],
    ['POST', { 'content-type': '' }],
  ])('by %s with %o is refused before it is read', async (method, headers) => {
    const before = door.reached.length
    const body = method === 'GET' ? undefined : '{"jsonrpc":"2.0","id":1,"method":"echo"}'
    const answer = await door.send('/rpc', {
      method,
      headers: { ...json, ...headers },
      ...(body ? { body } : {}),
    })
    expect(answer.status).toBe(405)
    expect(door.reached.length).toBe(before)
  })
  test('without an Origin is refused, as no page of this host sends one so', async () => {
    const headers = { cookie: door.cookie, 'content-type': 'application/json' }
    expect((await door.send('/rpc', { method: 'POST', headers, body: '{}' })).status).toBe(405)
  })
  test.each([
    ['', -32700],
    ['not json', -32700],
    ['{"jsonrpc":"2.0"', -32700],
    ['[]', -32600],
    ['null', -32600],
    ['"echo"', -32600],
    ['{"jsonrpc":"1.0","id":1,"method":"echo"}', -32600],
    ['{"jsonrpc":"2.0","id":{},"method":"echo"}', -32600],
    ['{"jsonrpc":"2.0","id":1,"method":7}', -32600],
    ['[{"jsonrpc":"2.0","id":1,"method":"echo"}]', -32600],
  ])('of the text %s is answered by %i and a sentence', async (body, code) => {
    const { error } = JSON.parse((await door.send('/rpc', { method: 'POST', headers: json, body })).text)
    expect(error).toMatchObject({ code, data: { code: 'bad-input' } })
    expect(error.message).toMatch(/^The request .*\.$/)
  })
  test.each(['nothing', 'constructor', '__proto__', 'toString', ''])(
    'of the unknown method "%s" says so',
    async (method) => {
      const { error } = JSON.parse((await door.call(method)).text)
      expect(error).toMatchObject({ code: -32601, data: { code: 'unknown-method' } })
    },
  )
  test('that the services refuse carries their code and sentence', async () => {
    const { error } = JSON.parse((await door.call('conflict')).text)
    expect(error).toEqual({ code: -32002, message: 'Changed elsewhere.', data: { code: 'conflict' } })
  })
  test('that crashes keeps the details in the log and tells the window a sentence', async () => {
    const { text } = await door.call('crash')
    expect(JSON.parse(text).error.data.code).toBe('internal')
    expect(text).not.toMatch(/secret detail|\.ts|at /)
    expect(door.logged.at(-1)).toMatchObject({ event: 'method failed', details: { method: 'crash' } })
  })
  test('of a stated size over the limit is refused unread', async () => {
    const answer = await door.raw(
      `POST /rpc HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nOrigin: ${origin}\r\nCookie: ${door.cookie}\r\n` +
        'Content-Type: application/json\r\nContent-Length: 60000001\r\n\r\n',
    )
    expect(answer).toMatch(/^HTTP\/1\.1 413 /)
  })
  test('that grows over the limit without stating its size is cut off', async () => {
    const chunk = `${(1_000_000).toString(16)}\r\n${'x'.repeat(1_000_000)}\r\n`
    const answer = await door.raw(
      `POST /rpc HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nOrigin: ${origin}\r\nCookie: ${door.cookie}\r\n` +
        `Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n${chunk.repeat(61)}0\r\n\r\n`,
    )
    expect(answer).toMatch(/^HTTP\/1\.1 413 /)
  })
  test('cut off half way does not stop the host', async () => {
    await door.raw(
      `POST /rpc HTTP/1.1\r\nHost: 127.0.0.1:${door.port}\r\nOrigin: ${origin}\r\nCookie: ${door.cookie}\r\n` +
        'Content-Type: application/json\r\nContent-Length: 100\r\n\r\n{"jsonrpc"',
    )
    expect((await door.call('echo')).status).toBe(200)
  })
  test('of nonsense instead of HTTP does not stop the host', async () => {
    expect(await door.raw('\x16\x03\x01nonsense\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 /)
    expect((await door.call('echo')).status).toBe(200)
  })
})

test('events reach every window that listens, and a window that went is forgotten', async () => {
  const listen = () =>
    new Promise<{ next: () => Promise<string>; leave: () => void }>((done) => {
      const sent = get(`${origin}/events`, { headers: { cookie: door.cookie }, agent: false }, (response) => {
        const iterator = response[Symbol.asyncIterator]()
        const next = async () => String((await iterator.next()).value)
        next().then(() => done({ next, leave: () => sent.destroy() }))
      })
      sent.on('error', () => {})
    })
  const first = await listen()
  const second = await listen()
  door.events.emit('jobs.changed', { id: 'j1', revision: 4 })
  const wanted = 'event: jobs.changed\ndata: {"id":"j1","revision":4}\n\n'
  expect([await first.next(), await second.next()]).toEqual([wanted, wanted])
  first.leave()
  await new Promise((done) => setTimeout(done, 50))
  door.events.emit('jobs.changed', { id: 'j1', revision: 5 })
  expect(await second.next()).toContain('"revision":5')
  second.leave()
})
