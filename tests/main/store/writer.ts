import { openStore } from '../../../main/store/index.ts'

/** Run as its own process: saves as fast as it can and prints each revision once it is reported as stored. */
const [file = '', id = '', count = '1000000'] = process.argv.slice(2)
const opened = openStore({ file, now: () => new Date(0), newId: () => crypto.randomUUID() })
if (!opened.ok) throw new Error(opened.error.message)
const store = opened.value

let written = 0
while (written < Number(count)) {
  const job = store.jobs.read(id)
  if (job === null) throw new Error('no such job')
  try {
    const saved = store.jobs.save({
      id,
      revision: job.revision,
      name: 'Written',
      savedAt: '2026-11-25T12:00:00.000Z',
      label: `by ${process.pid}`,
      statement: { n: job.revision + 1, by: process.pid, filler: 'x'.repeat(3000) },
    })
    process.stdout.write(`${saved?.revision}\n`)
    written += 1
  } catch (error) {
    if ((error as Error).name !== 'RevisionConflict') throw error
    process.stdout.write('conflict\n')
  }
}
store.close()
