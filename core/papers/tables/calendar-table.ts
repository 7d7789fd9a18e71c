import type { CalendarStep } from '../../pricing/index.ts'
import type { PaperTable } from '../types.ts'
import { hours, tableOf } from './table.ts'

/** Working days by stage, with the inspections and waits between them. */
export function calendarTable(steps: readonly CalendarStep[]): PaperTable {
  return tableOf(
    'calendar',
    'Working days',
    [
      ['days', 'Days', 'left'],
      ['what', 'Stage', 'left'],
      ['hours', 'Crew hours', 'right'],
    ],
    steps.map(({ from, to, what, crewHours }) => ({
      days: from === to ? `${from}` : `${from} to ${to}`,
      what,
      hours: crewHours === 0 ? '' : hours(crewHours),
    })),
  )
}
