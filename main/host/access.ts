import { randomBytes, timingSafeEqual } from 'node:crypto'
import type { IncomingMessage } from 'node:http'

export interface Refusal {
  readonly status: number
  readonly sentence: string
}

/** Who may speak to the host: this machine's browser, on pages of this host, opened with the printed link. */
export interface Access {
  /** in the printed link; traded for the cookie on the first visit */
  readonly token: string
  readonly setCookie: string
  /** null where the request may go on */
  refuse(request: IncomingMessage): Refusal | null
  tokenMatches(given: string): boolean
}

export function createAccess(port: number): Access {
  const address = `127.0.0.1:${port}`
  const origin = `http://${address}`
  const token = randomBytes(24).toString('base64url')
  const session = randomBytes(24).toString('base64url')
  // Cookies ignore ports: without the port in its name a second running copy would overwrite this one's session.
  const cookieName = `kerfwright_${port}`

  function refuse(request: IncomingMessage): Refusal | null {
    // A page elsewhere can point its own name at 127.0.0.1; its requests then carry that name as Host.
    if (request.headers.host !== address)
      return { status: 421, sentence: `This host answers only to ${address}.` }
    const from = request.headers.origin
    if (from !== undefined && from !== origin)
      return { status: 403, sentence: 'This host answers only its own pages.' }
    if (
      request.headers['sec-fetch-site'] === 'cross-site' &&
      request.headers['sec-fetch-mode'] !== 'navigate'
    )
      return { status: 403, sentence: 'This host answers only its own pages.' }
    return null
  }

  return {
    token,
    setCookie: `${cookieName}=${session}; HttpOnly; SameSite=Strict; Path=/`,
    tokenMatches: (given) => same(given, token),
    refuse: (request) => refuse(request) ?? refuseSession(request, cookieName, session),
  }
}

const unsigned: Refusal = {
  status: 401,
  sentence: 'Open the program by the link it printed when it started (the line "Ready: http://…").',
}

function refuseSession(request: IncomingMessage, cookieName: string, session: string): Refusal | null {
  const url = request.url ?? ''
  if (url.startsWith('/?t=')) return null
  const cookies = (request.headers.cookie ?? '').split(';').map((part) => part.trim())
  const given = cookies.find((part) => part.startsWith(`${cookieName}=`))?.slice(cookieName.length + 1)
  return given !== undefined && same(given, session) ? null : unsigned
}

function same(given: string, wanted: string): boolean {
  const left = Buffer.from(given)
  const right = Buffer.from(wanted)
  return left.length === right.length && timingSafeEqual(left, right)
}
