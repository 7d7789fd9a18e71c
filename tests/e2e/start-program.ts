import { type ChildProcess, spawn } from 'node:child_process'
import { resolve } from 'node:path'

/** The built program on a store of its own, as a person starts it. */
export interface Program {
  /** the link printed by the running host; another one after each start */
  readonly link: string
  readonly storeFolder: string
  /** process id of the running host */
  readonly pid: number
  /** ends it as a power cut would */
  kill(): Promise<void>
  /** starts it again on the same store */
  start(): Promise<void>
}

const host = resolve(import.meta.dirname, '../../out/main/host.js')

export async function startProgram(storeFolder: string): Promise<Program & { stop(): Promise<void> }> {
  let child: ChildProcess
  let link = ''
  const end = async (signal: 'SIGKILL' | 'SIGTERM') => {
    if (child.exitCode !== null || child.signalCode !== null) return
    const ended = new Promise((done) => child.once('exit', done))
    child.kill(signal)
    await ended
  }
  const start = async () => {
    child = spawn(process.execPath, [host, '--store', storeFolder], { stdio: ['ignore', 'pipe', 'inherit'] })
    link = await new Promise<string>((done, failed) => {
      let text = ''
      child.stdout?.on('data', (part) => {
        text += part
        const found = /Ready: (\S+)/.exec(text)?.[1]
        if (found) done(found)
      })
      child.once('exit', (code) => failed(new Error(`The host ended with code ${code} before it was ready.`)))
    })
  }
  await start()
  return {
    get link() {
      return link
    },
    get pid() {
      return child.pid ?? 0
    },
    storeFolder,
    kill: () => end('SIGKILL'),
    stop: () => end('SIGTERM'),
    start,
  }
}
