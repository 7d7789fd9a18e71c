import { useRef, useState } from 'react'
import { type FieldPath, SIZED_FIELDS } from '../../../core/job/index.ts'
import { basisWords, costWords, proofWords, type Sized, unchangedWords } from '../../../core/sizing/index.ts'
import { Message } from '../../parts/message.tsx'
import { useJob, useSession } from '../../state/session-context.ts'
import type { Proposal } from '../../state/sizing-actions.ts'
import { CheckList } from '../bench/check-list.tsx'
import { Working } from '../working/working.tsx'
import { SizingReasons } from './sizing-reasons.tsx'
import './sizing.css'

/** Parts that can be kept as they are, by their fields. */
const PARTS: readonly (readonly [label: string, holds: (path: FieldPath) => boolean])[] = [
  ['Joists', (path) => path.startsWith('frame.joists.')],
  ['Front beam', (path) => path.startsWith('frame.beams.front.') && !isSetback(path)],
  ['Rear beam', (path) => path.startsWith('frame.beams.rear.') && !isSetback(path)],
  ['Setbacks', isSetback],
  ['Post size', (path) => path === 'frame.postSize'],
  ['Footings', (path) => path.startsWith('ground.')],
]

function isSetback(path: FieldPath): boolean {
  return path.endsWith('.setback')
}

/** How many checks fail that another size may mend. */
export function useMendable(): number {
  return useJob(
    (state) =>
      state.design?.checks.filter(
        ({ status, fields }) => status === 'fails' && fields.some((field) => SIZED_FIELDS.has(field)),
      ).length ?? 0,
  )
}

/** Finds the cheapest sizes that pass; shows what would change and at what cost before anything does. */
export function SizingPanel() {
  const session = useSession()
  const edit = useJob((state) => state.edit)
  const free = useJob((state) => state.design?.job.site.attachment === 'freestanding')
  const failing = useMendable()
  const [kept, setKept] = useState<readonly string[]>([])
  const [asking, setAsking] = useState(false)
  const [proposal, setProposal] = useState<Proposal | null>(null)
  const asked = useRef(0)

  async function propose() {
    asked.current += 1
    const mine = asked.current
    setAsking(true)
    const held: readonly FieldPath[] = [...SIZED_FIELDS].filter((path) =>
      PARTS.some(([label, holds]) => kept.includes(label) && holds(path)),
    )
    const answer = await session.proposeSizes(held)
    if (mine !== asked.current) return
    setAsking(false)
    setProposal(answer)
  }

  function apply({ changes }: Sized) {
    session.endGesture()
    for (const { field, value } of changes) session.stateLive(field, value, 'sizes of the frame')
    session.endGesture()
    setProposal(null)
    session.say('Sized: one undo takes it back')
  }

  return (
    <section className="group sizing" aria-labelledby="sizing-head">
      <h2 id="sizing-head">Sizes</h2>
      {failing > 0 && (
        <p className="said-fails">
          {failing === 1 ? 'A check fails' : `${failing} checks fail`} that another size may mend.
        </p>
      )}
      <button type="button" className="button" disabled={asking} onClick={() => void propose()}>
        {asking ? 'Sizing…' : 'Size it'}
      </button>{' '}
      <span className="soft">the cheapest sizes that pass</span>
      {asking && <Working kind="sizes" what="Sizing the frame." />}
      <details className="folded">
        <summary>Keep as they are{kept.length > 0 && `: ${kept.length}`}</summary>
        {PARTS.filter(([label]) => free || label !== 'Rear beam').map(([label]) => (
          <label key={label} className="sizing-kept">
            <input
              type="checkbox"
              checked={kept.includes(label)}
              onChange={({ target }) =>
                setKept(target.checked ? [...kept, label] : kept.filter((one) => one !== label))
              }
            />{' '}
            {label}
          </label>
        ))}
      </details>
      <div role="status">
        {proposal !== null && (
          <Outcome
            proposal={proposal}
            stale={proposal.edit !== edit}
            apply={apply}
            dismiss={() => setProposal(null)}
          />
        )}
      </div>
    </section>
  )
}

function Outcome({
  proposal,
  stale,
  apply,
  dismiss,
}: {
  readonly proposal: Proposal
  readonly stale: boolean
  apply(sized: Sized): void
  dismiss(): void
}) {
  if (stale) return <Message tone="plain">The job has changed since: size it again.</Message>
  if ('failure' in proposal) return <Message tone="fails">{proposal.failure}</Message>
  const { result } = proposal
  if (!result.ok) {
    return (
      <>
        <Message tone="fails">{result.message}</Message>
        <CheckList checks={result.checks} />
      </>
    )
  }
  const { sized } = result
  if (sized.changes.length === 0) {
    return (
      <>
        <Message tone="plain">{unchangedWords(sized.work)}</Message>
        <Basis sized={sized} />
        <SizingReasons sized={sized} />
      </>
    )
  }
  return (
    <>
      <table className="sizing-changes">
        <thead>
          <tr>
            <th scope="col">Field</th>
            <th scope="col">Now</th>
            <th scope="col">Then</th>
          </tr>
        </thead>
        <tbody>
          {sized.changes.map(({ field, label, from, to }) => (
            <tr key={field}>
              <th scope="row">{label}</th>
              <td>{from}</td>
              <td>{to}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>Cost {costWords(sized)}</p>
      {!sized.work.proven && <p>{proofWords(sized.work)}</p>}
      <Basis sized={sized} />
      <p>
        <button type="button" className="button button-main" onClick={() => apply(sized)}>
          Use these sizes
        </button>{' '}
        <button type="button" className="button" onClick={dismiss}>
          Leave as it is
        </button>
      </p>
      <SizingReasons sized={sized} />
    </>
  )
}

/** Which checks hold by calculation alone, before anybody orders by them. */
function Basis({ sized }: { readonly sized: Sized }) {
  const words = basisWords(sized)
  return words === '' ? null : (
    <>
      <Message tone="near">{words}</Message>
      <CheckList checks={sized.byCalculation} />
    </>
  )
}
