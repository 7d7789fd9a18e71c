import { readWindowFile, windowHeaders } from '../app/window-files.ts'
import { isOwnPage } from './address.ts'

/** Answers the window's requests for its own files, with the same headers as the browser's door. */
export async function serveWindow(windowFolder: string, request: Request): Promise<Response> {
  const file =
    request.method === 'GET' && isOwnPage(request.url)
      ? await readWindowFile(windowFolder, new URL(request.url).pathname)
      : null
  if (!file)
    return new Response('There is nothing at this address.\n', { status: 404, headers: windowHeaders })
  return new Response(file.body, { headers: { ...windowHeaders, 'content-type': file.type } })
}
