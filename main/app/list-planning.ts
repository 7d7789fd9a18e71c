import type { CutListAnswer, CutListRequest } from '../../core/cut-list/index.ts'
import type { Pool, Task } from '../workers/index.ts'
import type { Prices } from './prices.ts'
import { ServiceError } from './service-types.ts'

/** Lists planned for the window. The newest is kept, so that its workbook is made of the plan that was shown. */
export interface ListPlanning {
  run(request: CutListRequest, task: Task): Promise<CutListAnswer>
  workbook(request: CutListRequest): Promise<{ readonly fileName: string; readonly base64: string }>
}

export function listPlanning(pool: Pool, prices: Prices): ListPlanning {
  let newest: { readonly key: string; readonly answer: CutListAnswer } | null = null
  const keyOf = (request: CutListRequest) => JSON.stringify([request, prices.book().name, prices.book().date])
  const run = async (request: CutListRequest, task: Task = {}): Promise<CutListAnswer> => {
    const key = keyOf(request)
    const answer = await pool.cutList({ request, book: prices.book() }, task)
    newest = { key, answer }
    return answer
  }
  return {
    run,
    async workbook(request) {
      const answer = newest?.key === keyOf(request) ? newest.answer : await run(request)
      if (!answer.ok || answer.result.plans.length === 0) {
        throw new ServiceError('bad-input', 'There is no workbook yet: the list has no plan.')
      }
      const { makeCutListWorkbook } = await import('../exports/workbook/index.ts')
      const bytes = await makeCutListWorkbook(answer.result)
      return { fileName: 'cut-list.xlsx', base64: Buffer.from(bytes).toString('base64') }
    },
  }
}
