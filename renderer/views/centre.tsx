import { fieldAt } from '../../core/job/index.ts'
import { useJob } from '../state/session-context.ts'
import { WIDTH } from '../state/tape-range.ts'
import { BoardsSheet } from './boards/boards-sheet.tsx'
import { CutListSheet } from './cut-list/cut-list-sheet.tsx'
import { DrawingPane } from './drawing/pane.tsx'
import { GroundSheet } from './ground/ground-sheet.tsx'
import { PagesView } from './papers/pages-view.tsx'
import { PriceSheet } from './price/price-sheet.tsx'
import { PriceBookSheet } from './price-book/price-book-sheet.tsx'
import { SizeSheet } from './site/size-sheet.tsx'
import { Tape } from './tape/tape.tsx'

/** The plan, at some work places a table beside it, and the tape below. */
export function Centre() {
  const book = useJob((state) => state.prices?.book ?? null)
  const place = useJob((state) => state.place)
  const job = useJob((state) => state.design?.job ?? null)
  const failed = useJob((state) => state.designFailure !== null || state.faults.length > 0)
  if (place === 'cut list') return <CutListSheet />
  if (place === 'price book') return <PriceBookSheet />
  if (!job) {
    return (
      <div className="centre-waiting" aria-busy={!failed}>
        <p className="soft">
          {failed ? 'There is no deck to draw yet: see the fields.' : 'Drawing the deck.'}
        </p>
      </div>
    )
  }
  if (place === 'papers') return <PagesView />
  return (
    <>
      <div className={`centre-panes at-${place}`}>
        <DrawingPane />
        {place === 'site' && <SizeSheet job={job} />}
        {place === 'ground' && <GroundSheet />}
        {place === 'boards' && <BoardsSheet />}
        {place === 'price' && <PriceSheet />}
      </div>
      <Tape spec={fieldAt(WIDTH)} job={job} book={book} />
    </>
  )
}
