import { percent } from '../../../core/checks/index.ts'
import { proofWords, type Sized } from '../../../core/sizing/index.ts'

/** Why the sizes came out so: what governs each part, and what speaks against the next smaller ones. */
export function SizingReasons({ sized }: { readonly sized: Sized }) {
  const { reasons, remaining, work } = sized
  return (
    <details className="folded">
      <summary>Why these</summary>
      <ul className="sizing-reasons">
        {reasons.map(({ part, chosen, governs, smaller }) => (
          <li key={part}>
            <strong>
              {part}: {chosen}
            </strong>
            {governs !== null && (
              <span>
                {' '}
                {governs.check.title}, {percent(governs.finding.ratio ?? 0)} of its limit
              </span>
            )}
            {smaller.map(({ option, why }) => (
              <p key={option} className="soft">
                {option}: {why}
              </p>
            ))}
          </li>
        ))}
      </ul>
      <p className="soft">{proofWords(work)}</p>
      {remaining.map((check) => (
        <p key={check.id} className="soft">
          No size mends: {check.message} {check.remedy}
        </p>
      ))}
    </details>
  )
}
