import { openStore } from '../../../main/store/index.ts'

/** Run as its own process: opens the store of each line at the instant that the line says, and prints how it went. */
process.stdin.setEncoding('utf8').on('data', (text: string) => {
  for (const line of text.split('\n').filter((one) => one !== '')) {
    const { file, at } = JSON.parse(line) as { file: string; at: number }
    while (Date.now() < at);
    const opened = openStore({ file, now: () => new Date(0), newId: () => crypto.randomUUID() })
    if (opened.ok) opened.value.close()
    process.stdout.write(`${opened.ok ? 'ok' : opened.error.message}\n`)
  }
})
process.stdout.write('ready\n')
