import { printInches } from '../../../core/units/index.ts'
import { useJob } from '../../state/session-context.ts'

/** What laying the decking wet and tight would come to, beside laying it dry with gaps. */
export function LaidWet() {
  const forecast = useJob((state) => state.design?.takeoff.decking)
  if (!forecast) return null
  const { dry, wet } = forecast
  return (
    <p className="soft">
      Dry boards with gaps of {printInches(dry.gap)}: {dry.courses} courses. Wet from treatment and tight:{' '}
      {wet.courses} courses, whose gaps open to about {printInches(wet.finalGap)} as they dry.
    </p>
  )
}
