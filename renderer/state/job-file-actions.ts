import { type Fault, fileNameFor, JOB_FILE_ENDING, readJobText, writeJobText } from '../../core/job/index.ts'
import type { Result } from '../../core/units/index.ts'
import type { JobActions } from './job-actions.ts'
import type { SessionParts } from './session-parts.ts'

/** A job file that was given and could not be taken, with what is to be mended in it. */
export interface RefusedJobFile {
  readonly name: string
  readonly faults: readonly Fault[]
}

/** One job as a file, out and in. */
export interface JobFileActions {
  /** the open job as the text of a file, as far as it was typed; null while none is open */
  jobFile(): { readonly fileName: string; readonly text: string } | null
  /** the job in the file becomes a new one and is opened; a file with a fault is told whole and changes nothing */
  takeJobFile(name: string, text: Result<string, string>): Promise<void>
  forgetRefusedFile(): void
}

export function jobFileActions({ get, set, say }: SessionParts, jobs: JobActions): JobFileActions {
  return {
    jobFile() {
      const { open, history } = get()
      if (!open) return null
      return {
        fileName: fileNameFor(history.present, JOB_FILE_ENDING),
        text: writeJobText(history.present),
      }
    },
    async takeJobFile(name, text) {
      const read = text.ok ? readJobText(text.value) : text
      if (!read.ok) {
        const faults =
          typeof read.error === 'string'
            ? [{ path: '', message: read.error, fix: 'choose a job file, or one that kerfwright new wrote' }]
            : read.error
        set({ refusedFile: { name, faults } })
        say(`${name} was not taken`)
        return
      }
      set({ refusedFile: null })
      await jobs.createJob(read.value.statement)
      say(`Taken in: ${name}`)
    },
    forgetRefusedFile: () => set({ refusedFile: null }),
  }
}
