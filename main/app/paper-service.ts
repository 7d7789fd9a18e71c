import { type Firm, fingerprint, NO_FIRM, type PaperSource } from '../../core/papers/index.ts'
import type { Methods } from '../../shared/contract/index.ts'
import type { Store } from '../store/index.ts'
import type { Pool } from '../workers/index.ts'
import { firmInput } from './firm-file.ts'
import { fileNameFor } from './job-name.ts'
import { mustBePriced } from './priced.ts'
import type { Prices } from './prices.ts'
import type { Rack } from './rack.ts'
import { ServiceError } from './service-types.ts'

type Asked = Methods['papers.make'][0]

/** The papers of the job in the window, and the firm that stands on them. */
export interface PaperService {
  readonly preview: (asked: Asked) => Promise<Methods['papers.preview'][1]>
  readonly make: (asked: Asked) => Promise<Methods['papers.make'][1]>
  readonly firm: () => Firm
  readonly saveFirm: (firm: Firm) => Firm
}

export function paperService(parts: {
  readonly store: Store
  readonly pool: Pool
  readonly prices: Prices
  readonly rack: Rack
}): PaperService {
  const { store, pool, prices, rack } = parts
  const firm = (): Firm => {
    const text = store.settings.read('firm')
    if (text === null) return NO_FIRM
    // what this program wrote reads well; what another version wrote may not, and is then as good as absent
    const read = firmInput.safeParse(JSON.parse(text))
    return read.success ? read.data : NO_FIRM
  }
  const sourceOf = async ({ statement, jobId, date, revision }: Asked): Promise<PaperSource> => {
    const book = prices.book()
    const result = await pool.estimate({ statement, book, rack: rack.onHand(jobId), givesWay: false })
    const estimate = mustBePriced(result, 'There are no papers yet')
    const known = revision === '' ? fingerprint(estimate.job) : revision
    return { estimate, book, firm: firm(), date, revision: known }
  }
  return {
    preview: async (asked) => {
      const { paperPages } = await import('./papers.ts')
      return { pages: paperPages(await sourceOf(asked), asked.only, asked.page) }
    },
    make: async (asked) => {
      const { makePapers } = await import('./papers.ts')
      const source = await sourceOf(asked)
      const { files } = await makePapers(source, { ...asked, formats: ['pdf'], stem: 'papers' })
      const [file] = files
      if (file === undefined || typeof file.content === 'string')
        throw new ServiceError('bad-input', 'The job has nothing for these sheets.')
      return {
        fileName: fileNameFor(asked.statement, 'pdf'),
        base64: Buffer.from(file.content).toString('base64'),
      }
    },
    firm,
    saveFirm: (stated) => {
      store.settings.write('firm', JSON.stringify(stated))
      return stated
    },
  }
}
