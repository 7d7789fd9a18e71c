/** The window's own scheme: pages of files would get no security headers and share one origin with every file. */
export const scheme = 'kerfwright'
export const origin = `${scheme}://window`
export const address = `${origin}/`

/** Whether a frame shows our own page; only such a frame is answered. */
export function isOwnPage(url: string): boolean {
  return url === address || url.startsWith(address)
}
