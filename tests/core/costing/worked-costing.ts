import { type Job, type JobStatement, readJob } from '../../../core/job/index.ts'

/** A job under way with figures that can be reckoned by hand; all invented. */
export const UNDER_WAY: JobStatement = {
  name: 'Under way',
  pricing: { salesTax: '6 %' },
  costing: {
    begun: '2026-04-01',
    price: '$1,620.94',
    hourly: '$45',
    estimate: [
      {
        line: 'lumber-30210-16',
        group: 'lumber',
        what: '2x10, 16 ft',
        part: 'material',
        quantity: 9,
        unit: 'each',
        price: 23.49,
      },
      {
        line: 'good-hanger',
        group: 'hardware',
        what: 'Hanger',
        part: 'material',
        quantity: 17,
        unit: 'each',
        price: 2.39,
      },
      {
        line: 'labour-task-joist',
        group: 'labour',
        what: 'Set joists',
        part: 'labour',
        quantity: 11.5,
        unit: 'worker hour',
        price: 45,
        hours: 11.5,
        rate: 'joist',
        count: 200,
        of: 'board foot',
        factor: 1.15,
      },
      {
        line: 'other-permit',
        group: 'other',
        what: 'Permit',
        part: 'other',
        quantity: 1,
        unit: 'sum',
        price: 350,
      },
    ],
    bought: [
      {
        date: '2026-04-02',
        supplier: 'Alder Yard',
        line: 'lumber-30210-16',
        quantity: 9,
        amount: '$214.00',
        receipt: '4411',
      },
      { date: '2026-04-02', line: 'good-hanger', quantity: 10, amount: '$25' },
      { date: '2026-04-09', line: 'lumber-30210-16', what: 'two back', quantity: -2, amount: '-$46.98' },
      { date: '2026-04-03', what: 'Tarp', amount: 19.99 },
    ],
    worked: [
      { date: '2026-04-06', line: 'labour-task-joist', hours: 6.25, who: 'Ada' },
      { date: '2026-04-07', line: 'labour-task-joist', hours: 7.5 },
    ],
    lines: [{ line: 'lumber-30210-16', unusable: 1, left: 1, done: true }],
  },
}

export function jobOf(statement: unknown): Job {
  const read = readJob(statement)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value.job
}
