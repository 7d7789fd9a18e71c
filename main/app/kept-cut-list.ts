import type { CutListInputs } from '../../shared/contract/index.ts'
import type { Store } from '../store/index.ts'
import { keptList } from './inputs.ts'

/** The list of pieces that stands at the work place Cut list, kept from start to start. */
export interface KeptCutList {
  readonly read: () => CutListInputs | null
  readonly keep: (inputs: CutListInputs) => Record<string, never>
}

export function keptCutList({ settings }: Store): KeptCutList {
  return {
    read: () => {
      const text = settings.read('cut list')
      if (text === null) return null
      const kept = keptList.safeParse(JSON.parse(text))
      return kept.success ? kept.data : null
    },
    keep: (inputs) => {
      settings.write('cut list', JSON.stringify(inputs))
      return {}
    },
  }
}
