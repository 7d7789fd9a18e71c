import { PERMIT_SHEETS, permitGaps, permitScaleGaps } from '../../../core/papers/index.ts'
import { useJob } from '../../state/session-context.ts'

/** What a permit office would send the set back for, named before anything is printed. */
export function MissingForPermit() {
  const estimate = useJob((state) => state.estimate)
  const { only, pages, paper } = useJob((state) => state.papers)
  const isChosen = only.some((sheet) => PERMIT_SHEETS.has(sheet))
  const gaps =
    estimate === null || !isChosen ? [] : [...permitGaps({ estimate }), ...permitScaleGaps(pages, paper)]
  if (gaps.length === 0) return null
  return (
    <details className="paper-missing" open>
      <summary>Before it goes to the permit office</summary>
      <ul>
        {gaps.map((gap) => (
          <li key={gap}>{gap}</li>
        ))}
      </ul>
    </details>
  )
}
