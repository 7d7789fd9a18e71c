import { useRef, useState } from 'react'
import { useJob } from '../../state/session-context.ts'
import { reportDetails } from './report-details.ts'

/** Version, data and their editions, licence; and what a report of a fault needs, to be copied. */
export function About() {
  const about = useJob((state) => state.help.about)
  const design = useJob((state) => state.design)
  const prices = useJob((state) => state.prices)
  const place = useJob((state) => state.place)
  const theme = useJob((state) => state.memory?.theme ?? 'auto')
  const box = useRef<HTMLTextAreaElement>(null)
  const [copied, setCopied] = useState(false)
  const sources = new Set(
    (design?.checks ?? [])
      .flatMap((check) => check.findings)
      .filter(({ document }) => document !== '')
      .map(({ document, edition }) => `${document} ${edition}`.trim()),
  )
  const details = reportDetails({
    version: about?.version ?? '',
    door: about?.door ?? '',
    browser: navigator.userAgent,
    screen: `${window.innerWidth} × ${window.innerHeight} at ${window.devicePixelRatio}`,
    place,
    theme,
    design,
    prices,
  })

  function copy() {
    box.current?.select()
    // needs no permission, which the page is given none of
    setCopied(document.execCommand('copy'))
  }

  return (
    <>
      <p>
        Kerfwright {about?.version}: estimates and plans the framing of residential decks.
        {about && ` Prices: ${about.bookName}, ${about.bookDate}.`}
      </p>
      {sources.size > 0 && <p>The open deck is checked by: {[...sources].join('; ')}.</p>}
      <p>
        Free software under the GNU General Public License, version 3 or later, without any warranty. The file
        LICENSE has its text, THIRD-PARTY-NOTICES.md the work of others in it; both come with the program.
      </p>
      <h3>For a report of a fault</h3>
      <div className="entries">
        <textarea
          ref={box}
          className="report"
          rows={6}
          readOnly
          value={details}
          aria-label="Details for a report"
        />
      </div>
      <p className="report-end">
        <button type="button" className="button" onClick={copy}>
          Copy the details
        </button>
        <span className="soft" role="status">
          {copied ? 'Copied.' : 'No name, address or sum of a customer is in them.'}
        </span>
      </p>
    </>
  )
}
