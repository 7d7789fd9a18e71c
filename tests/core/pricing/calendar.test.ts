import { describe, expect, it } from 'vitest'
import { design } from '../../../core/design.ts'
import { priceJob, SAMPLE_BOOK, workCalendar } from '../../../core/pricing/index.ts'

function calendarOf(statement: object) {
  const made = design({ version: 1, size: { width: '16 ft', depth: '12 ft', height: '44 in' }, ...statement })
  if (!made.ok) throw new Error(JSON.stringify(made.error))
  const priced = priceJob(made.value, [], SAMPLE_BOOK)
  if (!priced.ok) throw new Error(JSON.stringify(priced.error))
  return {
    steps: workCalendar(made.value.takeoff, priced.value.lines, SAMPLE_BOOK),
    lines: priced.value.lines,
    calendar: priced.value.calendar,
  }
}

describe('the calendar of a deck', () => {
  const { steps, lines } = calendarOf({ stairs: { kind: 'straight' }, guard: { where: 'where needed' } })

  it('has the holes inspected before concrete, the frame before decking, and the whole at the end', () => {
    const order = steps.map(({ what }) => what)
    const at = (what: string) => order.findIndex((one) => one.startsWith(what))
    expect(at('Set out')).toBeLessThan(at('Footings inspected'))
    expect(at('Footings inspected')).toBeLessThan(at('Pour'))
    expect(at('Frame inspected')).toBe(at('Decking') - 1)
    expect(at('Final')).toBe(order.length - 1)
  })

  it('lets nobody frame until three working days after the pour', () => {
    const pour = steps.find(({ what }) => what.startsWith('Pour'))
    const frame = steps.find(({ what }) => what === 'Frame')
    expect((frame?.from ?? 0) - (pour?.to ?? 0)).toBe(4)
  })

  it('goes forward only, and holds every hour of the labour lines once', () => {
    for (const [i, step] of steps.entries()) {
      expect(step.to).toBeGreaterThanOrEqual(step.from)
      expect(step.from).toBeGreaterThanOrEqual(steps[i - 1]?.to ?? 1)
    }
    const paid = lines
      .filter(({ group }) => group === 'labour')
      .reduce((sum, { thousandths }) => sum + thousandths / 1000, 0)
    const told = steps.reduce((sum, { crewHours }) => sum + crewHours / 100, 0)
    expect(told * SAMPLE_BOOK.crewSize).toBeCloseTo(paid, 0)
  })

  it('leaves the set-up and clean-up of each day out of its days, whether or not the job pays for them', () => {
    const paid = calendarOf({ pricing: { dailySetUp: true } })
    expect(paid.lines.some(({ code }) => code === 'day-setup')).toBe(true)
    expect(paid.calendar).toEqual(calendarOf({}).calendar)
    // the sample book has 0.4 and 0.35 hours of both workers a day: 7.25 hours are left of 8
    const worked = paid.calendar.filter(({ kind }) => kind === 'work')
    const hours = worked.reduce((sum, { crewHours }) => sum + crewHours / 100, 0)
    const days = new Set(
      worked.flatMap(({ from, to }) => Array.from({ length: to - from + 1 }, (_, i) => from + i)),
    )
    expect(days.size).toBeGreaterThanOrEqual(Math.ceil(hours / 7.25))
    const digging = paid.calendar.find(({ what }) => what.startsWith('Set out'))
    expect(digging?.to).toBe(Math.max(1, Math.ceil((digging?.crewHours ?? 0) / 725)))
  })

  it('a slower crew takes more days', () => {
    const slow = calendarOf({ work: { crew: 'first-time owner' } }).steps.at(-1)?.to ?? 0
    const plain = calendarOf({}).steps.at(-1)?.to ?? 0
    expect(slow).toBeGreaterThan(plain)
  })
})
