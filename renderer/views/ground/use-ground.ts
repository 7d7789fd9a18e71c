import { useEffect } from 'react'
import type { GroundReport } from '../../../core/ground/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'

/** The ground is worked out once typing has paused for so long, and again where another window's run stopped it, ms. */
const AFTER = 250

export interface Ground {
  readonly report: GroundReport | null
  /** it belongs to an older statement, or to another hole */
  readonly stale: boolean
  readonly failure: string | null
}

/** Keeps the ground worked out for the present statement while a view that shows it stands. */
export function useGround(): Ground {
  const session = useSession()
  const edit = useJob((state) => state.edit)
  const faulty = useJob((state) => state.faults.length > 0)
  const found = useJob((state) => state.ground.found)
  const ground = useJob((state) => state.ground)
  // biome-ignore lint/correctness/useExhaustiveDependencies: each edit and each hole asked about is worked out anew.
  useEffect(() => {
    if (faulty) return
    let timer: ReturnType<typeof setTimeout>
    const ask = async () => {
      if (!(await session.workOutGround())) timer = setTimeout(ask, AFTER)
    }
    timer = setTimeout(ask, AFTER)
    return () => clearTimeout(timer)
  }, [session, edit, found, faulty])
  return {
    report: ground.report,
    stale: ground.reportEdit !== edit || ground.reportOn !== found,
    failure: ground.failure,
  }
}
