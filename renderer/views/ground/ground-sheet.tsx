import { soilCautions } from '../../../core/ground/index.ts'
import {
  concreteTable,
  diggingTable,
  groundVolumesTable,
  layoutChecksTable,
  layoutCornersTable,
  layoutStringsTable,
  tubesTable,
} from '../../../core/papers/index.ts'
import { useJob } from '../../state/session-context.ts'
import { GroundTable } from './ground-table.tsx'
import { HolesTable } from './holes-table.tsx'
import { MeasuredPosts } from './measured-posts.tsx'
import { useGround } from './use-ground.ts'

/** Everything in the ground: cautions, holes, strings, concrete, tubes, digging, and posts as they were measured. */
export function GroundSheet() {
  const design = useJob((state) => state.design)
  const { report, stale, failure } = useGround()
  if (!design) return null
  const [first, ...cautions] = soilCautions(design.job)
  const corners = layoutCornersTable(design)
  return (
    <section className="sheet-pane" aria-labelledby="holes-title" tabIndex={0}>
      <p className="caution">
        <span aria-hidden="true">▲</span> {first} Frost depth, soil and snow are local facts; local code and
        the building official govern.
      </p>
      <HolesTable design={design} />
      <section aria-labelledby="strings-title">
        <h2 id="strings-title">Setting out</h2>
        <GroundTable table={layoutStringsTable(design)} />
        {corners.rows.length > 0 && <GroundTable table={corners} />}
        <GroundTable table={layoutChecksTable(design)} />
        {design.frame.layoutNotes.map((note) => (
          <p key={note} className="soft">
            {note}
          </p>
        ))}
      </section>
      <section aria-labelledby="soil-title">
        <h2 id="soil-title">In this soil</h2>
        <ul className="ground-cautions">
          {cautions.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <section
        className={stale ? 'ground-stale' : undefined}
        aria-labelledby="concrete-title"
        aria-busy={stale && failure === null}
      >
        <h2 id="concrete-title">Volumes, concrete, tubes and digging</h2>
        <GroundTable table={groundVolumesTable(design)} />
        {failure !== null && <p className="said-fails">{failure}</p>}
        {report === null && failure === null && (
          <p className="soft">Working it out at the price book’s prices.</p>
        )}
        {report !== null && (
          <>
            <GroundTable table={concreteTable(report.concrete)} />
            <p className="soft">{breakEvenText(report.concrete)}</p>
            {report.tubes !== null && <GroundTable table={tubesTable(report.tubes)} />}
            <GroundTable table={diggingTable(report.digging)} />
          </>
        )}
      </section>
      <MeasuredPosts design={design} measured={report?.measured ?? null} />
    </section>
  )
}

function breakEvenText({
  readyMix,
  breakEven,
  cubicFeet,
}: NonNullable<ReturnType<typeof useGround>['report']>['concrete']): string {
  if (readyMix === null) return 'The price book has no ready-mix to hold against the bags.'
  if (breakEven === null) return 'At these prices bags are the cheaper up to more than a truck carries.'
  return `With waste ${(cubicFeet / 27).toFixed(2)} cu yd; a truck is the cheaper from ${(breakEven / 27).toFixed(2)} cu yd on.`
}
