import type { AppInfo } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'

export interface HelpState {
  /** id of the topic that is read, '' for the list of all; null: the help is closed */
  readonly topic: string | null
  /** what the program says of itself; null until it was asked */
  readonly about: AppInfo | null
}

export const NO_HELP: HelpState = { topic: null, about: null }

export interface HelpActions {
  /** opens the help at a topic, '' for the list of all; null closes it */
  readHelp(topic: string | null): void
}

/** What is read in the help; nothing of the job. */
export function helpActions({ client, get, set, say }: SessionParts): HelpActions {
  async function askAbout() {
    try {
      const about = await client.call('app.info', {})
      set({ help: { ...get().help, about } })
    } catch (error) {
      say(sentenceOf(error))
    }
  }
  return {
    readHelp(topic) {
      set({ help: { ...get().help, topic } })
      if (topic !== null && get().help.about === null) void askAbout()
    },
  }
}
