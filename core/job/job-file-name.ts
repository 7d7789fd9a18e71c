import type { JobStatement } from './types.ts'

/** How files of single jobs end; what packages the program registers the same with the system. */
export const JOB_FILE_ENDING = 'kerfwright'

const LONGEST = 200

/** Name under which a job is listed: its own, in one line, cut to what a list can hold. */
export function jobName(statement: JobStatement): string {
  const { name } = statement
  if (typeof name !== 'string') return 'Untitled job'
  const line = name.replace(/[\s\p{Cc}]+/gu, ' ').trim()
  return line === '' ? 'Untitled job' : [...line].slice(0, LONGEST).join('')
}

/** Signs that turn the direction of what follows: a name that holds them may read as another one. */
const TURNS = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu

/** Name of a file for a job, safe on every file system: no path, no reserved name, no hidden file, no sign that turns it. */
export function fileNameFor(statement: JobStatement, extension: string): string {
  const stem = [
    ...jobName(statement)
      .replace(TURNS, '')
      .replace(/[<>:"/\\|?*]/g, '-'),
  ]
    .slice(0, 80)
    .join('')
    .replace(/^[. ]+|[. ]+$/g, '')
  const reserved = /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(stem)
  return `${stem === '' || reserved ? 'Job' : stem}.${extension}`
}
