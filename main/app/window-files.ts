import { readFile, stat } from 'node:fs/promises'
import { extname, join, normalize, sep } from 'node:path'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.json': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
}

/**
 * Headers of every answer to the window. No remote content, no frames, no inline script; the interface library
 * writes its styles inline, so those are allowed.
 */
export const windowHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "worker-src 'self' blob:",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; '),
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
}

export interface WindowFile {
  readonly body: Buffer<ArrayBuffer>
  readonly type: string
}

/**
 * A file of the built window, or null where there is none. The path comes from a URL and is not trusted: whatever
 * decodes to a place outside the folder, to a folder, or to a type the window does not use, is not there.
 */
export async function readWindowFile(folder: string, urlPath: string): Promise<WindowFile | null> {
  const decoded = decode(urlPath === '/' ? '/index.html' : urlPath)
  if (decoded === null || decoded.includes('\0') || decoded.includes('\\')) return null
  const root = normalize(folder + sep)
  const file = normalize(join(root, decoded))
  const type = types[extname(file)]
  if (!file.startsWith(root) || type === undefined) return null
  try {
    if (!(await stat(file)).isFile()) return null
    return { body: await readFile(file), type }
  } catch {
    return null
  }
}

function decode(path: string): string | null {
  try {
    return decodeURIComponent(path)
  } catch {
    return null
  }
}
