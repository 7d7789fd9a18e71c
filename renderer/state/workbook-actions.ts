import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'

export interface WorkbookActions {
  /** makes the workbook and gives it with its name, or null where that failed (and was said) */
  makeWorkbook(): Promise<{ readonly fileName: string; readonly base64: string } | null>
}

export function workbookActions({ client, get, set, say }: SessionParts): WorkbookActions {
  return {
    async makeWorkbook() {
      set({ making: true })
      try {
        return await client.call('workbook.make', {
          statement: get().history.present,
          jobId: get().open?.id,
        })
      } catch (error) {
        say(sentenceOf(error))
        return null
      } finally {
        set({ making: false })
      }
    },
  }
}
