import type { FoundEdit, GroundReport } from '../../core/ground/index.ts'
import type { Found } from '../../core/job/index.ts'
import { codeOf, sentenceOf } from '../client/call-error.ts'
import type { SessionParts } from './session-parts.ts'
import type { Stating } from './stating.ts'

/** What is known of the ground, and of the hole that is being asked about. */
export interface GroundState {
  /** a hole that was found off its place, while what can be done about it is looked at */
  readonly found: Found | null
  readonly report: GroundReport | null
  /** edit and hole that the report belongs to */
  readonly reportEdit: number
  readonly reportOn: Found | null
  readonly failure: string | null
}

export const NO_GROUND: GroundState = {
  found: null,
  report: null,
  reportEdit: -1,
  reportOn: null,
  failure: null,
}

export interface GroundActions {
  /** says where a hole was found; null: none is asked about */
  askAboutHole(found: Found | null): void
  /** works out the ground of the present statement. @returns false where another run took its place */
  workOutGround(): Promise<boolean>
  /** states what is done about a hole, as one step */
  settleHole(edit: FoundEdit, label: string): void
}

export function groundActions(
  { client, get, set, say }: SessionParts,
  stating: Pick<Stating, 'stateLive' | 'endGesture'>,
): GroundActions {
  const patch = (change: Partial<GroundState>) => set({ ground: { ...get().ground, ...change } })
  return {
    askAboutHole: (found) => patch({ found }),
    async workOutGround() {
      const { edit, open, history, ground } = get()
      const { found } = ground
      const current = () => get().edit === edit && get().ground.found === found
      try {
        const result = await client.call('ground.run', {
          statement: history.present,
          jobId: open?.id,
          ...(found === null ? {} : { found }),
        })
        if (current() && result.ok)
          patch({ report: result.ground, reportEdit: edit, reportOn: found, failure: null })
      } catch (error) {
        if (codeOf(error) === 'stopped') return !current()
        if (current()) patch({ failure: sentenceOf(error) })
      }
      return true
    },
    settleHole(edit, label) {
      stating.endGesture()
      for (const [path, text] of Object.entries(edit)) stating.stateLive(path, text, label)
      stating.endGesture()
      patch({ found: null })
      say('Stated in the job: one undo takes it back')
    },
  }
}
