import type { FoundOption } from '../../../core/ground/index.ts'
import { type Found, placeWords } from '../../../core/job/index.ts'
import { cents, printMoney } from '../../../core/units/index.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { capital } from '../../state/things.ts'
import { CheckList } from '../bench/check-list.tsx'

/** Each way to go on with a hole that was found off: its cost, its checks, what is cut otherwise; choosing one is a step. */
export function FoundOptions({ found }: { readonly found: Found }) {
  const session = useSession()
  const ground = useJob((state) => state.ground)
  const edit = useJob((state) => state.edit)
  const ready = ground.reportEdit === edit && ground.reportOn === found
  const where = placeWords({ ...found, barred: false }).join(', ')
  return (
    <div role="status" aria-busy={!ready}>
      <p>
        Hole {found.post}, {where}
        {found.barred && ', its place barred'}:{' '}
        <button type="button" className="link" onClick={() => session.askAboutHole(null)}>
          leave it
        </button>
      </p>
      {!ready && ground.failure !== null && <p className="said-fails">{ground.failure}</p>}
      {!ready && ground.failure === null && <p className="soft">Working out what can be done.</p>}
      {ready && (
        <ul className="found-options">
          {ground.report?.found?.options.map((option) => (
            <Option key={option.kind} option={option} hole={found.post} />
          ))}
        </ul>
      )}
    </div>
  )
}

function Option({ option, hole }: { readonly option: FoundOption; readonly hole: number }) {
  const session = useSession()
  const { kind, what, cannot, checks, cuts, cost, edit } = option
  if (edit === null) {
    return (
      <li>
        <div className="found-head soft">
          <span>{capital(kind)}</span>
          <span>cannot be done</span>
        </div>
        <p className="soft">{cannot}</p>
      </li>
    )
  }
  return (
    <li>
      <div className="found-head">
        <span>{capital(kind)}</span>
        <span>{cost === null ? 'no price' : costText(cost)}</span>
      </div>
      <p>{what}</p>
      {cuts.map((cut) => (
        <p key={cut} className="soft">
          {cut}.
        </p>
      ))}
      {checks.length === 0 ? (
        <p className="soft">Every check comes out as planned.</p>
      ) : (
        <CheckList checks={checks} />
      )}
      <button
        type="button"
        className="button"
        onClick={() => session.settleHole(edit, `hole ${hole}: ${kind}`)}
      >
        {capital(kind)}
        <span className="unseen"> at hole {hole}</span>
      </button>
    </li>
  )
}

function costText(cost: number): string {
  if (cost === 0) return 'costs nothing'
  return `${printMoney(cents(Math.abs(cost)))} ${cost < 0 ? 'less' : 'more'}`
}
