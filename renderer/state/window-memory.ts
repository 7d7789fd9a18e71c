import type { JobSummary, WindowMemory } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { autosave } from './autosave.ts'
import { FIRST_LOOK, printLook, readLook } from './drawing/look.ts'
import type { SessionParts } from './session-parts.ts'

/** Commands kept as chosen last; more than that is a list to read again. */
export const RECENT_KEPT = 6

/** A window that was never opened before. */
export const FIRST_MEMORY: WindowMemory = {
  theme: 'auto',
  drawing: printLook(FIRST_LOOK),
  notes: true,
  recent: [],
  template: null,
}

export interface WindowMemoryActions {
  /** what was kept at the last start; the drawing is looked at as it was then */
  recallWindow(): Promise<void>
  remember(patch: Partial<WindowMemory>): void
  /** keeps at once what is not kept yet */
  keepWindow(): void
  /** puts a command before those chosen earlier */
  rememberCommand(id: string): void
}

/** The latest first, each once. */
export function withCommand(recent: readonly string[], id: string): readonly string[] {
  return [id, ...recent.filter((each) => each !== id)].slice(0, RECENT_KEPT)
}

/** The job that new ones start from, where it is still on the list. */
export function templateAmong(
  jobs: readonly JobSummary[] | null,
  memory: WindowMemory | null,
): JobSummary | null {
  return jobs?.find(({ id }) => id === memory?.template) ?? null
}

/** Keeps what the window remembers with the program: an address in a browser lasts for one start only. */
export function windowMemoryActions({ client, store, get, set, say }: SessionParts): WindowMemoryActions & {
  dispose(): void
} {
  const keep = autosave(() => {
    const { memory } = get()
    if (memory === null) return
    client.call('window.keep', memory).catch((error: unknown) => say(sentenceOf(error)))
  })
  const remember = (patch: Partial<WindowMemory>) => {
    set({ memory: { ...(get().memory ?? FIRST_MEMORY), ...patch } })
    keep.touch()
  }
  const stopLooking = store.subscribe(({ look, memory }, before) => {
    if (memory === null || look === before.look) return
    const drawing = printLook(look)
    if (drawing !== memory.drawing) remember({ drawing })
  })
  return {
    remember,
    keepWindow: () => keep.flush(),
    rememberCommand: (id) => remember({ recent: withCommand((get().memory ?? FIRST_MEMORY).recent, id) }),
    async recallWindow() {
      try {
        const memory = (await client.call('window.kept', {})) ?? FIRST_MEMORY
        set({ memory, look: readLook(memory.drawing) })
      } catch {
        // it is looked at as at first; a program that gives no answer is told of by the job that does not open
        set({ memory: FIRST_MEMORY })
      }
    },
    dispose() {
      keep.flush()
      stopLooking()
    },
  }
}
