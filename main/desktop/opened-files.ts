import { statSync } from 'node:fs'
import { basename } from 'node:path'
import { JOB_FILE_ENDING, LONGEST_JOB_TEXT } from '../../core/job/index.ts'
import type { DesktopEvents } from '../../shared/contract/index.ts'
import { readTextFile } from '../app/files.ts'

type Opened = DesktopEvents['file.opened']

/** Job files that a command line names, as the system starts us when one is opened. */
export function filesNamed(args: readonly string[]): readonly string[] {
  return args.filter((arg) => !arg.startsWith('-') && arg.toLowerCase().endsWith(`.${JOB_FILE_ENDING}`))
}

/** A job file for the window: its text, or the sentence that says why there is none. */
export function readOpened(path: string): Opened {
  const name = basename(path)
  if (sizeOf(path) > LONGEST_JOB_TEXT)
    return { name, text: null, trouble: `${name} is too large to be a job file.` }
  const text = readTextFile(path)
  return text.ok ? { name, text: text.value, trouble: '' } : { name, text: null, trouble: text.error }
}

function sizeOf(path: string): number {
  try {
    return statSync(path).size
  } catch {
    // the reading says what is wrong with it
    return 0
  }
}

/** Files that were opened before the window listens wait for it. */
export interface OpenedFiles {
  open(path: string): void
  /** the window listens from now on */
  listening(): void
  /** there is no window, or it is loading again */
  notListening(): void
}

export function openedFiles(tell: (opened: Opened) => void): OpenedFiles {
  let waiting: string[] = []
  let listens = false
  return {
    open(path) {
      if (listens) tell(readOpened(path))
      else waiting.push(path)
    },
    listening() {
      listens = true
      const paths = waiting
      waiting = []
      for (const path of paths) tell(readOpened(path))
    },
    notListening() {
      listens = false
    },
  }
}
