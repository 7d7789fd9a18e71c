import { memo, useDeferredValue, useEffect, useMemo, useRef } from 'react'
import { readJob } from '../../../core/job/index.ts'
import { Message } from '../../parts/message.tsx'
import { faultSentence } from '../../state/field-value.ts'
import { useJob, useSession } from '../../state/session-context.ts'
import { BoardsBench } from '../boards/boards-bench.tsx'
import { CutListBench } from '../cut-list/cut-list-bench.tsx'
import { FrameBench } from '../frame/frame-bench.tsx'
import { GroundBench } from '../ground/ground-bench.tsx'
import { PlaceNote } from '../notes/place-note.tsx'
import { PapersBench } from '../papers/papers-bench.tsx'
import { PriceBench } from '../price/price-bench.tsx'
import { PriceBookBench } from '../price-book/price-book-bench.tsx'
import { WhyPanel } from '../sill/why-panel.tsx'
import { SiteBench } from '../site/site-bench.tsx'
import { fieldId } from './job-field.tsx'
import { MemberList } from './member-list.tsx'
import { SelectionSlot } from './selection-slot.tsx'
import './bench.css'

const [OwnSite, OwnFrame] = [memo(SiteBench), memo(FrameBench)]

/** At the right: the fields of the work place, then what is chosen; or the why of a figure of the sill. */
export function Bench() {
  const session = useSession()
  const place = useJob((state) => state.place)
  const why = useJob((state) => state.why)
  // fields may come after the drawing: while something is drawn, the drawing goes first
  const job = useDeferredValue(useJob((state) => state.design?.job ?? null))
  // what is stated counts for which fields are shown, though no deck can be built of it yet
  const present = useDeferredValue(useJob((state) => state.history.present))
  const isFrame = place === 'frame'
  const stated = useMemo(() => {
    const read = isFrame ? readJob(present) : null
    return read?.ok ? read.value.job : null
  }, [present, isFrame])
  const faults = useJob((state) => state.faults)
  const failure = useJob((state) => state.designFailure)
  const sought = useJob((state) => state.sought)
  const bench = useRef<HTMLElement>(null)

  const shown = why === null ? place : `${place} ${JSON.stringify(why)}`
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is shown decides, nothing else of it is read.
  useEffect(() => {
    bench.current?.scrollTo(0, 0)
  }, [shown])

  useEffect(() => {
    if (sought === null) return
    const control = document.getElementById(fieldId(sought))
    for (let box = control?.closest('details'); box; box = box.parentElement?.closest('details'))
      box.open = true
    control?.scrollIntoView({ block: 'center' })
    control?.focus()
    session.seek(null)
  }, [sought, session])

  return (
    <aside className="bench" tabIndex={-1} aria-label={why === null ? 'Fields' : 'Why'} ref={bench}>
      {failure !== null && <Message tone="fails">The deck could not be drawn: {failure}</Message>}
      {faults.length > 0 && (
        <div role="status">
          {faults.map((fault) => (
            <Message
              key={`${fault.path} ${fault.message}`}
              tone="fails"
              action={{ label: 'Go there', run: () => session.seek(fault.path) }}
            >
              {faultSentence(fault)} The drawing shows the last deck that could be built.
            </Message>
          ))}
        </div>
      )}
      {why === null && <PlaceNote />}
      {why !== null ? (
        <WhyPanel why={why} />
      ) : place === 'cut list' ? (
        <CutListBench />
      ) : place === 'price book' ? (
        <PriceBookBench />
      ) : job === null ? (
        <Waiting />
      ) : (
        <>
          {place === 'site' && <OwnSite job={job} />}
          {isFrame && <OwnFrame job={stated ?? job} />}
          {place === 'ground' && <GroundBench job={job} />}
          {place === 'boards' && <BoardsBench job={job} />}
          {place === 'price' && <PriceBench job={job} />}
          {place === 'papers' && <PapersBench />}
          {(place === 'site' || place === 'price' || place === 'papers') && <SelectionSlot />}
          <MemberList />
        </>
      )}
    </aside>
  )
}

function Waiting() {
  return (
    <div aria-busy="true">
      {['a', 'b', 'c', 'd', 'e', 'f'].map((key) => (
        <div key={key} className="field-waiting" />
      ))}
    </div>
  )
}
