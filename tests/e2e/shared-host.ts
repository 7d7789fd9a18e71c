import { placesFrom } from '../../main/app/places.ts'
import { createServices } from '../../main/app/services.ts'
import { keepMemorySteady } from '../../main/app/steady-memory.ts'
import { createEventStream } from '../../main/host/event-stream.ts'
import { openHost } from '../../main/host/server.ts'
import { createLog } from '../../main/log/index.ts'
import { createPool } from '../../main/workers/index.ts'
import manifest from '../../package.json' with { type: 'json' }

/**
 * Run as a child of the test runner: hosts on stores of their own, one for each test, behind which one pool calculates.
 * What the sample job costs at 41 widths is then worked out once and not before every test.
 */
export interface ToSharedHost {
  readonly id: number
  readonly open?: string
  readonly close?: string
}

export interface FromSharedHost {
  readonly id: number
  readonly link?: string
  readonly fault?: string
}

const entry = new URL('../../main/host/index.ts', import.meta.url).pathname
const { workerPath, paperWorkerPath, windowFolder } = placesFrom(entry)
keepMemorySteady()
const pool = createPool({ workerPath })
const opened = new Map<string, () => Promise<void>>()

async function open(storeFolder: string): Promise<string> {
  const log = createLog(storeFolder)
  const events = createEventStream()
  const services = await createServices({
    storeFolder,
    workerPath,
    paperWorkerPath,
    pool,
    door: 'browser',
    version: manifest.version,
    emit: events.emit,
    trouble: (sentence) => log.error('trouble', { sentence }),
  })
  const host = await openHost({ port: 0, windowFolder, services, events, log })
  opened.set(storeFolder, () => host.close().then(() => services.close()))
  return host.link
}

async function answer({ id, open: toOpen, close: toClose }: ToSharedHost): Promise<FromSharedHost> {
  try {
    if (toClose !== undefined) await opened.get(toClose)?.()
    return toOpen === undefined ? { id } : { id, link: await open(toOpen) }
  } catch (fault) {
    return { id, fault: fault instanceof Error ? (fault.stack ?? fault.message) : String(fault) }
  }
}

process.on('message', (message: ToSharedHost) => {
  answer(message).then((said) => process.send?.(said))
})
process.on('disconnect', () => process.exit(0))
