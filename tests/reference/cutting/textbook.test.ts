import { beforeAll, describe, expect, it } from 'vitest'
import { auditPlan, type CutJob, type LpEngine, planCuts } from '../../../core/cutting/index.ts'
import type { Cents, Ticks } from '../../../core/units/index.ts'
import { loadGlpk, loadHighs } from '../../../main/workers/lp/index.ts'
import { TEXTBOOK_CASES, type TextbookCase } from './textbook-cases.ts'

let engines: LpEngine[]
beforeAll(async () => {
  engines = [await loadHighs(), await loadGlpk()]
})

function jobOf(data: TextbookCase): CutJob {
  return {
    id: data.name,
    label: data.name,
    kerf: 0 as Ticks,
    endTrim: 0 as Ticks,
    stock: data.stocks.map(({ length, cost }) => ({
      id: `${length}`,
      length: length as Ticks,
      price: cost as Cents,
      supply: null,
      offcut: false,
    })),
    pieces: data.items.flatMap(([length, demand]) =>
      Array.from({ length: demand }, (_, k) => ({
        id: `${length}.${k}`,
        mark: `${length}`,
        length: length as Ticks,
      })),
    ),
    runs: [],
    handling: 0 as Cents,
    perCut: 0 as Cents,
    keep: null,
    objectives: ['least cost'],
  }
}

describe.each(TEXTBOOK_CASES)('$name ($source)', (data) => {
  it(`costs ${data.optimum} at the least, proven with either engine`, () => {
    const job = jobOf(data)
    for (const engine of engines) {
      const result = planCuts(job, engine)
      expect(result.ok && auditPlan(job, result.value)).toEqual([])
      expect(result).toMatchObject({ ok: true, value: { cost: data.optimum, status: 'proven optimal' } })
    }
  })
})
