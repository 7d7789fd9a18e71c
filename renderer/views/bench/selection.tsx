import { findField } from '../../../core/job/index.ts'
import { printLength, ticks } from '../../../core/units/index.ts'
import type { MemberCut } from '../../state/board-index.ts'
import { type Grip, gripFor } from '../../state/grips/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { capital } from '../../state/things.ts'
import { useBoardIndex, useGrips, useThings } from '../../state/use-derived.ts'
import { WhyButton } from '../sill/why-button.tsx'
import { CheckList } from './check-list.tsx'
import { CutStrip } from './cut-strip.tsx'
import { PlaceFields } from './place-fields.tsx'
import './selection.css'

/** What is chosen in the drawing: its length, its pieces with their boards, its checks, what it comes from. */
export function Selection({ id }: { readonly id: string }) {
  const session = useSession()
  const thing = useThings().find((each) => each.id === id)
  const checks = useJob((state) => state.design?.checks) ?? []
  const footing = useJob((state) => state.design?.frame.footings.find((each) => each.id === id))
  const cut = useBoardIndex()?.byMember.get(id)
  const grips = useGrips()
  const design = useJob((state) => state.design)
  const grip = design ? gripFor(id, grips, design) : null
  if (!thing) return grip === null ? null : <ChosenGrip grip={grip} />
  const own = checks.filter((check) => check.subjects.includes(id))
  const fields = thing.cause.fields.flatMap((path) => findField(path)?.label ?? [])
  return (
    <section className="group selection" aria-label={`Chosen: ${thing.label}`}>
      <h2>
        {capital(thing.kind)} {thing.mark}
        <button
          type="button"
          className="quiet"
          aria-label="Choose nothing"
          onClick={() => session.select(null)}
        >
          ✕
        </button>
      </h2>
      <p className="selection-size">
        {thing.length !== null && <strong>{printLength(thing.length)}</strong>}{' '}
        <span className="soft">
          {thing.lumber}
          {cut && cut.sources.length > 0 && ` · ${describeCut(cut)}`}
        </span>
      </p>
      {footing && (
        <p className="selection-size">
          <strong>{printLength(footing.depth)}</strong>{' '}
          <span className="soft">
            deep, hole {printLength(footing.holeDiameter)} across, tube {printLength(footing.tube)}
          </span>
        </p>
      )}
      {grip !== null && <PlaceFields key={grip.id} grip={grip} />}
      {cut && cut.sources.length > 0 && thing.length !== null && <CutStrip cut={cut} length={thing.length} />}
      {own.length > 0 ? (
        <>
          <h3>Checks on it</h3>
          <CheckList checks={own} />
        </>
      ) : (
        <p className="soft">No check speaks of it by itself.</p>
      )}
      <p className="soft selection-cause">
        {thing.cause.rule.replace(/\.?$/, '.')}
        {fields.length > 0 && ` Set by: ${fields.join(', ')}.`} <WhyButton id={id} of={thing.label} />
      </p>
    </section>
  )
}

/** An edge, a corner or a whole beam: where it lies. */
function ChosenGrip({ grip }: { readonly grip: Grip }) {
  const session = useSession()
  return (
    <section className="group selection" aria-label={`Chosen: ${grip.label}`}>
      <h2>
        {grip.label}
        <button
          type="button"
          className="quiet"
          aria-label="Choose nothing"
          onClick={() => session.select(null)}
        >
          ✕
        </button>
      </h2>
      <PlaceFields key={grip.id} grip={grip} />
    </section>
  )
}

function describeCut(cut: MemberCut): string {
  if (cut.sources.length === 1) return 'one piece'
  const joints = cut.joints.map((joint) => joint.label).filter((label) => label !== '')
  return `${cut.sources.length} pieces, jointed ${joints.length > 0 ? `at ${joints.join(' and ')}` : `at ${cut.joints.map(({ at }) => printLength(ticks(at))).join(', ')}`}`
}
