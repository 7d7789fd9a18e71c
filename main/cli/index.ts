import manifest from '../../package.json' with { type: 'json' }
import { run } from './run.ts'

// a reader that has seen enough (head, less) closes the pipe; that is no fault
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') {
    process.stderr.write(
      `The output cannot be written: ${error.code === 'ENOSPC' ? 'the disk is full' : error.message}.\n`,
    )
    process.exitCode = 2
  }
})

process.exitCode = await run(process.argv.slice(2), manifest.version, {
  say: (text) => {
    process.stdout.write(text)
  },
  warn: (text) => {
    process.stderr.write(text)
  },
})
