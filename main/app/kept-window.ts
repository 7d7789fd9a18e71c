import { z } from 'zod'
import type { WindowMemory } from '../../shared/contract/index.ts'
import type { Store } from '../store/index.ts'

/** What a window may keep: a few choices, not a place to store things. */
export const windowMemory = z.strictObject({
  theme: z.enum(['auto', 'light', 'dark']),
  drawing: z.string().max(2_000),
  notes: z.boolean(),
  recent: z.array(z.string().min(1).max(100)).max(20),
  template: z.string().min(1).max(100).nullable(),
})

/** How the window was left, kept from start to start beside the jobs: a browser gives each start an address of its own. */
export interface KeptWindow {
  readonly read: () => WindowMemory | null
  readonly keep: (memory: WindowMemory) => Record<string, never>
}

export function keptWindow({ settings }: Store): KeptWindow {
  return {
    read: () => {
      const text = settings.read('window')
      if (text === null) return null
      // what another version kept may not read well: the window then begins anew
      const kept = windowMemory.safeParse(JSON.parse(text))
      return kept.success ? kept.data : null
    },
    keep: (memory) => {
      settings.write('window', JSON.stringify(memory))
      return {}
    },
  }
}
