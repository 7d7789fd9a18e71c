import { JOB_FILE_ENDING, LONGEST_JOB_TEXT } from '../../core/job/index.ts'
import type { Session } from '../state/session.ts'
import { pickFile } from '../views/pick-file.ts'
import { readFileText } from '../views/read-file-text.ts'
import { saveText } from '../views/save-blob.ts'

const WANTED = { what: 'a job file', longest: LONGEST_JOB_TEXT, make: 'Choose one that this program made.' }

/** The files that may hold a job. */
export const JOB_FILES = `.${JOB_FILE_ENDING},.json,.jsonc,application/json`

/** The open job as a file that can be sent, kept, or read by the command line. */
export function saveJobFile(session: Session): void {
  const file = session.jobFile()
  if (file) saveText(file.fileName, file.text, 'application/json')
}

/** The job in a chosen file, opened as one of its own; what stands in the way is told in the session. */
export async function takeJobFile(session: Session, chosen: File): Promise<void> {
  await session.takeJobFile(chosen.name, await readFileText(chosen, WANTED))
}

export function openJobFile(session: Session): void {
  pickFile(JOB_FILES, (chosen) => void takeJobFile(session, chosen))
}
