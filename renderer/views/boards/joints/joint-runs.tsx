import type { Estimate, Planned } from '../../../../core/estimate-types.ts'
import type { FrameRun } from '../../../../core/frame/index.ts'
import { namedRuns, withRun } from '../../../../core/job/index.ts'
import { printLength } from '../../../../core/units/index.ts'
import { type JointPointLine, pointsOf, runsOf } from '../../../state/joint-points.ts'
import { plural } from '../../../state/print.ts'
import { useSession } from '../../../state/session-context.ts'
import { WishOffer } from '../wishes/wish-offer.tsx'
import { JointPoint } from './joint-point.tsx'
import './joints.css'

/** The runs of one product: where each is jointed and what that saves, where not and why, and the wish for none. */
export function JointRuns({ estimate, planned }: { readonly estimate: Estimate; readonly planned: Planned }) {
  const runs = runsOf(estimate, planned)
  if (runs.length === 0) return null
  return (
    <ul className="joint-runs" aria-label="Joints">
      {runs.map((run) => (
        <Run key={run.id} run={run} estimate={estimate} points={pointsOf(run, planned, estimate)} />
      ))}
    </ul>
  )
}

function Run({
  run,
  estimate,
  points,
}: {
  readonly run: FrameRun
  readonly estimate: Estimate
  readonly points: readonly JointPointLine[]
}) {
  const session = useSession()
  const { onePiece } = estimate.job.cutting
  const held = namedRuns(onePiece, [run]).named.length > 0
  const joints = points.reduce((sum, { memberIds }) => sum + memberIds.length, 0)
  const made = points.filter(({ state }) => state === 'made').map(({ at }) => at)
  const many = run.memberIds.length > 1 ? `${run.memberIds.length} × ` : ''
  return (
    <li>
      <details
        onToggle={(event) => {
          if (event.currentTarget.open && made.length > 0) void session.explainJoints(run.id, made)
        }}
      >
        <summary>
          {run.label}{' '}
          <span className="soft">
            {many}
            {printLength(run.length)},{' '}
            {held ? 'held in one piece' : joints === 0 ? 'in one piece' : plural(joints, 'joint')}
          </span>
        </summary>
        <ul className="joint-points">
          {points.map((point) => (
            <JointPoint key={point.at} run={run} point={point} />
          ))}
        </ul>
      </details>
      {joints > 0 && (
        <WishOffer
          wish={{ key: `one piece ${run.id}`, path: 'cutting.onePiece', value: withRun(onePiece, run) }}
          label={`${run.label} in one piece`}
          ask="One piece"
          act="Hold in one piece"
        />
      )}
    </li>
  )
}
