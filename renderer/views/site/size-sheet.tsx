import { useState } from 'react'
import { explainRows } from '../../../core/compare/index.ts'
import type { Job } from '../../../core/job/index.ts'
import { inches, printLength, type Ticks } from '../../../core/units/index.ts'
import { ViewSwitch } from '../../parts/view-switch.tsx'
import { plural, printDifference, printDollars } from '../../state/print.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { gridKey } from '../../state/size-grid-actions.ts'
import { capital } from '../../state/things.ts'
import { Working } from '../working/working.tsx'
import { type ShownSum, SizeGridTable } from './size-grid-table.tsx'
import { jumpsOf } from './size-shades.ts'
import { WithinBudget } from './within-budget.tsx'
import './size-sheet.css'

const STEPS: readonly { readonly step: Ticks; readonly name: string }[] = [
  { step: inches(6), name: '6 in' },
  { step: inches(12), name: '1 ft' },
  { step: inches(24), name: '2 ft' },
]

const SUMS: readonly { readonly view: ShownSum; readonly name: string }[] = [
  { view: 'per square foot', name: '$ per sq ft' },
  { view: 'cost', name: 'Cost' },
  { view: 'price', name: 'Price' },
]

/** The deck in other sizes: width and depth side by side, and where the cost jumps along the width. */
export function SizeSheet({ job }: { readonly job: Job }) {
  const session = useSession()
  const sizes = useJob((state) => state.sizeGrid)
  const running = useJob((state) => state.tasks['size grid'] !== undefined)
  const present = useJob((state) => state.history.present)
  const [shown, setShown] = useState<ShownSum>('per square foot')
  if (sizes === null) return null
  const ofThis = gridKey(present) === sizes.key
  const basis = job.builder === 'owner' ? 'Cost' : 'Price'
  return (
    <section className="sheet-pane size-sheet" aria-labelledby="sizes-title" tabIndex={0}>
      <header className="size-sheet-head">
        <h2 id="sizes-title">
          {shown === 'per square foot' ? `${basis} per square foot` : `${capital(shown)} of the deck`} in
          other sizes
        </h2>
        <ViewSwitch<ShownSum>
          legend="In each size"
          views={SUMS.filter(({ view }) => view !== 'price' || job.builder === 'contractor')}
          view={shown}
          onView={setShown}
        />
        <fieldset className="size-steps">
          <legend>In steps of</legend>
          {STEPS.map(({ step, name }) => (
            <button
              key={name}
              type="button"
              className="button"
              aria-pressed={sizes.grid.width.step === step}
              onClick={() => void session.compareSizes(step)}
            >
              {name}
            </button>
          ))}
        </fieldset>
        <button type="button" className="button" onClick={session.closeSizes}>
          Close
        </button>
      </header>
      <Working kind="size grid" what={`Pricing sizes, ${sizes.rows.length} so far.`} />
      {!ofThis && (
        <p className="soft">
          Something other than the size was changed since.{' '}
          <button
            type="button"
            className="link"
            onClick={() => void session.compareSizes(sizes.grid.width.step)}
          >
            Compare anew
          </button>
        </p>
      )}
      {sizes.failed !== null && <p className="said-fails">{sizes.failed}</p>}
      <SizeGridTable
        sizes={sizes}
        running={running}
        stale={!ofThis}
        size={job.size}
        shown={shown}
        onTake={session.takeSize}
      />
      {ofThis && <WithinBudget job={job} rows={sizes.rows} onTake={session.takeSize} />}
      <p className="soft">
        The fainter the colour, the cheaper per square foot. <span aria-hidden="true">●</span> every board of
        the frame comes whole from stock · <span aria-hidden="true">▲</span> a check fails as the frame
        stands. Choose a size to make it the deck’s; one undo goes back. The prices here are of sound plans
        that may still be bettered by some dollars; the estimate of the chosen size is worked to its end.
      </p>
      <Jumps />
    </section>
  )
}

/** Steps of the width that cost clearly more than others, from the widths along the tape. */
function Jumps() {
  const rows = useJob((state) => state.tape.rows)
  const jumps = jumpsOf(explainRows(rows), 6)
  if (jumps.length === 0) return null
  return (
    <section aria-labelledby="jumps-title">
      <h2 id="jumps-title">Where the cost jumps along the width</h2>
      <ul className="size-jumps">
        {jumps.map(({ from, to, more }) => (
          <li key={to.width}>
            <strong>
              {printLength(from.width)} to {printLength(to.width)}: +{printDollars(more)}
            </strong>
            {to.changes.length > 0 && (
              <span className="soft">
                {' '}
                {to.changes
                  .slice(0, 3)
                  .map(({ label, change }) => `${label} ${printDifference(change, printDollars)}`)
                  .join(' · ')}
                {to.joints !== from.joints &&
                  ` · ${plural(Math.abs(to.joints - from.joints), 'joint')} ${to.joints > from.joints ? 'more' : 'fewer'}`}
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}
