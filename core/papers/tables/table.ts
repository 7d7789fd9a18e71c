import type { PaperTable } from '../types.ts'

/** Columns as [key, label] with figures marked, e.g. ['amount', 'Amount', 'right']. */
export type Columns<K extends string> = readonly (readonly [K, string, 'left' | 'right'])[]

export function tableOf<K extends string>(
  id: string,
  title: string,
  columns: Columns<K>,
  rows: readonly { readonly [key in K]: string }[],
): PaperTable {
  return { id, title, columns: columns.map(([key, label, align]) => ({ key, label, align })), rows }
}

/** A quantity in 1/1000 with no idle zeros: 2.488, 17. */
export function quantity(thousandths: number): string {
  return `${thousandths / 1000}`
}

/** Hours in 1/100 hour with two places: 66.79. */
export function hours(hundredths: number): string {
  return (hundredths / 100).toFixed(2)
}
