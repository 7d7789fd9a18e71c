import { createHash } from 'node:crypto'
import { makePapers } from '../../../main/app/papers.ts'
import { makePdf } from '../../../main/exports/pdf/index.ts'
import { paperSource } from '../../fixtures/paper-source.ts'
import { smallJob } from '../../fixtures/worked-job.ts'

// run by papers.test.ts in another time zone and locale: one hash for each file of the set
const source = paperSource(smallJob())
const { files } = await makePapers(
  source,
  {
    only: ['framing', 'footings', 'order', 'quote'],
    formats: ['pdf', 'svg', 'dxf', 'csv', 'txt'],
    page: { paper: 'a4', scale: null },
    stem: 'papers',
  },
  makePdf,
)
for (const { name, content } of files) {
  process.stdout.write(`${createHash('sha256').update(content).digest('hex')}\n${name}\n`)
}
