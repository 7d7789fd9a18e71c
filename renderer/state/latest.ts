/**
 * Runs one piece of work at a time; while it runs only the newest request waits.
 * Answers to anything but the newest request are still delivered: the receiver drops them by edit number.
 */
export function latestOnly<Request>(work: (request: Request) => Promise<void>): (request: Request) => void {
  let busy = false
  let waiting: { readonly request: Request } | null = null

  async function run(request: Request): Promise<void> {
    busy = true
    await work(request)
    busy = false
    const next = waiting
    waiting = null
    if (next) void run(next.request)
  }

  return (request) => {
    if (busy) waiting = { request }
    else void run(request)
  }
}
