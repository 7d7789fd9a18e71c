import type { StoreApi } from 'zustand/vanilla'
import type { Client, Methods } from '../../shared/contract/index.ts'
import { sentenceOf } from '../client/call-error.ts'
import { plural } from './print.ts'
import type { SessionState } from './session-types.ts'

export interface RackActions {
  listOffcuts(): Promise<void>
  /** @returns whether they are on the rack */
  addOffcuts(offcuts: Methods['offcuts.add'][0]): Promise<boolean>
  removeOffcuts(ids: readonly string[]): Promise<void>
  /** the job was cut: what it used leaves the rack, what it keeps comes onto it */
  takeOffcuts(): Promise<void>
}

/** Offcuts kept from job to job; the list in the state follows the program's `offcuts.changed`. */
export function rackActions(
  client: Client,
  store: StoreApi<SessionState>,
  say: (sentence: string) => void,
): RackActions {
  const saying = async (work: () => Promise<string | null>): Promise<boolean> => {
    try {
      const sentence = await work()
      if (sentence !== null) say(sentence)
      return true
    } catch (error) {
      say(sentenceOf(error))
      return false
    }
  }
  return {
    async listOffcuts() {
      await saying(async () => {
        store.setState({ offcuts: await client.call('offcuts.list', {}) })
        return null
      })
    },
    addOffcuts: (offcuts) =>
      saying(async () => {
        const added = await client.call('offcuts.add', offcuts)
        return `${plural(added.length, 'offcut')} put on the rack`
      }),
    async removeOffcuts(ids) {
      await saying(async () => {
        const { removed } = await client.call('offcuts.remove', { ids })
        return `${plural(removed, 'offcut')} taken off the rack`
      })
    },
    async takeOffcuts() {
      const { open, saving } = store.getState()
      if (open === null) return
      if (saving.state !== 'saved') {
        say('The job is not saved yet, and its offcuts are those of the saved job.')
        return
      }
      await saying(async () => {
        const { used, added } = await client.call('offcuts.takeFromPlan', { jobId: open.id })
        return `${plural(added, 'offcut')} put on the rack, ${used} used up`
      })
    },
  }
}
