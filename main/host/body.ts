import type { IncomingMessage } from 'node:http'

/** The largest request, bytes: that of a file of everything, with the papers of quotes; any other is far smaller. */
export const largestBody = 60_000_000

/** The request's text, or null where it is larger than allowed (reading stops there). Rejects where it is cut off. */
export async function readBody(request: IncomingMessage): Promise<string | null> {
  if (Number(request.headers['content-length'] ?? 0) > largestBody) return null
  const parts: Buffer[] = []
  let size = 0
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length
    if (size > largestBody) return null
    parts.push(part)
  }
  return Buffer.concat(parts).toString('utf8')
}
