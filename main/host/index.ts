import { resolve } from 'node:path'
import manifest from '../../package.json' with { type: 'json' }
import { defaultStoreFolder } from '../app/default-store-folder.ts'
import { placesFrom } from '../app/places.ts'
import { ServiceError } from '../app/service-types.ts'
import { createServices } from '../app/services.ts'
import { keepMemorySteady } from '../app/steady-memory.ts'
import { createLog } from '../log/index.ts'
import { createEventStream } from './event-stream.ts'
import { parseHostFlags } from './options.ts'
import { openHost } from './server.ts'

/** The browser's door: serves the window and the contract on this machine only, until it is told to stop. */
async function main(): Promise<void> {
  const flags = parseHostFlags(process.argv.slice(2))
  if (!flags.ok) return stop(2, flags.error)
  const storeFolder = resolve(flags.value.store ?? defaultStoreFolder())
  const { workerPath, paperWorkerPath, windowFolder } = placesFrom(import.meta.filename)
  keepMemorySteady()
  const log = createLog(storeFolder)
  const events = createEventStream()
  const services = await createServices({
    storeFolder,
    workerPath,
    paperWorkerPath,
    door: 'browser',
    version: manifest.version,
    emit: events.emit,
    trouble: (sentence) => log.error('trouble', { sentence }),
  })
  const host = await openHost({ port: flags.value.port, windowFolder, services, events, log }).catch(
    async (fault: unknown) => {
      // their workers would keep the process running
      await services.close()
      throw fault
    },
  )

  let closing: Promise<void> | null = null
  const close = () => {
    closing ??= host
      .close()
      .then(() => services.close())
      .then(() => process.exit(0))
    return closing
  }
  process.on('SIGTERM', close)
  process.on('SIGINT', close)
  // Started with a channel to its launcher, the host goes when the launcher does, even when that was killed.
  if (process.send) process.on('disconnect', close)

  log.info('host ready', { version: manifest.version })
  process.stdout.write(`Ready: ${host.link}\n`)
}

function stop(code: number, sentence: string): void {
  process.stderr.write(`${sentence}\n`)
  process.exitCode = code
}

main().catch((fault: NodeJS.ErrnoException) => {
  if (fault instanceof ServiceError) return stop(2, fault.message)
  if (fault.code === 'EADDRINUSE')
    return stop(2, 'This port is taken. Choose another with --port, or leave it out.')
  if (fault.code === 'EACCES') return stop(2, 'This port may not be used. Choose one above 1023 with --port.')
  return stop(1, fault.stack ?? String(fault))
})
