import { useEffect } from 'react'
import { Page } from '../../drawing/page.tsx'
import { Message } from '../../parts/message.tsx'
import { useJob, useSession } from '../../state/session-context.ts'
import './papers.css'

/** How long an edit rests before its pages are asked for, ms. */
const REST = 350

/** The pages of the chosen sheets as they will be printed, one below the other. */
export function PagesView() {
  const session = useSession()
  const papers = useJob((state) => state.papers)
  const edit = useJob((state) => state.edit)
  const isPriced = useJob((state) => state.estimate !== null)
  const { only, paper, scale, metric, date, revision, firm, pages, busy, failure } = papers

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked for is read from the session when it is asked
  useEffect(() => {
    if (!isPriced || firm === null) return
    const timer = setTimeout(() => void session.previewPapers(), REST)
    return () => clearTimeout(timer)
  }, [session, edit, isPriced, only, paper, scale, metric, date, revision, firm])

  if (only.length === 0)
    return <p className="pages-empty soft">No sheet is chosen. Choose one at the right.</p>
  return (
    <section
      className={busy === 'preview' ? 'pages is-stale' : 'pages'}
      aria-label="Pages"
      aria-busy={busy === 'preview'}
      tabIndex={0}
    >
      {failure !== null && <Message tone="fails">{failure}</Message>}
      {pages.length === 0 && failure === null && (
        <p className="pages-empty soft">
          {papers.pagesOf === '' ? 'Laying out the pages.' : 'The job has nothing for these sheets.'}
        </p>
      )}
      {pages.map((page) => (
        <Page key={`${page.sheet} ${page.number}`} page={page} paper={paper} logo={firm?.logo?.data ?? ''} />
      ))}
    </section>
  )
}
